package croftboard.paper.report;

import croftboard.book.LocalRules.Definition;
import croftboard.ledger.share.Aside;
import croftboard.ledger.share.Cause;
import croftboard.ledger.share.Causes;
import croftboard.ledger.share.Farms.Farm;
import croftboard.ledger.share.Farms;
import croftboard.ledger.share.Miles;
import croftboard.ledger.share.Money;
import croftboard.ledger.share.Near;
import croftboard.ledger.share.Share;
import croftboard.measure.Cents;
import croftboard.measure.Ratio;
import croftboard.paper.Block;
import croftboard.paper.Called;
import croftboard.paper.Data;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.When;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The report to the members, in plain words: the number, whose definition, where the money went, what was missed and why. */
public final class MembersReport {
    private static final int ONE_LINE = 30;
    /** Missed months that are told in words; all stand in the picture. */
    private static final int TOLD = 2;
    static final int FARMS = 5;
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM yyyy", Locale.ENGLISH);
    private final ReportFacts facts;
    private final Share share;
    private final Money all;
    private final Called called;
    private final List<Block> blocks = new ArrayList<>();

    private MembersReport(ReportFacts facts) {
        this.facts = facts;
        this.share = facts.share();
        this.all = share.all();
        this.called = new Called(facts.book());
    }

    public static Sheet of(ReportFacts facts) {
        return new Sheet(SheetKind.REPORT, id("members", facts), "Where our deli's food came from", List.of(under(facts)), blocks(facts),
                ReportTables.months(facts), Sheet.Look.PLAIN);
    }

    static String id(String who, ReportFacts facts) {
        return who + "-" + facts.from() + "-to-" + facts.to();
    }

    static String under(ReportFacts facts) {
        return facts.book().kitchen().name() + ", " + When.full(facts.from()) + " to " + When.full(facts.to());
    }

    static List<Block> blocks(ReportFacts facts) {
        MembersReport report = new MembersReport(facts);
        if (facts.share().all().share().isEmpty()) {
            report.say("No food was paid for in these days.");
            return report.blocks;
        }
        report.number();
        report.months();
        report.farms();
        report.otherDefinitions();
        report.miles();
        report.misses();
        report.kept();
        report.method();
        report.thanks();
        return report.blocks;
    }

    private void say(String words) {
        blocks.add(new Block.Text(words));
    }

    private void heading(String words) {
        blocks.add(new Block.Heading(1, words));
    }

    private static String dollars(long cents) {
        return new Cents(cents).toString();
    }

    private void number() {
        Ratio target = facts.target().orElse(Ratio.ZERO);
        blocks.add(new Block.Notice(Percent.of(all.share()) + " of the money that we paid for food was paid for local food: "
                + dollars(all.local()) + " of " + dollars(all.total()) + "."
                + (facts.target().isEmpty() ? "" : " Our target for these months was " + Percent.of(target) + ": "
                        + (all.share().orElseThrow().compareTo(target) >= 0 ? "reached." : "not reached, "
                                + dollars(target.times(all.total()).minus(Ratio.of(all.local())).ceil()) + " short."))));
        Definition d = share.definition();
        say("Local means: " + d.say() + ". Mixed food, such as bread, counts whole when made there with more than "
                + Percent.of(d.mixed()) + " of local ingredients." + (d.miles().isEmpty() ? "" : " Miles are straight lines; within a"
                        + " tenth of the limit a place is not classified, as the road is longer."));
        say(dollars(all.unclassified()) + " is not classified: we do not know for sure where the food is from, and it counts as not"
                + " local. The share is at least " + Percent.of(all.low()) + " (of mixed food only its local part) and at most "
                + Percent.of(all.high()) + " (all that is not classified, and the local part of all mixed food).");
    }

    private void months() {
        heading("Month by month");
        blocks.add(new Block.Picture(MonthBars.svg(facts.months()), MonthBars.alt(facts.months())));
        say("Black, and figure: percent of food money that was local, by our definition. Outline: at most. Thick line: target.");
    }

