/**
 * Statements that people rely on: allergens through the whole recipe tree, diets, use-by dates. A statement is never
 * stronger than its weakest ingredient; unknown replaces only absence, never presence. Gluten-free, halal and kosher
 * are never derived. Limits of health codes are tables by edition, read in {@code safety.file}. Imports {@code measure} and
 * {@code book}.
 */
package croftboard.safety;
