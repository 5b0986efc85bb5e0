/**
 * Plans on disk: the plan's versioned JSON and the folder {@code plans/} of a book. Everything is written whole or not at
 * all, and nothing is overwritten. Imports {@code measure}, {@code book}, {@code need} and {@code plan}; the only room of
 * plans that knows Jackson.
 */
package croftboard.plan.file;
