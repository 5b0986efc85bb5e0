package croftboard.paper.file;

import croftboard.paper.Origin;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.Typeface;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Sheets as one HTML document, well-formed as XML: for a browser as it is, for paper with its pages numbered. */
final class HtmlPages {
    private static final String STYLE = resource("/paper/sheet.css");
    /** Part of a line that words are taken to need no more than. */
    private static final double SPARE = 0.98;
    private final String size;
    private final Foot foot;

    HtmlPages(PaperContext context) {
        this(context.origin());
    }

    HtmlPages(Origin from) {
        this.size = from.book().kitchen().paper();
        this.foot = new Foot(from);
    }

    private static String resource(String name) {
        try (InputStream in = HtmlPages.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String forScreen(String title, List<Sheet> sheets) {
        return document(title, sheets, PageStyle.screen(), false);
    }

    String forPaper(String title, List<Sheet> sheets) {
        return document(title, sheets, PageStyle.paper(size), true);
    }

    private String document(String title, List<Sheet> sheets, String pages, boolean paper) {
        Markup out = paper ? new Markup(Typeface.plain()::has) : new Markup();
        out.raw("<!DOCTYPE html>\n").open("html", "lang", "en").open("head").empty("meta", "charset", "UTF-8");
        out.element("title", Visible.line(title)).raw("<style>\n" + STYLE + pages + "</style>").close("head").open("body");
        sheets.forEach(s -> sheet(out, s, paper));
        return out.close("body").close("html").raw("\n").toString();
    }

    private void sheet(Markup out, Sheet sheet, boolean paper) {
        Optional<String> told = foot.told(sheet);
        Sheet.Look look = sheet.look();
        boolean wall = sheet.kind() == SheetKind.WALL;
        String page = look.bare() ? "bare" : (wall ? "wall" : look.landscape() ? "wide" : "tall") + (told.isPresent() ? "-told" : "");
        out.raw("\n").open("section", "id", sheet.id(), "class", page + " t" + look.type());
        if (!look.bare()) {
            told.ifPresent(t -> out.element("div", t, "class", "told"));
            if (paper) {
                foot(out, sheet, true);
            }
            out.open("h1").lines(Visible.of(sheet.title())).close("h1");
            sheet.under().forEach(u -> out.open("p", "class", "under").lines(Visible.of(u)).close("p"));
        }
        double width = wall ? PageStyle.wallWidth(size) : PageStyle.width(size, look.landscape());
        new HtmlBlocks(out, width / look.type() * SPARE).all(sheet.blocks());
        if (!paper) {
            foot(out, sheet, false);
        }
        out.close("section");
    }

    private void foot(Markup out, Sheet sheet, boolean paper) {
        out.open("div", "class", "foot").open("table").open("tr");
        out.element("td", foot.title(sheet)).open("td", "class", "right");
        out.text(foot.plan());
        if (paper) {
            out.text(" \u00b7 page ").element("span", "", "class", "page").text(" of ").element("span", "", "class", "pages");
        }
        out.close("td").close("tr").close("table").element("div", foot.origin(), "class", "origin").close("div");
    }
}
