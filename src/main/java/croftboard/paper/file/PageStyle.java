package croftboard.paper.file;

import croftboard.paper.WallPaper;

/** The part of the style that depends on where the sheets go. */
final class PageStyle {
    private static final String FOOT = """
            .foot td { padding: 0; font-size: 11pt; }
            .foot td.right { text-align: right; }
            .foot .origin { font-size: 9pt; }
            """;

    /** Only on pages that have something to tell: the words would stay for the sheets that follow. */
    private static final String TOLD =
            "  @top-left { content: element(told); width: 100%; vertical-align: bottom; padding-bottom: 4pt; }\n";

    private PageStyle() { }

    static String screen() {
        return FOOT + """
                section { max-width: 60em; margin: 1.5em auto; padding: 0 1em 1em 1em; border-bottom: 2px solid #000; }
                .foot { margin-top: 1.5em; }
                section.bare .foot { display: none; }
                @page { size: auto; margin: 12mm; }
                """;
    }

    /** @param paper letter or a4 */
    static String paper(String paper) {
        boolean a4 = paper.equals("a4");
        String size = a4 ? "A4" : "letter";
        return FOOT + page("tall", size + " portrait", "0.55in", "") + page("talltold", size + " portrait", "0.95in", TOLD)
                + page("wide", size + " landscape", "0.55in", "") + page("widetold", size + " landscape", "0.8in", TOLD)
                // a named page does not widen what stands on it: say how wide it is, paper less margins
                + "section.wide, section.wide-told { width: " + (a4 ? "10.59in" : "9.9in") + "; }\n"
                + page("wall", wall(paper), "0.55in", "") + page("walltold", wall(paper), "0.8in", TOLD)
                + "section.wall { page: wall; } section.wall-told { page: walltold; }\n"
                + "@page bare { size: " + size + " portrait; margin: 0; }\n" + """
                .foot { position: running(foot); border-top: 0.75pt solid #000; padding-top: 2pt; }
                .told { position: running(told); font-size: 11pt; }
                .page:after { content: counter(page); }
                .pages:after { content: counter(pages); }
                section:first-child { page-break-before: auto; }
                """ + block("tall", width(paper, false)) + block("wide", width(paper, true)) + block("wall", wallWidth(paper));
    }

    /** The layout takes every page to be as wide as the first one: each block is told its own width. */
    private static String block(String name, double width) {
        return String.format(java.util.Locale.ROOT, "section.%s, section.%s-told { width: %.1fpt; }\n", name, name, width);
    }

    /** Two sheets of the kitchen's paper side by side, upright. */
    private static String wall(String paper) {
        return paper.equals("a4") ? "A3 portrait" : "11in 17in";
    }

    /** Points between the margins of a wall sheet. */
    static double wallWidth(String paper) {
        return WallPaper.of(paper).wide();
    }

    /** Points between the margins. */
    static double width(String paper, boolean landscape) {
        double whole = paper.equals("a4") ? (landscape ? 297 : 210) / 25.4 : landscape ? 11 : 8.5;
        return (whole - 2 * 0.55) * 72;
    }

    private static String page(String name, String size, String top, String told) {
        return "@page " + name + " { size: " + size + "; margin: " + top + " 0.55in 0.75in 0.55in;\n"
                + told
                + "  @bottom-left { content: element(foot); width: 100%; vertical-align: top; } }\n";
    }
}
