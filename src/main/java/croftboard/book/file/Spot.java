package croftboard.book.file;

/**
 * A place in a file of the book.
 *
 * @param file path inside the book, with {@code /}
 * @param line from 1; 0 when the file as a whole is meant
 * @param column from 1; 0 when the file as a whole is meant
 */
record Spot(String file, int line, int column) {
    static Spot whole(String file) {
        return new Spot(file, 0, 0);
    }

    @Override
    public String toString() {
        return line == 0 ? file : file + ":" + line + ":" + column;
    }
}
