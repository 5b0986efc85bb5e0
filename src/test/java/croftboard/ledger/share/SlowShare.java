package croftboard.ledger.share;

import croftboard.book.LocalRules.Definition;
import croftboard.ledger.Entry;
import croftboard.ledger.Form;
import croftboard.ledger.Forms;
import croftboard.ledger.Ledger;
import croftboard.ledger.Receipt;
import croftboard.measure.Place;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The share once more, slowly, from the ledger as text: rows of named cells, corrections applied here, miles by the chord of
 * two points on the sphere, every rule written out. It shares no code with what it judges but the columns' names.
 */
final class SlowShare {
    private final List<Map<String, String>> rows = new ArrayList<>();
    private final Set<String> corrected = new TreeSet<>();

    SlowShare(Ledger ledger) {
        Form<Receipt> form = Forms.of(Receipt.class);
        for (Entry entry : ledger.everything()) {
            entry.stamp().corrects().ifPresent(c -> corrected.add(Long.toString(c.entry())));
            if (entry instanceof Receipt) {
                Map<String, String> row = new HashMap<>();
                List<String> cells = form.cells(entry);
                for (int i = 0; i < cells.size(); i++) {
                    row.put(form.columns().get(i).name(), cells.get(i));
                }
                row.put("id", Long.toString(entry.stamp().id()));
                row.put("day", entry.date().toString());
                rows.add(row);
            }
        }
    }

    /** Cents: local, not local, not classified, of mixed food that counts whole, its local part, that does not count, its part. */
    long[] cents(Definition d, LocalDate from, LocalDate to) {
        BigDecimal[] sums = new BigDecimal[7];
        java.util.Arrays.fill(sums, BigDecimal.ZERO);
        for (Map<String, String> row : rows) {
            if (corrected.contains(row.get("id")) || !row.get("what").equals("FOOD") || row.get("day").compareTo(from.toString()) < 0
                    || row.get("day").compareTo(to.toString()) > 0) {
                continue;
            }
            BigDecimal cents = new BigDecimal(row.get("cents"));
            char answer = answer(d, row);
            int at = answer == 'L' ? 0 : answer == 'N' ? 1 : 2;
            sums[at] = sums[at].add(cents);
            if (!row.get("local_part").isEmpty() && at < 2) {
                sums[3 + 2 * at] = sums[3 + 2 * at].add(cents);
                sums[4 + 2 * at] = sums[4 + 2 * at].add(part(row.get("local_part"), cents));
            }
        }
        return java.util.Arrays.stream(sums).mapToLong(BigDecimal::longValueExact).toArray();
    }

    /** To the nearest cent, a half towards plus. */
    private static BigDecimal part(String ratio, BigDecimal cents) {
        String[] parts = (ratio.contains("/") ? ratio : ratio + "/1").split("/");
        BigDecimal twice = cents.multiply(new BigDecimal(parts[0])).multiply(BigDecimal.valueOf(2)).add(new BigDecimal(parts[1]));
        return twice.divide(new BigDecimal(parts[1]).multiply(BigDecimal.valueOf(2)), 0, java.math.RoundingMode.FLOOR);
    }

    private static char answer(Definition d, Map<String, String> row) {
        char grown = place(d, row.get("grown"));
        char made = row.get("made").equals("raw") ? grown : place(d, row.get("made"));
        if (!row.get("local_part").isEmpty()) {
            String[] p = (row.get("local_part").contains("/") ? row.get("local_part") : row.get("local_part") + "/1").split("/");
            BigDecimal have = new BigDecimal(p[0]).multiply(new BigDecimal(d.mixed().den()));
            boolean majority = have.compareTo(new BigDecimal(p[1]).multiply(new BigDecimal(d.mixed().num()))) > 0;
            return majority ? made : 'N';
        }
        return grown == 'N' || made == 'N' ? 'N' : grown == 'L' && made == 'L' ? 'L' : '?';
    }

    private static char place(Definition d, String where) {
        if (where.equals("unknown")) {
            return '?';
        }
        String[] parts = where.split(", ");
        if (d.states().contains(parts[1])) {
            return 'L';
        }
        if (d.miles().isEmpty()) {
            return 'N';
        }
        double miles = miles(Double.parseDouble(parts[2]), Double.parseDouble(parts[3]));
        double limit = d.miles().get();
        return miles < 0.9 * limit ? 'L' : miles > 1.1 * limit ? 'N' : '?';
    }

    private static double miles(double latitude, double longitude) {
        Place store = LedgerBuilder.STORE;
        double[] a = onSphere(latitude, longitude);
        double[] b = onSphere(store.latitude(), store.longitude());
        double chord = Math.sqrt((a[0] - b[0]) * (a[0] - b[0]) + (a[1] - b[1]) * (a[1] - b[1]) + (a[2] - b[2]) * (a[2] - b[2]));
        return 2 * 6371.0 * Math.asin(chord / 2) / 1.609344;
    }

    private static double[] onSphere(double latitude, double longitude) {
        double la = latitude * Math.PI / 180;
        double lo = longitude * Math.PI / 180;
        return new double[] {Math.cos(la) * Math.cos(lo), Math.cos(la) * Math.sin(lo), Math.sin(la)};
    }
}
