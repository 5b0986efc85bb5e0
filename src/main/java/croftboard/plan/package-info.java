/**
 * One plan from start to end: forecast, menu, orders, check. Knows every room below it and no file format
 * but its own ({@code plan.file}).
 */
package croftboard.plan;
