package croftboard.paper.file;

import croftboard.paper.Data;
import croftboard.paper.Origin;
import croftboard.paper.Sheet;
import croftboard.plan.file.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Sheets of several weeks as files in one folder. All contents are made before the first file is written, each file is
 * written whole or not at all.
 */
public final class AheadFiles {
    private final Origin from;
    private final Map<String, byte[]> files = new LinkedHashMap<>();

    public AheadFiles(Origin from) {
        this.from = from;
    }

    /** All sheets as one file. @param name without its ending */
    public AheadFiles sheets(String name, List<Sheet> sheets, PaperFormat format) throws IOException {
        String title = sheets.get(0).kind().title() + " " + from.name();
        switch (format) {
            case PDF -> {
                try (PDDocument pdf = new PdfPress(from).document(new HtmlPages(from).forPaper(title, sheets), sheets.get(0).kind().ordinal())) {
                    files.put(name + ".pdf", PdfPress.bytes(pdf));
                }
            }
            case HTML -> text(name + ".html", new HtmlPages(from).forScreen(title, sheets));
            case CSV -> {
                for (Sheet s : sheets) {
                    text((sheets.size() == 1 ? name : s.id()) + ".csv", CsvSheet.of(s.data()));
                }
            }
            case TEXT -> {
                StringBuilder text = new StringBuilder();
                Foot foot = new Foot(from);
                sheets.forEach(s -> text.append(foot.told(s).map(t -> t + "\n\n").orElse("")).append(TextSheet.of(s)).append('\n'));
                text(name + ".txt", text + foot.plan() + "\n" + foot.origin() + "\n");
            }
        }
        return this;
    }

    public AheadFiles text(String name, String text) {
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    public AheadFiles table(String name, Data data) {
        return text(name + ".csv", CsvSheet.of(data));
    }

    /** @param tables by the worksheet's name */
    public AheadFiles workbook(String name, Map<String, Data> tables) throws IOException {
        files.put(name + ".xlsx", Workbooks.of(tables));
        return this;
    }

    public boolean isEmpty() {
        return files.isEmpty();
    }

    /** @return what was written, in the order in which it was asked for */
    public List<Path> into(Path folder) throws IOException {
        List<Path> written = new ArrayList<>();
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            Path path = folder.resolve(file.getKey());
            WholeFile.makeFolder(path.getParent());
            WholeFile.replace(path, file.getValue());
            written.add(path);
        }
        return written;
    }
}
