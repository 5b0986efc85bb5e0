/**
 * What people work from: each sheet of a week as pure data, made from a book and a plan. A maker writes words and numbers,
 * never markup; {@code paper.file} turns the same records into HTML, PDF, CSV and plain text. Imports {@code measure},
 * {@code book}, {@code need}, {@code safety} and {@code plan}.
 */
package croftboard.paper;
