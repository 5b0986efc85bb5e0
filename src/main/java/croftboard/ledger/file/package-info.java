/**
 * Files of other people in (CSV, XLSX, UBL invoices), and the ledger's own export out and back. What comes in is hostile until
 * read: sizes, columns and lines are limited, every guess is said.
 */
package croftboard.ledger.file;
