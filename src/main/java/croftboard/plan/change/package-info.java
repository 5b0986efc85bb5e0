/**
 * The plan under changed facts. A {@link croftboard.plan.change.Change} is one fact that differs from what a plan was made
 * with: a vendor is short, a day is closed, a dish is wanted. Every question about a plan is asked as such a list of changes,
 * so that it can be read, kept in a file and asked again. Nothing here touches a plan on disk.
 */
package croftboard.plan.change;
