package croftboard.plan.check;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.book.file.SmallKitchen;
import java.nio.charset.StandardCharsets;
import java.util.SortedMap;

/** The small sample kitchen with other words in its files. Its fingerprint is kept, as if nothing had been changed. */
final class EditedKitchen {
    private final SortedMap<String, byte[]> files = SmallKitchen.files(SmallKitchen.FOLDER);
    private final String fingerprint = SmallKitchen.book().fingerprint();

    EditedKitchen change(String path, String before, String after) {
        String text = new String(files.get(path), StandardCharsets.UTF_8);
        assertThat(text).contains(before);
        files.put(path, text.replace(before, after).getBytes(StandardCharsets.UTF_8));
        return this;
    }

    Book book() {
        Book b = BookReader.readFiles(files).orElseThrow();
        return new Book(b.kitchen(), b.ingredients(), b.recipes(), b.vendors(), b.seasons(), b.lists(), b.onHand(),
                fingerprint);
    }
}