    private void farms() {
        heading("Where the money went");
        List<Farm> farms = Farms.of(share, facts.book().kitchen().place(), facts.book().vendors());
        List<Block.Row> rows = new ArrayList<>();
        for (Farm f : farms.subList(0, Math.min(FARMS, farms.size()))) {
            rows.add(Block.Row.of(f.name(), Long.toString(f.miles()), short2(f.first(2)), dollars(f.cents()), ofAll(f.cents())));
        }
        long rest = farms.stream().skip(FARMS).mapToLong(Farm::cents).sum();
        if (farms.size() > FARMS) {
            rows.add(Block.Row.of((farms.size() - FARMS) + " more near by", "", "", dollars(rest), ofAll(rest)));
        }
        rows.add(Block.Row.strong("All local food", "", "", dollars(all.local()), ofAll(all.local())));
        rows.add(Block.Row.of("Food from elsewhere", "", "", dollars(all.notLocal()), ofAll(all.notLocal())));
        rows.add(Block.Row.of("Not classified", "", "", dollars(all.unclassified()), ofAll(all.unclassified())));
        rows.add(Block.Row.total("All food", "", "", dollars(all.total()), ofAll(all.total())));
        blocks.add(new Block.Table(List.of(Block.Column.words("Farm or maker", 31), Block.Column.figure("Miles", 6),
                Block.Column.words("Most of it", 42), Block.Column.figure("Paid", 13), Block.Column.figure("Of all", 9)), rows));
        long foods = share.lines().stream().filter(l -> l.answer() == croftboard.book.LocalCheck.Answer.LOCAL)
                .flatMap(l -> l.receipt().item().stream()).distinct().count();
        Map<Near, Long> near = share.near();
        say(foods + " different foods were local. Miles: straight line from the store. Grown near by: " + dollars(near.get(Near.GROWN))
                + ". Only made near by (mixed food, or food from elsewhere): " + dollars(near.get(Near.MADE))
                + ". Only sold by a company near by, not local: " + dollars(near.get(Near.SOLD)) + ".");
    }

    private String ofAll(long cents) {
        return Percent.of(Ratio.of(cents, all.total()));
    }

    private String names(List<String> items) {
        return String.join(", ", items.stream().map(called::item).toList());
    }

    /** Two names, or one when two are long. */
    private String short2(List<String> items) {
        String both = names(items);
        return both.length() <= ONE_LINE ? both : names(items.subList(0, 1));
    }

    private void miles() {
        heading("How far it came");
        Map<Miles, Long> bands = Miles.of(share, facts.book().kitchen().place());
        blocks.add(new Block.Picture(MilesBars.svg(bands), MilesBars.alt(bands)));
        say("All food money by straight-line miles from where it was grown (mixed food: made).");
    }

    private void misses() {
        heading("What was not local, and why");
        List<ReportFacts.Month> missed = facts.months().stream().filter(ReportFacts.Month::missed).toList();
        if (facts.target().isPresent()) {
            say(missed.isEmpty() ? "Every month reached its target." : "Below target: " + (missed.size() > TOLD ? missed.size() + " of "
                    + facts.months().size() + " months, farthest " : "") + String.join("; ", missed.stream()
                    .sorted(java.util.Comparator.comparing(ReportFacts.Month::gap).reversed()).limit(TOLD).map(this::missed).toList()) + ".");
        }
        List<Block.Row> rows = new ArrayList<>();
        facts.causes().of(share.lines()).forEach((cause, part) -> rows.add(Block.Row.of(sentence(cause.toString()), dollars(part.cents()),
                ofAll(part.cents()), short2(ReportFacts.first(part.items(), 2)))));
        if (!rows.isEmpty()) {
            blocks.add(new Block.Table(List.of(Block.Column.words("Why", 38), Block.Column.figure("Paid", 13),
                    Block.Column.figure("Of all", 9), Block.Column.words("Most of it", 38)), rows));
        }
        ReportFacts.Missing late = facts.late();
        if (late.lines() > 0) {
            say("Of local food that we ordered, " + dollars(late.shortedCents()) + " did not come and " + dollars(late.rejectedCents())
                    + " was sent back at the door (" + late.lines() + " lines, at the order's price).");
        }
    }

    /** With the cause that weighed most, or the one that is not a plain fact of the climate. */
    private String missed(ReportFacts.Month m) {
        Map<Cause, Causes.Part> parts = facts.causes().of(m.lines());
        Optional<Map.Entry<Cause, Causes.Part>> most = parts.entrySet().stream().filter(e -> e.getKey() != Cause.NOBODY_NEAR)
                .max(Map.Entry.comparingByValue(java.util.Comparator.comparing(Causes.Part::cents)));
        return MONTH.format(m.month()) + " " + Percent.of(m.money().share()) + " of " + Percent.of(m.target())
                + most.map(e -> ", most of what could have been local: " + dollars(e.getValue().cents()) + " ("
                        + names(ReportFacts.first(e.getValue().items(), 2)) + "), " + shortly(e.getKey())).orElse("");
    }

