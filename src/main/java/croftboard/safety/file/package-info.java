/**
 * The published tables that statements rest on, read from the data files that ship with the tool: limits by edition of the
 * health code, cooking minima, acidity tables, allergens. Each row names its section and source.
 */
package croftboard.safety.file;
