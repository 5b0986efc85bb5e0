package croftboard.book.file;

import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import croftboard.measure.WeekRange;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Numbers with their units: exact, or a fault that says how to write it and a placeholder. */
final class Quantities {
    /** No kitchen number is larger; a larger one is a slip that would only show far from here. */
    static final long MOST = 1_000_000;
    private static final int LONGEST = 40;
    private static final Ratio HUNDRED = Ratio.of(100);
    private static final Pattern PERCENT = Pattern.compile("(\\d{1,4}(?:\\.\\d{1,6})?)%");
    private static final Pattern RATE = Pattern.compile("\\$(\\d{1,7}(?:\\.\\d{1,6})?)");
    private static final Pattern DEGREES = Pattern.compile("-?\\d{1,3}(?:\\.\\d{1,9})?");
    private static final Pattern WHOLE = Pattern.compile("\\d{1,9}");
    private final Values values;
    private final Notebook notebook;
    private final AmountText amounts;

    Quantities(Values values) {
        this.values = values;
        this.notebook = values.notebook();
        this.amounts = new AmountText(notebook);
    }

    AmountText amounts() {
        return amounts;
    }

    /** A weight above zero. */
    Amount weight(Node node) {
        return amount(node, "a weight like 25 lb", Unit.Kind.MASS);
    }

    /** A weight, volume or count above zero. */
    Amount amount(Node node) {
        return amount(node, "an amount like 25 lb or 6 cans", Unit.Kind.MASS, Unit.Kind.VOLUME,
                Unit.Kind.COUNT);
    }

    /** A volume or count above zero: what cooks measure by instead of weighing. */
    Amount householdMeasure(Node node) {
        return amount(node, "a measure like 1 cup or 1 each", Unit.Kind.VOLUME, Unit.Kind.COUNT);
    }

    private Amount amount(Node node, String wanted, Unit.Kind... kinds) {
        return values.value(node, wanted, AmountText.PLACEHOLDER, s ->
                amounts.read(s.text(), s.spot(), wanted, kinds));
    }

