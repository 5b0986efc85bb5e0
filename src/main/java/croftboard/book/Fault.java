package croftboard.book;

/**
 * One thing wrong in a book, for the cook at the counter.
 *
 * @param file path inside the book
 * @param line from 1; 0 when the fault is the file's as a whole
 * @param column from 1; 0 when the fault is the file's as a whole
 * @param wrong what is wrong
 * @param right what would be right
 */
public record Fault(String file, int line, int column, String wrong, String right) {
    /** {@code recipes/soups.yaml:12:7: wrong. right.} */
    @Override
    public String toString() {
        String place = line == 0 ? file : file + ":" + line + ":" + column;
        return place + ": " + wrong + (right.isEmpty() ? "" : " -> " + right);
    }
}
