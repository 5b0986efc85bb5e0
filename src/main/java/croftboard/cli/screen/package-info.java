/**
 * Plans and scaled recipes on a screen: each part once as text and once as named columns (CSV, JSON). Text never passes
 * the page's width, means the same without colour, and shows names from the book with control and direction characters
 * taken out. Nothing here reads a file, a clock or a terminal.
 */
package croftboard.cli.screen;
