package croftboard.paper.report;

import croftboard.book.Book;
import croftboard.book.LocalRules.Definition;
import croftboard.ledger.Ledger;
import croftboard.ledger.Receipt;
import croftboard.ledger.Waste;
import croftboard.ledger.share.Causes;
import croftboard.ledger.share.Counted;
import croftboard.ledger.share.Definitions;
import croftboard.ledger.share.Money;
import croftboard.ledger.share.Period;
import croftboard.ledger.share.Share;
import croftboard.ledger.share.Target;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a report is written from, once for both versions.
 *
 * @param shares under every definition, the one in force first
 * @param months every month of the span, with or without food
 * @param late packs and cents that vendors of local food did not bring of what was ordered, or that were sent back
 */
public record ReportFacts(Book book, LocalDate from, LocalDate to, List<Share> shares, List<Month> months, Causes causes,
        List<Kept> coverage, Map<Waste.Reason, Thrown> waste, Missing late) {

    /** @param target what was promised for the month; empty: nothing, or no food came */
    public record Month(YearMonth month, Money money, Optional<Ratio> target, List<Counted> lines) {
        public boolean missed() {
            return gap().signum() > 0;
        }

        /** Target less share; not above zero when it was reached or nothing was promised. */
        public Ratio gap() {
            return target.flatMap(t -> money.share().map(t::minus)).orElse(Ratio.ZERO);
        }
    }

    /** Of a coverage promise. @param days on which dishes were served. @param kept of them */
    public record Kept(String say, int kept, int days) { }

    /** @param untold entries without a cost */
    public record Thrown(int entries, long portions1000, long mg, long cents, int untold) {
        Thrown plus(Waste w) {
            return new Thrown(entries + 1, portions1000 + w.portions().thousandths(), mg + w.mg(), cents + w.cents(),
                    untold + (w.cents() == 0 ? 1 : 0));
        }
    }

    /** @param lines of receipts */
    public record Missing(int lines, long shortedCents, long rejectedCents) { }

    public static ReportFacts of(Book book, Ledger ledger, Definitions definitions, LocalDate from, LocalDate to) {
        Period period = Period.read(ledger, from, to);
        List<Share> shares = definitions.all().stream().map(d -> Share.of(period, d, book.kitchen().place(), book.vendors())).toList();
        Definition inForce = definitions.first();
        return new ReportFacts(book, from, to, shares, months(book, shares.get(0)),
                new Causes(book.vendors(), book.kitchen().place(), inForce), CoverageKept.of(book, ledger, from, to),
                waste(ledger.entries(Waste.class, from, to)), late(shares.get(0)));
    }

    public Share share() {
        return shares.get(0);
    }

    public Optional<Ratio> target() {
        return Target.of(book.seasons(), share().lines());
    }

    private static List<Month> months(Book book, Share share) {
        Map<YearMonth, List<Counted>> lines = new TreeMap<>();
        for (YearMonth m = YearMonth.from(share.from()); !m.isAfter(YearMonth.from(share.to())); m = m.plusMonths(1)) {
            lines.put(m, new ArrayList<>());
        }
        share.lines().forEach(l -> lines.get(YearMonth.from(l.receipt().date())).add(l));
        List<Month> months = new ArrayList<>();
        lines.forEach((m, list) -> months.add(new Month(m, list.stream().map(Counted::money).reduce(Money.NONE, Money::plus),
                Target.of(book.seasons(), list), list)));
        return months;
    }

    private static Map<Waste.Reason, Thrown> waste(List<Waste> waste) {
        Map<Waste.Reason, Thrown> sums = new EnumMap<>(Waste.Reason.class);
        waste.forEach(w -> sums.put(w.reason(), sums.getOrDefault(w.reason(), new Thrown(0, 0, 0, 0, 0)).plus(w)));
        return sums;
    }

    private static Missing late(Share share) {
        int lines = 0;
        long shorted = 0;
        long rejected = 0;
        for (Counted line : share.lines()) {
            Receipt r = line.receipt();
            if (line.answer() == croftboard.book.LocalCheck.Answer.LOCAL && (r.shorted().signum() > 0 || r.rejected().signum() > 0)) {
                lines++;
                shorted += Ratio.of(r.shorted().thousandths(), 1000).times(r.price()).round();
                rejected += Ratio.of(r.rejected().thousandths(), 1000).times(r.price()).round();
            }
        }
        return new Missing(lines, shorted, rejected);
    }

    /** Ids by money, most first. */
    static List<String> first(Map<String, Long> cents, int most) {
        return cents.entrySet().stream().sorted(Comparator.comparing((Map.Entry<String, Long> e) -> -e.getValue())
                .thenComparing(Map.Entry::getKey)).limit(most).map(Map.Entry::getKey).toList();
    }
}
