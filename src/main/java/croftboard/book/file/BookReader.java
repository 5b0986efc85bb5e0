package croftboard.book.file;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Seasons;
import java.nio.file.Path;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads a kitchen's book: the folder of plain files that docs/book.md describes. All faults are
 * told at once, each with file, line, column, what is wrong and what would be right; with a fault
 * there is no book.
 */
public final class BookReader {
    private final Notebook notebook = new Notebook();
    private final Drafts drafts = new Drafts();
    private final Values values = new Values(notebook);
    private final Set<FileKind> present = EnumSet.noneOf(FileKind.class);

    private BookReader() { }

    /** Reads {@code kitchen/}, {@code recipes/}, {@code farms/} and {@code seasons/} under the folder. */
    public static BookReading read(Path folder) {
        BookReader reader = new BookReader();
        return BookFolder.read(folder, reader.notebook).map(reader::reading)
                .orElseGet(() -> new BookReading.Faulty(reader.notebook.faultsInOrder()));
    }

    /**
     * Reads a book from memory.
     *
     * @param files contents by path inside the book, for example {@code recipes/soups.yaml}
     */
    public static BookReading readFiles(Map<String, byte[]> files) {
        return new BookReader().reading(new TreeMap<>(files));
    }

    private BookReading reading(SortedMap<String, byte[]> files) {
        SortedMap<String, byte[]> used = new TreeMap<>();
        Map<String, byte[]> kitchens = new TreeMap<>();
        files.forEach((path, content) -> FileKind.of(path).ifPresentOrElse(kind -> {
            used.put(path, content);
            present.add(kind);
            if (kind == FileKind.KITCHEN) {
                kitchens.put(path, content);
            } else {
                file(kind, path, content);
            }
        }, () -> strange(path)));
        boolean worthOnly = drafts.isWorthOnly();
        kitchens.forEach((path, content) -> yaml(FileKind.KITCHEN, path, content, worthOnly));
        check(worthOnly);
        List<croftboard.book.Fault> faults = notebook.faultsInOrder();
        return faults.isEmpty() ? read(used) : new BookReading.Faulty(faults);
    }

    private void strange(String path) {
        FileKind.strange(path, notebook.nearest()).ifPresent(right ->
                notebook.fault(Spot.whole(path), "the book has no such file", right));
    }

    private void file(FileKind kind, String path, byte[] content) {
        if (kind != FileKind.LIST && kind != FileKind.ON_HAND) {
            yaml(kind, path, content, false);
            return;
        }
        Text.of(path, content, notebook).ifPresentOrElse(text -> {
            if (kind == FileKind.LIST) {
                new ListReader(values).read(path, text, drafts);
            } else {
                new OnHandReader(values).read(path, text, drafts);
            }
        }, () -> notebook.unread(kind));
    }

    private void yaml(FileKind kind, String path, byte[] content, boolean worthOnly) {
        int before = notebook.faultCount();
        Text.of(path, content, notebook).flatMap(t -> new YamlText(path, notebook).read(t))
                .ifPresentOrElse(root -> {
            boolean list = kind == FileKind.TARGETS || kind == FileKind.CLOSURES || kind == FileKind.CROPS
                    || kind == FileKind.OVERRIDES;
            boolean fits = list ? root instanceof Node.Sequence : root instanceof Node.Mapping;
            boolean empty = root instanceof Node.Gone || root instanceof Node.Scalar s && s.isEmpty();
            boolean needed = kind == FileKind.KITCHEN || kind == FileKind.VENDOR || kind == FileKind.DEMAND;
            if (empty && needed && notebook.faultCount() == before) {
                notebook.fault(Spot.whole(path), "the file is empty",
                        "docs/book.md shows what belongs here");
            }
            if (!fits && (needed || !empty)) {
                notebook.unread(kind);
            }
            if (!empty) {
                root(kind, path, root, worthOnly);
            }
        }, () -> notebook.unread(kind));
    }

    private void root(FileKind kind, String path, Node root, boolean worthOnly) {
        switch (kind) {
            case KITCHEN -> new KitchenReader(values).read(root, drafts, worthOnly);
            case INGREDIENTS -> new IngredientReader(values).read(path, root, drafts);
            case RECIPES -> new RecipeReader(values).read(root, drafts);
            case VENDOR -> new VendorReader(values).read(path, root, drafts);
            case SEASONS -> new SeasonsReader(values).seasons(root, drafts);
            case TARGETS -> new SeasonsReader(values).targets(root, drafts);
            case DEMAND -> new SeasonsReader(values).demand(root, drafts);
            case CLOSURES -> new SeasonsReader(values).closures(root, drafts);
            case EVENTS -> new EventReader(values).read(root, drafts);
            case CROPS -> new SeasonsReader(values).crops(root, drafts);
            case LEARNED -> new LearnedReader(values).learned(root, drafts);
            case OVERRIDES -> new LearnedReader(values).overrides(root, drafts);
            case ON_HAND, LIST -> throw new IllegalStateException("no YAML: " + kind);
        }
    }

    private void check(boolean worthOnly) {
        KitchenChecks kitchen = new KitchenChecks(notebook, drafts);
        kitchen.files(present, worthOnly);
        kitchen.check(worthOnly);
        new Links(notebook, drafts).check();
        new Rings(notebook, drafts).check();
        new LineChecks(notebook, drafts).check();
        new VendorChecks(notebook, drafts).check();
    }

    private BookReading read(SortedMap<String, byte[]> used) {
        Kitchen kitchen = drafts.kitchen.orElseThrow();
        Map<String, Seasons.LineDemand> demand = new TreeMap<>();
        drafts.demand.forEach((line, d) -> demand.put(line, new Seasons.LineDemand(d.cv(), d.mean())));
        Seasons seasons = new Seasons(fixed(drafts.seasons), List.copyOf(drafts.targets), fixed(demand),
                List.copyOf(drafts.demandFactors), fixed(drafts.closures), List.copyOf(drafts.events),
                List.copyOf(drafts.crops), drafts.learned, List.copyOf(drafts.overrides));
        Book book = new Book(kitchen, fixed(drafts.ingredients), fixed(drafts.recipes),
                fixed(drafts.vendors), seasons,
                fixed(drafts.lists), List.copyOf(drafts.onHand), Fingerprint.of(used));
        new Remarks(notebook, book).look();
        new Supply(notebook, book).look();
        return new BookReading.Read(book, notebook.warningsInOrder(), counts(book, used.size()));
    }

    private static <K, V> Map<K, V> fixed(Map<K, V> sorted) {
        return Collections.unmodifiableMap(new LinkedHashMap<>(sorted));
    }

    private static Counts counts(Book book, int files) {
        int dishes = (int) book.recipes().values().stream().filter(r -> r.isDish()).count();
        return new Counts(files, book.ingredients().size(), dishes, book.recipes().size() - dishes,
                book.vendors().size(),
                book.vendors().values().stream().mapToInt(v -> v.offers().size()).sum(), book.kitchen()
                .lines().size(),
                book.seasons().events().size(), book.lists().values().stream().mapToInt(List::size).sum(),
                book.onHand().size());
    }
}