    /** Whole days. */
    int days(Node node, int least, int most) {
        String wanted = "days like " + Math.max(least, Math.min(4, most)) + (most == 1 ? " day" : " days");
        return values.value(node, wanted, least, s -> {
            int before = notebook.faultCount();
            Amount amount = amounts.readZero(s.text(), s.spot(), wanted, Unit.Kind.TIME);
            boolean fits = amount.unit().equals(Unit.DAY) && amount.value().isWhole()
                    && amount.value().compareTo(Ratio.of(least)) >= 0 && amount.value()
                    .compareTo(Ratio.of(most)) <= 0;
            if (!fits && notebook.faultCount() == before) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is not " + least + " to " + most
                        + " whole days",
                        "write " + wanted);
            }
            return fits ? (int) amount.value().floor() : least;
        });
    }

    /** Minutes, exact, from {@code 5 s}, {@code 45 min} or {@code 2 h}; at most a week. */
    Ratio minutes(Node node) {
        String wanted = "a time like 45 min";
        return values.value(node, wanted, Ratio.ZERO, s -> {
            int before = notebook.faultCount();
            Amount amount = amounts.readZero(s.text(), s.spot(), wanted, Unit.Kind.TIME);
            boolean read = notebook.faultCount() == before;
            boolean fits = read && !amount.unit().equals(Unit.DAY) && amount.base()
                    .compareTo(Ratio.of(7 * 1440)) <= 0;
            if (!fits && read) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no time of work",
                        "write s, min or h: 45 min");
            }
            return fits ? amount.base() : Ratio.ZERO;
        });
    }

    /** Whole minutes of one day. */
    int wholeMinutes(Node node) {
        Ratio minutes = minutes(node);
        if (minutes.isWhole() && minutes.compareTo(Ratio.of(1440)) <= 0) {
            return (int) minutes.floor();
        }
        notebook.fault(node.spot(), "not whole minutes within one day", "write for example 90 min or 7 h");
        return 0;
    }

    /** A share of 0 to {@code mostPercent}, written {@code 36%}. */
    Ratio share(Node node, boolean zeroToo, int mostPercent) {
        return values.value(node, "a share like 36%", Ratio.ONE, s -> {
            Matcher m = PERCENT.matcher(s.text());
            Optional<Ratio> share = m.matches() ? Optional.of(Ratio.decimal(m.group(1)).over(HUNDRED))
                    : Optional.empty();
            boolean fits = share.isPresent() && (zeroToo || share.get().signum() > 0)
                    && share.get().compareTo(Ratio.of(mostPercent, 100)) <= 0;
            if (!fits) {
                notebook.fault(s.spot(), Notebook.show(s.text())
                        + (share.isEmpty() ? " is no share" : " is out of range"),
                        "write a share " + (zeroToo ? "from 0%" : "above 0%") + " to " + mostPercent
                        + "%, like 36%");
            }
            return fits ? share.get() : Ratio.ONE;
        });
    }

    /** Money: {@code $3.40}. */
    Cents money(Node node, boolean zeroToo) {
        return values.value(node, "money like $3.40", new Cents(1), s ->
                money(s.text(), s.spot(), zeroToo));
    }

    Cents money(String text, Spot spot, boolean zeroToo) {
        Optional<Cents> cents = text.length() > LONGEST ? Optional.empty() : Cents.parse(text);
        if (cents.isPresent() && (zeroToo || cents.get().value() > 0)) {
            return cents.get();
        }
        notebook.fault(spot, Notebook.show(text)
                + (cents.isPresent() ? " is no price: it is zero" : moneyFault(text)),
                "write dollars and cents like $3.40 or $12");
        return new Cents(1);
    }

    private static String moneyFault(String text) {
        return text.contains("-") ? " is no money: it is negative or a range" : " is no money";
    }

    /** Money with the words that say what it is for: {@code $150 each}. */
    Cents price(Node node, String words) {
        return values.value(node, "a price like $5.00 " + words, new Cents(1), s -> {
            Optional<Cents> cents = head(s, words).flatMap(Cents::parse);
            return cents.orElseGet(() -> priceFault(s, words, new Cents(1)));
        });
    }

    /**
     * Dollars, exact and finer than a cent when need be, with their words: {@code $0.30 per dollar
     * short}.
     */
    Ratio rate(Node node, String words) {
        return values.value(node, "a price like $0.30 " + words, Ratio.ONE, s -> {
            Optional<Matcher> m = head(s, words).map(RATE::matcher).filter(Matcher::matches);
            return m.isPresent() ? Ratio.decimal(m.get().group(1)) : priceFault(s, words, Ratio.ONE);
        });
    }

    private static Optional<String> head(Node.Scalar scalar, String words) {
        String text = scalar.text().strip();
        boolean fits = text.length() <= LONGEST + words.length() && text.endsWith(" " + words);
        return fits ? Optional.of(text.substring(0, text.length() - words.length()).strip())
                : Optional.empty();
    }

    private <T> T priceFault(Node.Scalar s, String words, T placeholder) {
        notebook.fault(s.spot(), Notebook.show(s.text()) + " is no price \"... " + words + "\"",
                "write for example $5.00 " + words);
        return placeholder;
    }

    /** A plain number without unit. */
    Ratio number(Node node, Ratio least, Ratio most, String example) {
        return values.value(node, "a number like " + example, Ratio.ONE, s -> {
            Optional<Ratio> number = s.text().length() > LONGEST ? Optional.empty()
                    : Amount.number(s.text());
            boolean fits = number.isPresent() && number.get().compareTo(least) >= 0 && number.get()
                    .compareTo(most) <= 0;
            if (!fits) {
                String wrong = number.isPresent() ? " is out of range" : s.text().startsWith("-")
                        ? " is negative" : " is no number";
                notebook.fault(s.spot(), Notebook.show(s.text()) + wrong,
                        "write a number from " + least.toDouble() + " to " + most.toDouble() + ", like "
                        + example);
            }
            return fits ? number.get() : Ratio.ONE;
        });
    }

    int whole(Node node, int least, int most) {
        return values.value(node, "a whole number", least, s -> whole(s.text(), s.spot(), least, most));
    }

    int whole(String text, Spot spot, int least, int most) {
        boolean digits = WHOLE.matcher(text).matches();
        int number = digits ? Integer.parseInt(text) : least;
        if (!digits || number < least || number > most) {
            notebook.fault(spot, Notebook.show(text)
                    + (digits ? " is out of range" : " is no whole number"),
                    "write a whole number from " + least + " to " + most);
            return least;
        }
        return number;
    }

    /** Degrees of latitude or longitude, the only numbers of a book that may be negative. */
    double degrees(Node node, int most) {
        return values.value(node, "degrees like 42.55", 0.0, s -> {
            double degrees = DEGREES.matcher(s.text()).matches() ? Double.parseDouble(s.text())
                    : Double.NaN;
            if (!(Math.abs(degrees) <= most)) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " are no degrees",
                        "write decimal degrees from -" + most + " to " + most + ", like 42.55");
                return 0.0;
            }
            return degrees;
        });
    }

    WeekRange weeks(Node node) {
        return values.value(node, "weeks like W30..W38", WeekRange.ALL, s -> weeks(s, "W30..W38"));
    }

    /** One week of the year, {@code W26}. */
    int week(Node node) {
        return values.value(node, "a week like W26", 1, s -> {
            WeekRange range = s.text().contains("..") ? weeks(s, null) : weeks(s, "W26");
            return range.first();
        });
    }

    private WeekRange weeks(Node.Scalar s, String example) {
        Optional<WeekRange> range = example == null || s.text().length() > LONGEST ? Optional.empty()
                : WeekRange.parse(s.text());
        if (range.isEmpty()) {
            notebook.fault(s.spot(), Notebook.show(s.text())
                    + (example == null ? " is more than one week" : " is no week of the year"),
                    "write " + (example == null ? "one week, like W26" : "W01 to W53, like " + example));
        }
        return range.orElse(WeekRange.ALL);
    }
}
