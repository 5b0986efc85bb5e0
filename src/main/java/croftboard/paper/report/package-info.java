/**
 * The report to the members and to the board: what was paid for local food, to whom, by which definition and how it was counted,
 * and what the kitchen did besides. Made from the ledger and the book; every number stands with what it means.
 */
package croftboard.paper.report;
