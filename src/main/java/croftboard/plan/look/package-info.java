/**
 * Looking back: plan against what happened, and the days that the forecast learns from. Knows the ledger's entries and plans,
 * not their files.
 */
package croftboard.plan.look;
