package croftboard.cli.screen;

import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Days across, lines down. When the page is too narrow for the week, blocks of days stand below each other. */
final class MenuGrid {
    private static final int LEAST_COLUMN = 15;
    private static final int MOST_NAME_LINES = 4;
    private static final String GAP = "  ";
    private final Names names;
    private final List<LocalDate> days;
    private final Map<String, List<WeekPlan.Served>> byLine;

    MenuGrid(Names names, List<LocalDate> days, Map<String, List<WeekPlan.Served>> byLine) {
        this.names = names;
        this.days = days;
        this.byLine = byLine;
    }

    void print(Page page) {
        int longest = byLine.keySet().stream().mapToInt(l -> PlainText.width(PlainText.clean(names.line(l)))).max().orElse(4);
        int label = Math.min(14, Math.max(4, longest));
        int fit = Math.max(1, (page.width() - label) / (LEAST_COLUMN + GAP.length()));
        int blocks = (days.size() + fit - 1) / fit;
        int perBlock = (days.size() + blocks - 1) / blocks;
        int column = (page.width() - label) / perBlock - GAP.length();
        for (int first = 0; first < days.size(); first += perBlock) {
            if (first > 0) {
                page.gap();
            }
            block(page, first, Math.min(days.size(), first + perBlock), label, Math.min(28, column));
        }
        page.gap();
    }

    private void block(Page page, int first, int end, int label, int column) {
        StringBuilder head = new StringBuilder(PlainText.padded("line", label, false));
        StringBuilder rule = new StringBuilder("-".repeat(label));
        for (int d = first; d < end; d++) {
            head.append(GAP).append(PlainText.padded(PlainText.cut(Dates.day(days.get(d)), column), column, false));
            rule.append(GAP).append("-".repeat(column));
        }
        page.fitted(head.toString());
        page.fitted(rule.toString());
        byLine.forEach((line, served) -> {
            List<Cell> cells = cells(served, first, end);
            if (!cells.isEmpty()) {
                row(page, PlainText.wrap(PlainText.clean(names.line(line)), label, MOST_NAME_LINES), cells, first,
                        label, column);
            }
        });
    }

    /** What stands in some columns of a block. @param to not included */
    private record Cell(int from, int to, WeekPlan.Served served, boolean begunBefore) { }

    private List<Cell> cells(List<WeekPlan.Served> served, int first, int end) {
        List<Cell> cells = new ArrayList<>();
        for (WeekPlan.Served s : served) {
            int from = days.indexOf(s.days().get(0));
            int to = days.indexOf(s.days().get(s.days().size() - 1)) + 1;
            if (from < end && to > first) {
                cells.add(new Cell(Math.max(first, from), Math.min(end, to), s, from < first));
            }
        }
        return cells;
    }

    private void row(Page page, List<String> label, List<Cell> cells, int first, int labelWidth, int column) {
        List<List<String>> texts = new ArrayList<>();
        for (Cell cell : cells) {
            texts.add(text(cell, width(cell, column)));
        }
        int height = Math.max(label.size(), texts.stream().mapToInt(List::size).max().orElse(0));
        for (int h = 0; h < height; h++) {
            StringBuilder line = new StringBuilder(PlainText.padded(h < label.size() ? label.get(h) : "", labelWidth, false));
            int at = first;
            for (int c = 0; c < cells.size(); c++) {
                line.append((GAP + " ".repeat(column)).repeat(cells.get(c).from - at));
                String words = h < texts.get(c).size() ? texts.get(c).get(h) : "";
                line.append(GAP).append(PlainText.padded(words, width(cells.get(c), column), false));
                at = cells.get(c).to;
            }
            page.fitted(line.toString());
        }
        page.gap();
    }

    private static int width(Cell cell, int column) {
        int span = cell.to - cell.from;
        return span * column + (span - 1) * GAP.length();
    }

    private List<String> text(Cell cell, int width) {
        WeekPlan.Served s = cell.served;
        if (s.recipe().isEmpty()) {
            return List.of("(nothing)");
        }
        String since = cell.begunBefore ? "since " + Dates.day(s.days().get(0)).substring(0, 3) + ": " : "";
        String name = since + PlainText.clean(names.recipe(s.recipe().get()));
        List<String> lines = new ArrayList<>(PlainText.wrap(name, width, MOST_NAME_LINES));
        boolean spans = cell.to - cell.from > 1;
        int room = width - PlainText.width(lines.get(0)) - 2;
        if (spans && room > 2) {
            lines.set(0, lines.get(0) + " " + "-".repeat(room) + ">");
        }
        String kept = names.isStanding(s.line()) ? "always" : s.kept() ? "kept" : "";
        lines.addAll(PlainText.wrap(PlainText.clean(s.portions() + " " + s.marks() + " " + kept), width));
        return lines;
    }
}
