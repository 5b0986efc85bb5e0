/**
 * What eaters, members and inspectors read: labels, case cards, the staff's coverage grid, the members' sheet, home cards and
 * the logs. Statements come from {@code safety} and are never made stronger here.
 */
package croftboard.paper.served;
