/**
 * From recipes to what must be bought and done: recipe tree to edible portion to as purchased, to need per day, to batches.
 * Also the planning problem of one week as plain numbers ({@link croftboard.need.WeekProblem}), which the menu search
 * and the order programs share. Masses here are whole milligrams as purchased: needs are rounded up, packs down,
 * once. Money is whole cents. Days are counted from {@link croftboard.need.WeekProblem#firstDay()}.
 * Imports {@code measure} and {@code book}.
 */
package croftboard.need;
