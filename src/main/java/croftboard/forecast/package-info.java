/**
 * How many portions to make: demand by line, weekday and week times the dish's draw, and the newsvendor quantity.
 * Pure functions of the book; probabilities are doubles, portions whole. Imports {@code measure} and {@code book}.
 */
package croftboard.forecast;
