package croftboard.cli.screen;

import croftboard.book.Book;
import croftboard.book.Reply;
import croftboard.cli.SampleAnswers;
import croftboard.cli.SamplePlan;
import croftboard.cli.SampleRotation;
import croftboard.measure.Cents;
import croftboard.ledger.share.GrowerSeason;
import croftboard.measure.Ratio;
import croftboard.measure.WeekSpan;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import croftboard.plan.Rotation;
import croftboard.plan.RotationChange;
import croftboard.plan.WeekPlan;
import croftboard.plan.ahead.MonthCoverage;
import croftboard.plan.ahead.Notice;
import croftboard.plan.ahead.PlannedWeek;
import croftboard.plan.ahead.Season;
import croftboard.plan.ahead.SeasonReading;
import croftboard.plan.file.RotationFile;
import croftboard.plan.file.RotationReading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import croftboard.plan.ask.Comparison;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** Every screen there is, by name. */
final class Screens {
    private Screens() { }

    static Shown shown(Book book, WeekPlan plan) {
        return new Shown(book, plan, Optional.of(2), false, LocalDateTime.of(2027, 8, 13, 9, 0),
                "every must holds and every figure is confirmed.");
    }

    static Map<String, Consumer<Page>> of(Book book) {
        Map<String, Consumer<Page>> all = new LinkedHashMap<>();
        Shown shown = shown(book, SamplePlan.complete(book));
        all.put("not-sent", page -> Headline.notSent(SampleChanges.doubtful(book), page));
        all.put("headline", page -> Headline.print(shown(book, SamplePlan.incomplete(book)), page));
        for (Screen screen : new Screen[] {new MenuScreen(shown), new OrdersScreen(shown), new PrepScreen(shown),
            new MoneyScreen(shown), new CoverageScreen(shown), new ShareScreen(shown), new ProofScreen(shown)}) {
            all.put(screen.name(), screen::print);
        }
        all.put("scale", new ScaleScreen(book, ScaledRecipe.tree(book, book.recipe("lentil-bake"),
                ScaledRecipe.batchesForPortions(book.recipe("lentil-bake"), Ratio.of(120))),
                new CheapestPrices(book, SamplePlan.WEEK), "for 120 portions")::print);
        ahead(book, all);
        answers(book).forEach((name, screen) -> all.put(name, screen::print));
        all.put("rotation", page -> rotation(book, page));
        SharesShown shares = LedgerSample.shares(book);
        all.put("ledger-share", new LedgerShareScreen(shares)::print);
        all.put("ledger-share-by", new ShareGroups(shares)::print);
        all.put("ledger-share-trail", new ShareTrail(shares)::print);
        all.put("food-cost", new FoodCostScreen(LedgerSample.cost(), Optional.empty())::print);
        all.put("grower-season", new GrowerScreen(book, GrowerSeason.of(LedgerSample.ledger(book), "hollow-brook",
                LocalDate.of(2027, 8, 1), LocalDate.of(2027, 8, 14)))::print);
        return all;
    }

    private static Map<String, Screen> answers(Book book) {
        String plan = "2027-W33@2";
        Map<String, Screen> all = new LinkedHashMap<>();
        all.put("compare", new ComparisonScreen(book, "2027-W33@1", plan,
                Comparison.of(SamplePlan.complete(book), SampleAnswers.other(book))));
        all.put("why-dish", new WhyScreen(book, plan, SampleAnswers.whyDish(book)));
        all.put("why-order", new WhyScreen(book, plan, SampleAnswers.whyOrder(book)));
        all.put("why-week", new WhyScreen(book, plan, SampleAnswers.whyWeek()));
        all.put("why-not", new WhyNotScreen(book, plan, "Lentil bake on tue/hot-main-1", SampleAnswers.whyNot(book)));
        all.put("why-not-cannot", new WhyNotScreen(book, plan, "Carrot slaw on tue/hot-main-1", SampleAnswers.cannot()));
        all.put("clash", new ClashScreen(book, plan, SampleAnswers.clash()));
        all.put("worth", new WorthScreen(book, plan, SampleAnswers.worth()));
        all.put("changes", new ChangesScreen(SampleChanges.repaired(book)));
        all.put("changes-nothing", new ChangesScreen(SampleChanges.nothing(book)));
        all.put("surplus", SampleChanges.surplus(book));
        all.put("exposure", new ExposureScreen(book, SampleAnswers.exposure()));
        return all;
    }

    /** The weeks that stand in a file of the first format. */
    private static void rotation(Book book, Page page) {
        try {
            Rotation rotation = RotationFile.read(Files.readString(Path.of("src/test/resources/rotations/format-1.json")))
                    .fold(RotationReading.Read::rotation, a -> null, r -> null);
            RotationShown shown = new RotationShown(book, rotation, Optional.of(1), LocalDateTime.of(2027, 8, 13, 9, 0),
                    "every must holds and every figure is confirmed.");
            RotationHeadline.print(shown, page);
            for (Screen screen : new Screen[] {new RotationWeeksScreen(shown), new VarietyScreen(shown),
                new RotationMoneyScreen(shown), new RotationProofScreen(shown)}) {
                screen.print(page);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Made of a rotation. */
    private static void ahead(Book book, Map<String, Consumer<Page>> all) {
        Rotation rotation = SampleRotation.of(book);
        all.put("month-coverage", new MonthCoverageScreen(book, MonthCoverage.of(book, WeekSpan.of(SamplePlan.WEEK, 3),
                rotation.weeks().stream().map(w -> new PlannedWeek(w.plan(), "rotation " + rotation.span())).toList()))::print);
        Season season = SeasonReading.of(book, WeekSpan.of(SamplePlan.WEEK, 3),
                rotation.weeks().stream().map(w -> new PlannedWeek(w.plan(), "rotation " + rotation.span())).toList());
        all.put("season", page -> {
            SeasonScreen.head(season, page);
            for (SeasonScreen.Part part : SeasonScreen.Part.values()) {
                new SeasonScreen(book, season, part).print(page);
            }
        });
        List<Notice> notices = Notice.all(book, rotation).stream().filter(n -> !n.vendor().equals("mill-run-depot")).toList();
        all.put("notice", new NoticeScreen(book, rotation.span() + "@1", notices)::print);
        all.put("reply", new ReplyScreen(book, reply(notices.get(0)), notices.get(0), change(rotation))::print);
    }

    private static Reply reply(Notice notice) {
        return new Reply("answer.csv", "2027-W33..2027-W34@1", notice.vendor(), notice.rows().stream().map(r -> new Reply.Row(2, r.item(), r.pack(),
                r.week(), r.item().equals("carrot") ? OptionalInt.of(2) : OptionalInt.empty(), r.item().equals("carrot")
                        ? Optional.of(new Cents(2_300)) : Optional.empty(), r.item().equals("carrot") ? "ground too wet to dig" : "")).toList());
    }

    private static RotationChange change(Rotation rotation) {
        WeekPlan was = rotation.weeks().get(0).plan();
        return new RotationChange(List.of(new RotationChange.Week(was.week(), was, was,
                List.of(new RotationChange.Dish("thu/cold-salad-1", Optional.of("carrot-slaw"), Optional.of("chickpea-salad"))),
                List.of(new RotationChange.Packs("hollow-brook", "carrot", "25 lb sack", 4, 2, -4_000),
                        new RotationChange.Packs("mill-run-depot", "chickpea", "25 lb bag", 1, 2, 3_600)))), 669_000, 664_200);
    }

    static String text(Consumer<Page> screen, int width) {
        Page page = new Page(width, false);
        screen.accept(page);
        return page.toString();
    }
}
