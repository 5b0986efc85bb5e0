package croftboard.cli.screen;

import croftboard.ledger.BatchYield;
import croftboard.ledger.Credit;
import croftboard.ledger.Entry;
import croftboard.ledger.LabelRead;
import croftboard.ledger.Left;
import croftboard.ledger.Overriding;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.StockCount;
import croftboard.ledger.Transfer;
import croftboard.ledger.Waste;
import croftboard.measure.Cents;
import java.util.Locale;
import java.util.Optional;

/** An entry as one sentence. */
public final class EntryWords {
    private EntryWords() { }

    static String of(Entry e, Names names) {
        String said = switch (e.getClass().getSimpleName()) {
            case "Receipt" -> receipt((Receipt) e, names);
            case "Sale" -> ((Sale) e).units() + " of " + ((Sale) e).dish().map(names::recipe).orElse(((Sale) e).words()) + ", "
                    + new Cents(((Sale) e).cents());
            case "Left" -> left((Left) e, names);
            case "Waste" -> waste((Waste) e, names);
            case "StockCount" -> ((StockCount) e).item().map(names::item).orElse(((StockCount) e).words()) + ": "
                    + ((StockCount) e).amount() + ", " + new Cents(((StockCount) e).cents());
            case "BatchYield" -> names.recipe(((BatchYield) e).recipe()) + ": got " + grams(((BatchYield) e).gotMg()) + ", expected "
                    + grams(((BatchYield) e).expectedMg());
            case "Credit" -> "credit " + ((Credit) e).step().name().toLowerCase(Locale.ROOT) + ", " + names.vendor(((Credit) e).vendor()) + ", "
                    + new Cents(((Credit) e).cents()) + ": " + ((Credit) e).reason();
            case "Overriding" -> ((Overriding) e).portions() + " portions set for " + ((Overriding) e).line() + ": " + ((Overriding) e).reason();
            case "Transfer" -> ((Transfer) e).way().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", " + ((Transfer) e).where() + ": "
                    + ((Transfer) e).what() + ", " + new Cents(((Transfer) e).cents());
            case "LabelRead" -> label((LabelRead) e);
            default -> "taken out";
        };
        return "entry " + e.stamp().id() + ", " + e.date() + ": " + said
                + e.stamp().corrects().map(c -> (e instanceof croftboard.ledger.Withdrawal ? " (entry " : " (takes the place of entry ") + c.entry() + ": " + c.why() + ")").orElse("");
    }

    private static String receipt(Receipt r, Names names) {
        return names.vendor(r.vendor()) + ", " + r.came() + " of " + r.item().map(names::item).orElse(r.words()) + ", " + new Cents(r.cents());
    }

    private static String left(Left l, Names names) {
        return l.line() + ", " + names.recipe(l.dish()) + l.prepared().map(q -> ", put out " + q).orElse("")
                + l.sold().map(q -> ", sold " + q).orElse("") + l.left().map(q -> ", left " + q).orElse("")
                + l.ranOut().map(t -> ", ran out at " + t).orElse("");
    }

    private static String waste(Waste w, Names names) {
        return (w.portions().equals(Quantity.ZERO) ? grams(w.mg()) : w.portions() + " portions") + " of "
                + w.dish().map(names::recipe).or(() -> w.item().map(names::item)).orElse(w.words()) + ", " + w.reason();
    }

    private static String label(LabelRead l) {
        return "label of entry " + l.receipt() + ": " + (l.contains().isEmpty() ? "lists none of the allergens that we track"
                : "contains " + String.join(", ", l.contains())) + (l.othersKnown() ? "; the label lists all ingredients"
                : "; other allergens not stated");
    }

    private static String grams(long mg) {
        boolean pounds = mg >= 100_000;
        return java.math.BigDecimal.valueOf(mg).divide(new java.math.BigDecimal(pounds ? "453592.37" : "1000"), 2, java.math.RoundingMode.HALF_UP)
                .stripTrailingZeros().toPlainString() + (pounds ? " lb" : " g");
    }

    /** The words of an entry that means nothing in the book yet. */
    public static Optional<String> unmatched(Entry e) {
        if (e instanceof Receipt r && r.unmatched()) {
            return Optional.of(r.words());
        }
        if (e instanceof Sale s && s.unmatched()) {
            return Optional.of(s.code().isEmpty() ? s.words() : s.words().isEmpty() ? s.code() : s.code() + " " + s.words());
        }
        if (e instanceof Waste w && w.unmatched()) {
            return Optional.of(w.words());
        }
        return e instanceof StockCount c && c.item().isEmpty() ? Optional.of(c.words()) : Optional.empty();
    }
}
