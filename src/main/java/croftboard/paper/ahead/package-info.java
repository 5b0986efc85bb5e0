/** Sheets made of several weeks: the wall sheet, crop use, notices to growers. */
package croftboard.paper.ahead;
