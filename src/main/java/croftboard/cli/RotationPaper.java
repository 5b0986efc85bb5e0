package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.ahead.AheadContext;
import croftboard.paper.ahead.CropSheet;
import croftboard.paper.ahead.RotationTables;
import croftboard.paper.ahead.WallSheet;
import croftboard.paper.file.AheadFiles;
import croftboard.paper.file.PaperFormat;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What {@code paper} writes of a rotation: the wall sheet, crop use as pages and as a drawing, and all of it as tables. */
final class RotationPaper {
    private final AheadContext context;
    private final Set<SheetKind> kinds;
    private final PaperFormat format;

    /** @param kinds none: all */
    RotationPaper(AheadContext context, Set<SheetKind> kinds, PaperFormat format) {
        this.context = context;
        this.kinds = kinds;
        this.format = format;
        kinds.stream().filter(k -> k != SheetKind.WALL && k != SheetKind.CROPS).findFirst().ifPresent(k -> {
            throw new WrongUse("--sheet " + k + ": a rotation has no such sheet -> wall, crops" + (k == SheetKind.NOTICE
                    ? "; notices: croftboard notice " + context.rotation().span() : k.ofARotation() ? "" : "; for one week: croftboard paper "
                    + context.rotation().span().first()));
        });
    }

    /** @param out empty: a folder of the rotation's own */
    String write(Path book, Optional<Path> out, Page page) {
        Path folder = out.orElseGet(() -> book.resolve("paper").resolve(context.rotation().span().toString()));
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new WrongUse("--out " + folder + " is a file -> name a folder; it is made when it is not there");
        }
        try {
            files().into(folder).forEach(f -> page.item("wrote ", f.toString()));
        } catch (IOException e) {
            throw new UncheckedIOException(folder + " cannot be written: " + e.getMessage(), e);
        }
        if (!context.rotation().fingerprint().equals(context.book().fingerprint())) {
            page.say("The book has changed since this rotation was made: names, recipes and what farms expect may differ from it.");
        }
        if (wants(SheetKind.WALL) && format == PaperFormat.PDF) {
            page.say("The wall sheet is for paper of twice the size (11 x 17 inches, or A3). On smaller paper let the printer fit it to the page.");
        }
        return page.toString();
    }

    private boolean wants(SheetKind kind) {
        return kinds.isEmpty() || kinds.contains(kind);
    }

    private AheadFiles files() throws IOException {
        AheadFiles files = new AheadFiles(context.origin());
        if (format == PaperFormat.CSV) {
            RotationTables.all(context).forEach((name, data) -> files.table(name, data));
            return files;
        }
        if (wants(SheetKind.WALL)) {
            List<Sheet> wall = WallSheet.of(context);
            files.sheets("wall", wall, format);
        }
        if (wants(SheetKind.CROPS)) {
            files.sheets("crops", CropSheet.of(context), format);
            if (format == PaperFormat.PDF || format == PaperFormat.HTML) {
                files.text("crops.svg", CropSheet.drawing(context));
            }
        }
        if (kinds.isEmpty() && format == PaperFormat.PDF) {
            RotationTables.all(context).forEach((name, data) -> files.table("tables/" + name, data));
            files.workbook("rotation", RotationTables.all(context));
        }
        return files;
    }
}
