package croftboard.paper.file;

import croftboard.paper.Block;
import croftboard.paper.Sheet;
import java.util.ArrayList;
import java.util.List;

/** A sheet as plain text: what was printed, line by line, without what comes from the clock. */
final class TextSheet {
    private static final String BLANK = "____";
    private final StringBuilder out = new StringBuilder();

    private TextSheet() { }

    static String of(Sheet sheet) {
        TextSheet text = new TextSheet();
        text.line(sheet.title()).line("=".repeat(Math.min(100, Math.max(3, Visible.line(sheet.title()).length()))));
        sheet.under().forEach(text::line);
        text.blocks(sheet.blocks(), "");
        return text.out.toString();
    }

    private TextSheet line(String words) {
        return line("", words);
    }

    /** @param indent before each line of the words */
    private TextSheet line(String indent, String words) {
        for (String line : Visible.of(words).split("\n", -1)) {
            out.append((indent + line).stripTrailing()).append('\n');
        }
        return this;
    }

    private void blocks(List<Block> blocks, String indent) {
        blocks.forEach(b -> block(b, indent));
    }

    private void block(Block block, String indent) {
        if (block instanceof Block.Heading h) {
            line(indent, "").line(indent, "#".repeat(h.level()) + " " + h.text());
        } else if (block instanceof Block.Text t) {
            line(indent, t.text());
        } else if (block instanceof Block.Fields f) {
            f.fields().forEach(x -> line(indent, x.name() + ": " + (x.value().isEmpty() ? BLANK : x.value())));
        } else if (block instanceof Block.Table t) {
            table(t);
        } else if (block instanceof Block.Notice n) {
            line(indent, "! " + n.text());
        } else if (block instanceof Block.Ticks t) {
            t.lines().forEach(l -> line(indent, "[ ] " + l));
        } else if (block instanceof Block.Blank b) {
            line(indent, (BLANK.repeat(5) + "\n").repeat(b.lines()).stripTrailing());
        } else if (block instanceof Block.NewPage) {
            line("").line("--- new page ---");
        } else if (block instanceof Block.Picture p) {
            line(indent, "(" + p.alt() + ")");
        } else if (block instanceof Block.Columns c) {
            c.columns().forEach(x -> {
                line(indent, "|");
                blocks(x, indent + "| ");
            });
        } else if (block instanceof Block.LabelPage l) {
            l.cells().forEach(x -> {
                line(indent, (x.isEmpty() ? "[free label]" : "[label]"));
                blocks(x, indent + "  ");
            });
        }
    }

    private void table(Block.Table table) {
        line("");
        table.caption().ifPresent(this::line);
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.columns().stream().map(c -> flat(c.name())).toList());
        table.rows().stream().filter(r -> r.kind() != Block.Kind.GROUP).forEach(r -> rows.add(cells(table, r)));
        int[] widths = new int[table.columns().size()];
        rows.forEach(r -> {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], length(r.get(i)));
            }
        });
        row(table, rows.get(0), widths);
        line("-".repeat(java.util.Arrays.stream(widths).sum() + 2 * widths.length - 2));
        for (Block.Row r : table.rows()) {
            if (r.kind() == Block.Kind.GROUP) {
                line("## " + r.cells().get(0));
            } else {
                row(table, cells(table, r), widths);
            }
        }
    }

    private static List<String> cells(Block.Table table, Block.Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            String cell = flat(row.cells().get(i));
            cells.add(cell.isEmpty() && table.columns().get(i).toWriteIn() ? BLANK : cell);
        }
        return cells;
    }

    private void row(Block.Table table, List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String pad = " ".repeat(widths[i] - length(cells.get(i)));
            line.append(table.columns().get(i).align() == Block.Align.RIGHT ? pad + cells.get(i) : cells.get(i) + pad).append("  ");
        }
        line(line.toString());
    }

    private static String flat(String text) {
        return Visible.of(text).replace("\n", " / ").strip();
    }

    private static int length(String text) {
        return text.codePointCount(0, text.length());
    }
}
