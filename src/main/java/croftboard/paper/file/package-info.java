/**
 * Sheets as files: HTML, PDF, CSV, plain text, order files and calendars, written whole or not at all. The only room of
 * paper that knows markup, typefaces and file formats.
 */
package croftboard.paper.file;