    private static String shortly(Cause cause) {
        return switch (cause) {
            case NOT_ENOUGH -> "bought elsewhere though somebody near by had it";
            case OUT_OF_SEASON -> "out of season here";
            case NOBODY_NEAR -> "which nobody near by offers";
            case MIXED -> "mixed food with too little local in it";
            case UNKNOWN -> "not known where from";
        };
    }

    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private void kept() {
        heading("Promises kept, and what was thrown away");
        List<ReportFacts.Kept> coverage = facts.coverage().stream().filter(k -> k.days() > 0).toList();
        if (!coverage.isEmpty()) {
            say("Of " + coverage.get(0).days() + " days with food in the case: " + String.join("; ", coverage.stream()
                    .map(k -> k.say() + " on " + k.kept()).toList()) + ". Counted from the dishes that stood there, by their recipes; this"
                    + " says nothing about what a dish may have touched: ask at the counter.");
        }
        if (facts.waste().isEmpty()) {
            say("No waste was written down in these days.");
            return;
        }
        ReportFacts.Thrown sum = facts.waste().values().stream().reduce(new ReportFacts.Thrown(0, 0, 0, 0, 0), MembersReport::sum);
        say("Thrown or given away: " + amount(sum) + ", as the kitchen wrote down. "
                + sentence(String.join("; ", facts.waste().entrySet().stream().map(e -> e.getKey() + " " + amount(e.getValue())).toList())) + "."
                + (sum.untold() > 0 ? " Dollars: what it had cost; " + sum.untold() + " of " + sum.entries()
                        + " entries tell no cost." : " Dollars: what it had cost."));
    }

    private static ReportFacts.Thrown sum(ReportFacts.Thrown a, ReportFacts.Thrown b) {
        return new ReportFacts.Thrown(a.entries() + b.entries(), a.portions1000() + b.portions1000(), a.mg() + b.mg(),
                a.cents() + b.cents(), a.untold() + b.untold());
    }

    static String amount(ReportFacts.Thrown t) {
        List<String> parts = new ArrayList<>();
        if (t.portions1000() != 0) {
            parts.add(String.format(Locale.ROOT, "%,d portions", Ratio.of(t.portions1000(), 1000).round()));
        }
        if (t.mg() != 0) {
            parts.add(String.format(Locale.ROOT, "%,d lb", Ratio.of(t.mg(), 453_592_370L / 1000).over(1000).round()));
        }
        return String.join(", ", parts) + (parts.isEmpty() ? "" : ", ") + dollars(t.cents());
    }

    private void thanks() {
        List<String> names = Farms.of(share, facts.book().kitchen().place(), facts.book().vendors()).stream().filter(Farm::known)
                .map(Farm::name).sorted().toList();
        if (!names.isEmpty()) {
            say("Thank you to " + String.join(", ", names) + ", and to everybody who cooked, served and ate.");
        }
    }

    private void method() {
        heading("How this was counted");
        say("From " + String.format(Locale.ROOT, "%,d", share.lines().size()) + " receipt lines of food, by the day the food came, as charged,"
                + " corrections applied. Local, not local and not classified are all of it, to the cent: " + dollars(all.local()) + " + "
                + dollars(all.notLocal()) + " + " + dollars(all.unclassified()) + " = " + dollars(all.total()) + ". In neither number: "
                + (share.asides().isEmpty() ? "nothing else was booked" : String.join("; ", share.asides().stream()
                        .filter(a -> a.kind() != Aside.Kind.CREDIT_ASKED && a.kind() != Aside.Kind.CREDIT_REFUSED)
                        .map(MembersReport::aside).toList())) + ". Every line can be shown.");
    }

    private void otherDefinitions() {
        say("By other definitions the same food would be: " + String.join("; ", facts.shares().stream().skip(1).map(s ->
                Percent.of(s.all().share()) + " local, " + s.definition().say()).toList()) + ".");
    }

    private static String aside(Aside a) {
        return a.kind() + " " + dollars(a.cents());
    }

    /** Everything in the report as tables. */
    public static Map<String, Data> tables(ReportFacts facts) {
        return ReportTables.all(facts);
    }

    static String month(YearMonth month) {
        return MONTH.format(month);
    }
}
