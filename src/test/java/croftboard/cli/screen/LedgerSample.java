package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.ledger.Credit;
import croftboard.ledger.EntryList;
import croftboard.ledger.Origin;
import croftboard.ledger.Receipt;
import croftboard.ledger.Transfer;
import croftboard.ledger.file.PublishedDefinitions;
import croftboard.ledger.share.Definitions;
import croftboard.ledger.share.FoodCost;
import croftboard.ledger.share.LedgerBuilder;
import croftboard.ledger.share.Period;
import croftboard.ledger.share.Share;
import croftboard.ledger.share.Target;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;

/** A fortnight of the small kitchen's ledger, invented. */
public final class LedgerSample {
    private LedgerSample() { }

    /** Receipts of two weeks of August 2027, with one correction, one line that is not matched, and what is kept out. */
    public static EntryList ledger(Book book) {
        LedgerBuilder ledger = new LedgerBuilder();
        Origin hollow = origin(book, "hollow-brook", "carrot");
        Origin far = LedgerBuilder.raw("CA", 2300);
        long carrots = ledger.food("2027-08-02", "hollow-brook", "carrot", 9_600, hollow);
        ledger.corrected(carrots, "2027-08-02", "hollow-brook", "carrot", 7_200, hollow);
        ledger.food("2027-08-05", "hollow-brook", "onion-yellow", 3_600, hollow);
        ledger.food("2027-08-03", "mill-run-depot", "lemon", 3_900, far);
        ledger.food("2027-08-03", "mill-run-depot", "lentil-brown", 6_400, Origin.UNKNOWN);
        ledger.food("2027-08-03", "mill-run-depot", "pasta-penne", 2_800, LedgerBuilder.mixed("NY", 30, "0.6"));
        ledger.food("2027-08-10", "mill-run-depot", "garlic", 1_900, LedgerBuilder.raw("PA", 120));
        ledger.food("2027-08-10", "mill-run-depot", "", 1_250, Origin.UNKNOWN);
        ledger.other("2027-08-03", Receipt.Kind.NOT_FOOD, 1_875);
        ledger.other("2027-08-03", Receipt.Kind.FEE, 1_500);
        ledger.credit("2027-08-09", Credit.Step.RECEIVED, 600, Optional.of(carrots));
        ledger.transfer("2027-08-09", Transfer.Way.STAFF_MEAL, 2_100);
        return ledger.done();
    }

    private static Origin origin(Book book, String vendor, String item) {
        return Origin.of(book.vendor(vendor), book.vendor(vendor).offers().stream().filter(o -> o.item().equals(item)).findFirst()
                .orElseThrow(), book.vendors());
    }

    static FoodCost cost() {
        return new FoodCost(YearMonth.of(2027, 8), Optional.of(new FoodCost.Stock(LocalDate.of(2027, 7, 31), 64_000, 41, 0)), 512_300, 1_850,
                2_500, 2_000, 5_000, Optional.of(new FoodCost.Stock(LocalDate.of(2027, 8, 24), 58_000, 39, 2)), 1_498_000);
    }

    static SharesShown shares(Book book) {
        Period period = Period.read(ledger(book), LocalDate.of(2027, 8, 1), LocalDate.of(2027, 8, 14));
        Definitions definitions = Definitions.of(book.kitchen().local(), PublishedDefinitions.of("NY"));
        List<Share> shares = definitions.all().stream().map(d -> Share.of(period, d, book.kitchen().place(), book.vendors())).toList();
        return new SharesShown(book, definitions, shares, Target.of(book.seasons(), shares.get(0).lines()), Optional.of("vendor"),
                shares.get(0).by(l -> l.receipt().vendor()));
    }

}
