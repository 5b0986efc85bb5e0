package croftboard.book.file;

import croftboard.book.LabelStock;
import croftboard.measure.Ratio;
import java.math.BigInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code {rows: 5, columns: 2, width: 4 in, height: 2 in, top: 1/2 in, left: 5/32 in, across: 4-3/16 in, down: 2 in}}. */
final class LabelStockReader {
    private static final Pattern LENGTH =
            Pattern.compile("(?:(\\d{1,4})-)?(\\d{1,5})(?:/(\\d{1,4})|\\.(\\d{1,4}))? *(in|mm)");
    private static final int INCH = 25_400;
    private static final int MILLIMETRE = 1_000;
    private static final int MOST = 500_000;
    private static final int MOST_CELLS = 60;
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    LabelStockReader(Values values, Quantities quantities) {
        this.values = values;
        this.quantities = quantities;
        this.notebook = values.notebook();
    }

    /** @param letter the paper is US letter; false: A4 */
    LabelStock read(Node node, boolean letter) {
        int before = notebook.faultCount();
        Fields f = Fields.of(notebook, Form.LABELS, "the label sheet", node.spot(), node);
        int rows = f.get("rows", n -> quantities.whole(n, 1, MOST_CELLS));
        int columns = f.get("columns", n -> quantities.whole(n, 1, MOST_CELLS));
        int width = f.get("width", n -> length(n, 1));
        int height = f.get("height", n -> length(n, 1));
        LabelStock stock = new LabelStock(rows, columns, f.get("top", n -> length(n, 0)), f.get("left", n -> length(n, 0)),
                width, height, f.or("across", width, n -> length(n, 1)), f.or("down", height, n -> length(n, 1)));
        if (notebook.faultCount() == before) {
            fits(f, stock, letter);
        }
        return stock;
    }

    private void fits(Fields f, LabelStock s, boolean letter) {
        fit(f, "across", "width", s.columns() > 1 && s.pitchX() < s.width(), s.left()
                + (s.columns() - 1L) * s.pitchX() + s.width(), letter ? 8 * INCH + INCH / 2 : 210 * MILLIMETRE, "wide");
        fit(f, "down", "height", s.rows() > 1 && s.pitchY() < s.height(), s.top()
                + (s.rows() - 1L) * s.pitchY() + s.height(), letter ? 11 * INCH : 297 * MILLIMETRE, "high");
    }

    private void fit(Fields f, String pitch, String size, boolean overlap, long taken, long paper, String way) {
        if (overlap) {
            notebook.fault(f.get(pitch).spot(), "the labels overlap: from one to the next it is less than a label is " + way,
                    "write as " + pitch + " the way from one label's edge to the same edge of the next");
        } else if (taken > paper) {
            notebook.fault(f.get(size).spot(), "the labels need " + taken / MILLIMETRE + " mm, but the paper is "
                    + paper / MILLIMETRE + " mm " + way, "measure a sheet again, or change paper: in the kitchen file");
        }
    }

    /** In micrometres, rounded once. */
    private int length(Node node, int least) {
        String wanted = "a length like 2-5/8 in or 66.7 mm";
        return values.value(node, wanted, INCH, s -> {
            Matcher m = LENGTH.matcher(s.text().strip());
            if (!m.matches() || m.group(3) != null && m.group(3).matches("0+")
                    || m.group(1) != null && m.group(3) == null) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no length", "write " + wanted);
                return null;
            }
            long micrometres = inUnits(m).times(m.group(5).equals("in") ? INCH : MILLIMETRE).round();
            if (micrometres < least || micrometres > MOST) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no length on a sheet of paper", "write " + wanted);
                return null;
            }
            return (int) micrometres;
        });
    }

    private static Ratio inUnits(Matcher m) {
        Ratio whole = Ratio.of(m.group(1) == null ? 0 : Long.parseLong(m.group(1)));
        if (m.group(4) != null) {
            return new Ratio(new BigInteger(m.group(2) + m.group(4)), BigInteger.TEN.pow(m.group(4).length()));
        }
        return whole.plus(Ratio.of(Long.parseLong(m.group(2)), m.group(3) == null ? 1 : Long.parseLong(m.group(3))));
    }
}
