package croftboard.paper.report;

import croftboard.ledger.Origin;
import croftboard.ledger.Receipt;
import croftboard.ledger.share.Farms;
import croftboard.ledger.share.Miles;
import croftboard.ledger.share.Money;
import croftboard.measure.Ratio;
import croftboard.paper.Called;
import croftboard.paper.Data;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Everything in a report as tables for machines, by the name of their files. */
final class ReportTables {
    private ReportTables() { }

    static Map<String, Data> all(ReportFacts facts) {
        Map<String, Data> all = new LinkedHashMap<>();
        all.put("definitions", definitions(facts));
        all.put("months", months(facts));
        all.put("farms", farms(facts));
        all.put("miles", miles(facts));
        all.put("near", near(facts));
        all.put("causes", causes(facts));
        all.put("kept-out", keptOut(facts));
        all.put("coverage", coverage(facts));
        all.put("waste", waste(facts));
        all.put("receipts", receipts(facts));
        return all;
    }

    static BigDecimal usd(long cents) {
        return BigDecimal.valueOf(cents, 2);
    }

    static String part(Optional<Ratio> share) {
        return share.map(s -> s.toDecimal(6).toPlainString()).orElse("");
    }

    private static Data definitions(ReportFacts facts) {
        Data.Building data = Data.of("definition", "says", "local_usd", "not_local_usd", "not_classified_usd", "total_usd", "share",
                "at_least", "at_most");
        facts.shares().forEach(s -> {
            Money m = s.all();
            data.row(s.definition().id(), s.definition().say(), usd(m.local()), usd(m.notLocal()), usd(m.unclassified()), usd(m.total()),
                    part(m.share()), part(m.low()), part(m.high()));
        });
        return data.done();
    }

    static Data months(ReportFacts facts) {
        Data.Building data = Data.of("month", "definition", "local_usd", "not_local_usd", "not_classified_usd", "total_usd", "share",
                "at_least", "at_most", "target");
        facts.months().forEach(x -> {
            Money m = x.money();
            data.row(x.month(), facts.share().definition().id(), usd(m.local()), usd(m.notLocal()), usd(m.unclassified()), usd(m.total()),
                    part(m.share()), part(m.low()), part(m.high()), part(x.target()));
        });
        return data.done();
    }

    private static Data farms(ReportFacts facts) {
        Data.Building data = Data.of("farm", "town", "state", "miles_straight_line", "local_usd", "items");
        Farms.of(facts.share(), facts.book().kitchen().place(), facts.book().vendors()).forEach(f -> data.row(f.name(), f.place().town(),
                f.place().state(), f.miles(), usd(f.cents()), String.join("; ", f.items().keySet())));
        return data.done();
    }

    private static Data miles(ReportFacts facts) {
        Data.Building data = Data.of("miles_straight_line", "usd");
        Miles.of(facts.share(), facts.book().kitchen().place()).forEach((band, cents) -> data.row(band, usd(cents)));
        return data.done();
    }

    private static Data near(ReportFacts facts) {
        Data.Building data = Data.of("near", "usd");
        facts.share().near().forEach((near, cents) -> data.row(near, usd(cents)));
        return data.done();
    }

    private static Data causes(ReportFacts facts) {
        Data.Building data = Data.of("cause", "item", "usd");
        facts.causes().of(facts.share().lines()).forEach((cause, part) -> part.items().forEach((item, cents) ->
                data.row(cause, item, usd(cents))));
        return data.done();
    }

    private static Data keptOut(ReportFacts facts) {
        Data.Building data = Data.of("what", "entries", "usd");
        facts.share().asides().forEach(a -> data.row(a.kind(), a.lines(), usd(a.cents())));
        return data.done();
    }

    private static Data coverage(ReportFacts facts) {
        Data.Building data = Data.of("promise", "days_kept", "days");
        facts.coverage().forEach(k -> data.row(k.say(), k.kept(), k.days()));
        return data.done();
    }

    private static Data waste(ReportFacts facts) {
        Data.Building data = Data.of("reason", "entries", "portions", "grams", "usd", "entries_without_cost");
        facts.waste().forEach((reason, t) -> data.row(reason, t.entries(), BigDecimal.valueOf(t.portions1000(), 3), t.mg() / 1000,
                usd(t.cents()), t.untold()));
        return data.done();
    }

    private static Data receipts(ReportFacts facts) {
        Called called = new Called(facts.book());
        Data.Building data = Data.of("entry", "came", "vendor", "item", "words", "paid_usd", "counts_as", "why", "near", "grown", "made",
                "booked_from", "line");
        facts.share().lines().forEach(l -> {
            Receipt r = l.receipt();
            data.row(r.stamp().id(), r.date(), called.vendor(r.vendor()), r.item().orElse(""), r.words(), usd(r.cents()),
                    l.answer().name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '), l.why(), l.near(), Origin.text(r.origin().grown()),
                    Origin.text(r.origin().made()), r.stamp().booking().name(), r.stamp().line());
        });
        return data.done();
    }
}
