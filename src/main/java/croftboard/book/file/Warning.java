package croftboard.book.file;

/**
 * Something in a faultless book that deserves a look.
 *
 * @param file path inside the book
 * @param line from 1; 0 when no single line is meant
 * @param column from 1; 0 when no single line is meant
 * @param says what was seen and what would settle it
 */
public record Warning(String file, int line, int column, String says) {
    /** {@code recipes/soups.yaml:12:7: says}. */
    @Override
    public String toString() {
        return new Spot(file, line, column) + ": " + says;
    }
}
