package croftboard.cli;

import croftboard.book.Book;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import croftboard.plan.ask.Clash;
import croftboard.plan.ask.ClashAsked;
import croftboard.plan.ask.Comparison;
import croftboard.plan.ask.Exposure;
import croftboard.plan.ask.Why;
import croftboard.plan.ask.WhyNot;
import croftboard.plan.ask.Worth;
import croftboard.plan.change.Disturbance;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Another plan of the small kitchen and answers to questions about it, made by hand. Figures are invented. */
public final class SampleAnswers {
    private SampleAnswers() { }

    /** The sample plan with another dish on Tuesday, an order gone, one new and one changed. */
    public static WeekPlan other(Book book) {
        WeekPlan p = SamplePlan.complete(book);
        List<WeekPlan.Served> menu = new ArrayList<>(p.menu());
        WeekPlan.Served tue = menu.get(1);
        menu.set(1, new WeekPlan.Served(tue.slot(), tue.line(), tue.days(), Optional.of("lentil-bake"), 44, 36_900, 700, 130,
                List.of(new WeekPlan.Production(tue.days().get(0), tue.days().get(0), tue.days().get(0).plusDays(2),
                        Ratio.of(3, 2), 44)), "", false));
        List<WeekPlan.Order> orders = new ArrayList<>(p.orders());
        WeekPlan.Order farm = orders.get(1);
        orders.set(1, new WeekPlan.Order(farm.vendor(), farm.delivery().plusDays(2), farm.cutOff().plusDays(2), farm.lines(),
                farm.total(), farm.minimum(), farm.toMinimum(), farm.fee()));
        WeekPlan.Order depot = orders.get(0);
        List<WeekPlan.OrderLine> lines = new ArrayList<>(depot.lines());
        WeekPlan.OrderLine lentil = lines.remove(3);
        lines.add(new WeekPlan.OrderLine(lentil.item(), lentil.pack(), 3, lentil.packMg(), lentil.price(), 9_600,
                lentil.locality(), lentil.whyLocal(), lentil.onList(), false));
        orders.set(0, new WeekPlan.Order(depot.vendor(), depot.delivery(), depot.cutOff(), lines, 28_100, depot.minimum(),
                depot.toMinimum(), depot.fee()));
        Account a = p.account();
        Account account = new Account(299_500, a.eventSales(), 7_900, 2_650, 48_700, a.localPurchases(), a.unclassified(),
                a.kept(), a.waste(), a.fees(), a.overtime(), a.broken().subList(0, 1));
        List<WeekPlan.Promise> promises = new ArrayList<>(p.promises());
        promises.set(1, new WeekPlan.Promise(promises.get(1).id(), promises.get(1).say(), promises.get(1).day(), true, 0, 0));
        WeekPlan.Share s = p.share();
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), menu, p.batches(), orders, p.needs(), p.flows(),
                p.surplus(), account, promises, new WeekPlan.Share(s.definition(), s.target(), s.local(), s.notLocal() + 3_200,
                s.unclassified()), p.proof(), p.missing(), p.swaps());
    }

    private static final LocalDate MON = SamplePlan.WEEK.monday();

    public static Why whyDish(Book book) {
        WeekPlan p = SamplePlan.complete(book);
        Account a = p.account();
        Account without = new Account(264_400, a.eventSales(), 7_200, 2_520, 41_400, 18_200, 11_100, 498, 12, 1_500, 900,
                List.of(new Account.Broken(Account.Promise.EMPTY_SLOT, 0, 7, 1, 15_000), a.broken().get(0), a.broken().get(1)));
        return new Why.Dish(p.menu().get(0), false, true, a, without, List.of(new Why.Minutes("Hot", 95), new Why.Minutes("Cold", -10)),
                List.of(new WeekPlan.Promise("coverage vegan-main", "a vegan hot main", Optional.of(MON), false, 1, 4_000)),
                List.of(new Why.UsedUp("carrot", 3_400_000), new Why.UsedUp("onion-yellow", 900_000)),
                List.of(new Why.Other("penne-bake", 1_240, 1_800, -900, -2_140, 0, true),
                        new Why.Other("carrot-slaw", 9_930, -8_000, 210, -2_140, 0, true)), 4, 1);
    }

    public static Why whyOrder(Book book) {
        WeekPlan p = SamplePlan.complete(book);
        Account a = p.account();
        Account then = new Account(a.sales(), a.eventSales(), a.left(), a.staples(), 46_100, 12_000, 11_100, 400, 6, 1_500, a.overtime(),
                List.of(a.broken().get(0), a.broken().get(1), new Account.Broken(Account.Promise.LOCAL_SHARE, 0, -1, 11_050, 3_315)));
        return new Why.Order("hollow-brook", "carrot", List.of(p.orders().get(1).lines().get(0)),
                List.of(new Why.Use("carrot-slaw", "thu/cold-salad-1", 28_000_000), new Why.Use("lentil-bake", "mon/hot-main-1", 4_000_000)),
                Optional.of(then), a, List.of(new Why.Instead("mill-run-depot", MON.minusDays(3), "carrot", "50 lb sack", 0, 2)), List.of(),
                List.of(new Why.Choice("mill-run-depot", MON.minusDays(3), "50 lb sack", 3_100, 22_679_618, 6, 0, false),
                        new Why.Choice("hollow-brook", MON, "25 lb sack", 2_150, 11_339_809, 8, 4, true)));
    }

    public static Why whyWeek() {
        return new Why.Week(334_832, List.of(
                new Why.Promise("50 % of food money goes to local food", 2_310, 645, List.of("hollow-brook", "stone-creamery"),
                        Why.Carried.VENDORS),
                new Why.Promise("a vegan hot main", 1_150, 4_000, List.of("lentil-bake"), Why.Carried.DISHES),
                new Why.Promise("food costs at most 36 % of sales", 0, 0, List.of(), Why.Carried.NOTHING)));
    }

    public static WhyNot whyNot(Book book) {
        WeekPlan before = SamplePlan.complete(book);
        WeekPlan after = other(book);
        return new WhyNot.Can(before, after, Comparison.of(before, after), Disturbance.between(before, after), 2_250,
                List.of(new Why.Minutes("Hot", -25)), 450_000);
    }

    public static WhyNot cannot() {
        return new WhyNot.Cannot(List.of("its recipe says that it fits salad, not main", "it is out of season in 2027-W33"));
    }

    public static ClashAsked.Answer clash() {
        Clash.Told a = new Clash.Pinned("mon/hot-main-1", "lentil-bake", false);
        Clash.Told b = new Clash.Pinned("mon/cold-salad-1", "carrot-slaw", false);
        Clash.Told food = new Clash.Supply("carrot", 24_000_000, 1_320_391, List.of(
                new Clash.Offered("hollow-brook", MON, 2, "25 lb sack")));
        Clash.Told dip = new Clash.Pinned("mon/standing-dip", "house-hummus", true);
        Clash.Told hands = new Clash.Hands("Cold", Optional.of(MON), true, 180, 205);
        return new ClashAsked.Answer(true, List.of(
                new Clash(Optional.empty(), List.of(a, b, food), true, List.of(new Clash.Mend(food, 1_320_391, Optional.of(331_000L), 390,
                        true, true), new Clash.Mend(a, 0, Optional.of(329_500L), 1_890, true, true),
                        new Clash.Mend(b, 0, Optional.of(321_000L), 10_390, true, true))),
                new Clash(Optional.of(new Clash.Promise("a vegan hot main", MON.plusDays(2))), List.of(dip, hands, new Clash.Comeback(7)),
                        false, List.of(new Clash.Mend(hands, 25, Optional.of(330_100L), 1_200, true, false),
                                new Clash.Mend(dip, 0, Optional.of(318_000L), 13_300, true, false),
                                new Clash.Mend(new Clash.Comeback(7), 0, Optional.empty(), 0, true, false)))), List.of());
    }

    public static Worth worth() {
        return new Worth(334_832, 120, List.of(
                new Worth.Thing(new Worth.Hour("Hot", MON), 1_866, 2, 60, false),
                new Worth.Thing(new Worth.Hour("Cold", MON), 1_500, 1, 25, false),
                new Worth.Thing(new Worth.Line("penne-bake", "cold-salad-1"), 1_420, 1, 60, true),
                new Worth.Thing(new Worth.Pack("hollow-brook", MON, "carrot", "25 lb sack", 4), 640, 1, 60, false),
                new Worth.Thing(new Worth.Unit("Oven", Optional.of(MON.plusDays(4))), 85, 8, 60, true),
                new Worth.Thing(new Worth.Unit("Kettle", Optional.empty()), 0, 1, 60, false)), 23, false);
    }

    public static Exposure exposure() {
        List<Exposure.Outcome> runs = new ArrayList<>();
        for (int r = 0; r < 60; r++) {
            long lost = r % 6 == 0 ? 12_000L + 700L * (r % 11) : 13L * (r * 37 % 50);
            runs.add(new Exposure.Outcome(355_000 - lost, 20_600 - lost / 9, 45_500 - lost / 20, 19_645 + lost / 8,
                    r % 6 == 0 ? 1 + r % 4 / 3 : 0));
        }
        Exposure.Outcome planned = new Exposure.Outcome(355_000, 20_600, 45_500, 19_645, 0);
        return new Exposure(List.of("2027-W33"), 1, planned,
                List.of(new Exposure.Single("mill-run-depot", new Exposure.Outcome(241_000, 20_600, 20_600, 64_000, 4),
                        List.of("lentil-bake", "penne-bake")), new Exposure.Single("hollow-brook",
                                new Exposure.Outcome(349_500, 9_300, 44_800, 23_100, 0), List.of())),
                List.of(new Exposure.Single("carrot", new Exposure.Outcome(322_400, 16_000, 44_000, 35_100, 1), List.of("carrot-slaw"))),
                runs, List.of(new Exposure.Survival("carrot-slaw", 52, 60), new Exposure.Survival("lentil-bake", 178, 180)),
                List.of(new Exposure.BackUp(Exposure.Help.SECOND_GROWER, "carrot", 1_830, 8),
                        new Exposure.BackUp(Exposure.Help.ANOTHER_DISH, "carrot-slaw", 1_410, 8),
                        new Exposure.BackUp(Exposure.Help.FROZEN_STOCK, "carrot", 120, 8)));
    }
}
