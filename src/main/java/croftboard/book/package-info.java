/**
 * The kitchen as data: ingredients, recipes, vendors, the kitchen's own rules and seasons, as immutable records.
 * Ids are plain strings, lower-case-with-hyphens. Money is in cents, amounts keep their unit, nothing is null;
 * what may be absent is Optional. Only {@code book.file} reads files. Imports {@code measure}.
 */
package croftboard.book;
