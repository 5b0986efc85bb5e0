package croftboard.cli;

import croftboard.book.file.BookReading;
import java.nio.file.Path;

/** Where a book comes from. */
interface BookSource {
    BookReading read(Path folder);
}
