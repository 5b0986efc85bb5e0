/**
 * How many portions to make: demand by line, weekday and week times the dish's draw, and the newsvendor quantity; and how that
 * demand is learned from days that sold, were left over or ran out (docs/forecast.md). Pure functions of the book and of
 * observations; probabilities are doubles, portions whole. Imports {@code measure} and {@code book}.
 */
package croftboard.forecast;
