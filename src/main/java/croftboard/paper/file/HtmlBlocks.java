package croftboard.paper.file;

import croftboard.book.LabelStock;
import croftboard.paper.Block;
import croftboard.paper.LabelFit;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** Blocks as markup. */
final class HtmlBlocks {
    /** Free space beside a column. */
    private static final double BESIDE = 0.6;
    private final Markup out;
    private final double ems;

    /** @param ems width there is, in sizes of type */
    HtmlBlocks(Markup out, double ems) {
        this.out = out;
        this.ems = ems;
    }

    void all(List<Block> blocks) {
        blocks.forEach(this::one);
    }

    private void one(Block block) {
        if (block instanceof Block.Heading h) {
            String tag = "h" + (h.level() + 1);
            out.open(tag).lines(Visible.of(h.text())).close(tag);
        } else if (block instanceof Block.Text t) {
            out.open("p").lines(Visible.of(t.text())).close("p");
        } else if (block instanceof Block.Fields f) {
            fields(f);
        } else if (block instanceof Block.Table t) {
            table(t);
        } else if (block instanceof Block.Notice n) {
            out.open("div", "class", "notice").lines(Visible.of(n.text())).close("div");
        } else if (block instanceof Block.Ticks t) {
            ticks(t);
        } else if (block instanceof Block.Blank b) {
            for (int i = 0; i < b.lines(); i++) {
                out.element("div", "", "class", "rule");
            }
        } else if (block instanceof Block.NewPage) {
            out.element("div", "", "class", "newpage");
        } else if (block instanceof Block.Picture p) {
            out.open("div", "class", "picture", "title", Visible.line(p.alt())).raw(p.svg()).close("div");
        } else if (block instanceof Block.Columns c) {
            columns(c);
        } else if (block instanceof Block.LabelPage l) {
            labels(l);
        }
    }

    private void fields(Block.Fields fields) {
        out.open("table", "class", "fields");
        for (Block.Field f : fields.fields()) {
            out.open("tr").open("th").lines(Visible.of(f.name())).close("th");
            out.open("td", "class", f.value().isEmpty() ? "write" : "").lines(Visible.of(f.value())).close("td").close("tr");
        }
        out.close("table");
    }

    private void table(Block.Table table) {
        table.caption().ifPresent(c -> out.open("h4").lines(Visible.of(c)).close("h4"));
        out.open("table", "class", "grid");
        for (double part : ColumnWidths.of(table, ems)) {
            out.empty("col", "style", String.format(Locale.ROOT, "width:%.2f%%", 100 * part));
        }
        out.open("thead").open("tr");
        table.columns().forEach(c -> out.open("th", "class", cell(c)).lines(Visible.of(c.name())).close("th"));
        out.close("tr").close("thead").open("tbody");
        table.rows().forEach(r -> row(table, r));
        out.close("tbody").close("table");
    }

    private void row(Block.Table table, Block.Row row) {
        out.open("tr", "class", row.kind().name().toLowerCase(Locale.ROOT));
        if (row.kind() == Block.Kind.GROUP) {
            out.open("td", "colspan", Integer.toString(table.columns().size())).lines(Visible.of(row.cells().get(0)))
                    .close("td");
        } else {
            for (int i = 0; i < row.cells().size(); i++) {
                String text = Visible.of(row.cells().get(i));
                Block.Column column = table.columns().get(i);
                out.open("td", "class", cell(column) + (ColumnWidths.whole(column, text) ? " whole" : "")).lines(text).close("td");
            }
        }
        out.close("tr");
    }

    private static String cell(Block.Column column) {
        return column.align().name().toLowerCase(Locale.ROOT) + (column.toWriteIn() ? " write" : "");
    }

    private void ticks(Block.Ticks ticks) {
        out.open("table", "class", "ticks");
        for (String line : ticks.lines()) {
            out.open("tr").element("td", "\u2610", "class", "box").open("td").lines(Visible.of(line)).close("td").close("tr");
        }
        out.close("table");
    }

    private void columns(Block.Columns columns) {
        String width = String.format(Locale.ROOT, "width:%.2f%%", 100.0 / columns.columns().size());
        out.open("table", "class", "beside").open("tr");
        columns.columns().forEach(c -> {
            out.open("td", "style", width);
            new HtmlBlocks(out, ems / columns.columns().size() - BESIDE).all(c);
            out.close("td");
        });
        out.close("tr").close("table");
    }

    private void labels(Block.LabelPage page) {
        LabelStock stock = page.stock();
        int each = stock.rows() * stock.columns();
        for (int from = 0; from < page.cells().size(); from += each) {
            out.open("div", "class", from == 0 ? "stock" : "stock more");
            for (int i = from; i < Math.min(from + each, page.cells().size()); i++) {
                label(page, page.cells().get(i), (i - from) / stock.columns(), (i - from) % stock.columns());
            }
            out.close("div");
        }
    }

    private void label(Block.LabelPage page, List<Block> blocks, int row, int column) {
        if (blocks.isEmpty()) {
            return;
        }
        LabelStock s = page.stock();
        OptionalInt type = LabelFit.type(s, blocks, page.leastType(), page.mostType());
        out.open("div", "class", "label", "style", String.format(Locale.ROOT,
                "left:%.3fmm;top:%.3fmm;width:%.3fmm;height:%.3fmm;font-size:%dpt", mm(s.left() + column * s.pitchX()),
                mm(s.top() + row * s.pitchY()), mm(s.width()), mm(s.height()), type.orElse(page.leastType())));
        out.open("div", "class", "in");
        all(blocks);
        out.close("div").close("div");
    }

    private static double mm(int micrometres) {
        return micrometres / 1000.0;
    }
}
