/**
 * Reads a kitchen's folder of plain files (docs/book.md) into the records of {@code book},
 * reporting every fault at once. The only room beside the other {@code file} packages that knows
 * YAML and CSV. Three steps: text to {@link croftboard.book.file.Node}s that know their line and
 * column; nodes to records, one reader a kind of file; checks across files, one class a topic.
 * Whatever cannot be read becomes a fault and a placeholder, and a book with a fault is never
 * handed out.
 */
package croftboard.book.file;
