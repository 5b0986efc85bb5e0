package croftboard.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The folder on the disk: links, large files, what is no file. */
class FolderTest {
    @TempDir
    private Path temp;
    private Path book;

    @BeforeEach
    void copyTheSmallKitchen() throws IOException {
        book = Files.createDirectory(temp.resolve("book"));
        for (var file : SmallKitchen.files(SmallKitchen.FOLDER).entrySet()) {
            Path path = book.resolve(file.getKey());
            Files.createDirectories(path.getParent());
            Files.write(path, file.getValue());
        }
    }

    private List<String> faults() {
        return BookReader.read(book).faultsFound().stream().map(Fault::toString).toList();
    }

    @Test
    void linkOutOfTheBook_isRefused_andNotMissed() throws IOException {
        Path outside = temp.resolve("components.yaml");
        Files.move(book.resolve("recipes/components.yaml"), outside);
        Files.createSymbolicLink(book.resolve("recipes/components.yaml"), outside);
        assertThat(faults())
                .containsExactly(
                "recipes/components.yaml: the link leads out of the book -> put the file itself here");
    }

    @Test
    void linkedFolderOutOfTheBook_isRefused_andNotMissed() throws IOException {
        Files.move(book.resolve("farms"), temp.resolve("farms"));
        Files.createSymbolicLink(book.resolve("farms"), Path.of("../farms"));
        assertThat(faults())
                .containsExactly("farms: the link leads out of the book -> put the file itself here");
    }

    @Test
    void linkInsideTheBook_isRead() throws IOException {
        Files.createDirectory(book.resolve("shelves"));
        Files.move(book.resolve("kitchen/ingredients/dairy.yaml"), book.resolve("shelves/dairy.yaml"));
        Files.createSymbolicLink(book.resolve("kitchen/ingredients/dairy.yaml"),
                Path.of("../../shelves/dairy.yaml"));
        assertThat(BookReader.read(book).orElseThrow().fingerprint())
                .isEqualTo(SmallKitchen.book().fingerprint());
    }

    @Test
    void linkToItself_andLinkInCircles() throws IOException {
        Files.createSymbolicLink(book.resolve("recipes/loop.yaml"), Path.of("loop.yaml"));
        Files.createSymbolicLink(book.resolve("seasons/again"), book.resolve("seasons"));
        assertThat(faults())
                .contains("recipes/loop.yaml: the file cannot be read -> check the link or the file's "
                + "permissions")
                .allMatch(f -> f.startsWith("recipes/loop.yaml: ") || f.startsWith("seasons/again/"));
    }

    @Test
    void linkToNothing_isRefused() throws IOException {
        Files.createSymbolicLink(book.resolve("seasons/gone.yaml"), Path.of("nowhere.yaml"));
        assertThat(faults())
                .containsExactly(
                "seasons/gone.yaml: the file cannot be read -> check the link or the file's permissions");
    }

    @Test
    void largeFile_isRefusedUnread() throws IOException {
        Files.write(book.resolve("seasons/crops.yaml"), new byte[(1 << 20) + 1]);
        assertThat(faults())
                .containsExactly(
                "seasons/crops.yaml: the file is larger than 1 MB -> split it; a file is at most 1 MB");
    }

    @Test
    void folderThatIsNotThere() {
        assertThat(BookReader.read(temp.resolve("nobook")).faultsFound()).singleElement()
                .satisfies(f -> assertThat(f.wrong())
                .isEqualTo("there is no such folder, or it may not be read"));
    }

    @Test
    void folderWhereAFileBelongs() throws IOException {
        Files.delete(book.resolve("seasons/closures.yaml"));
        Files.createDirectory(book.resolve("seasons/closures.yaml"));
        assertThat(faults()).isEmpty();
    }

    @Test
    void whatLiesBesideTheBook_isNotRead() throws IOException {
        Files.createDirectories(book.resolve("src/test"));
        Files.writeString(book.resolve("src/test/x.yaml"), "{");
        Files.writeString(book.resolve("x.yaml"), "{");
        Files.createSymbolicLink(book.resolve("src/out.yaml"), temp);
        Files.createDirectory(book.resolve("recipes/.hidden"));
        Files.writeString(book.resolve("recipes/.hidden/x.yaml"), "{");
        assertThat(BookReader.read(book).orElseThrow().fingerprint())
                .isEqualTo(SmallKitchen.book().fingerprint());
    }
}
