package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.need.WeekProblem.Locality;
import croftboard.plan.WeekPlan;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/** A plan of the small kitchen made by hand, with one of everything that a screen can meet. Figures are invented. */
public final class SamplePlan {
    public static final Path KITCHEN = Path.of("src/test/resources/kitchens/small");
    public static final IsoWeek WEEK = new IsoWeek(2027, 33);
    private static final LocalDate MON = WEEK.monday();

    private SamplePlan() { }

    public static Book book() {
        return BookReader.read(KITCHEN).orElseThrow();
    }

    public static WeekPlan complete(Book book) {
        return plan(book.fingerprint(), List.of());
    }

    public static WeekPlan incomplete(Book book) {
        return plan(book.fingerprint(), List.of(new WeekPlan.Missing(
                "6.00 lb of frozen peas for Wed 18 Aug cannot be bought: used by Lentil bake (wed/hot-main-1)",
                "another vendor or delivery day in farms/, stock in kitchen/on-hand.csv, or another dish")));
    }

    private static LocalDate day(int days) {
        return MON.plusDays(days);
    }

    private static WeekPlan plan(String fingerprint, List<WeekPlan.Missing> missing) {
        TreeMap<String, java.util.SortedMap<String, String>> swaps = new TreeMap<>();
        swaps.put("lentil-bake", new TreeMap<>(java.util.Map.of("thyme", "thyme-dried")));
        return new WeekPlan(WEEK, fingerprint, new WeekPlan.Inputs(7, 200, 400, 1000, new TreeMap<>(), Optional.empty(), Optional.empty()),
                menu(), batches(), orders(), List.of(), List.of(), surplus(), account(), promises(),
                new WeekPlan.Share("grown in New York State or within 150 straight-line miles of the store",
                        Ratio.of(50, 100), 20_600, 13_800, 11_100),
                new WeekPlan.Proof(Optional.of(334_832L), Optional.of(345_000L), ""), missing, swaps);
    }

    private static WeekPlan.Served served(String slot, int first, int last, String dish, int portions, long sales,
            Ratio batches, int made, String marks, boolean kept) {
        String line = slot.substring(slot.indexOf('/') + 1);
        List<LocalDate> days = day(first).datesUntil(day(last + 1)).toList();
        return new WeekPlan.Served(slot, line, days, Optional.of(dish), portions, sales, 900, 120,
                List.of(new WeekPlan.Production(day(made), day(last), day(made + 3), batches, portions)), marks, kept);
    }

    private static List<WeekPlan.Served> menu() {
        return List.of(
                served("mon/hot-main-1", 0, 0, "lentil-bake", 40, 36_100, Ratio.of(5, 4), 0, "", true),
                served("tue/hot-main-1", 1, 1, "penne-bake", 46, 37_900, Ratio.of(7, 4), 1, "", false),
                served("wed/hot-main-1", 2, 2, "lentil-bake", 48, 41_000, Ratio.of(3, 2), 2, "", false),
                new WeekPlan.Served("thu/hot-main-1", "hot-main-1", List.of(day(3)), Optional.empty(), 0, 0, 0, 0,
                        List.of(), "", false),
                served("fri/hot-main-1", 4, 4, "penne-bake", 53, 46_000, Ratio.of(2), 4, "", false),
                served("sat/hot-main-1", 5, 5, "lentil-bake", 48, 43_000, Ratio.of(3, 2), 5, "", false),
                served("mon/cold-salad-1", 0, 2, "chickpea-salad", 74, 36_500, Ratio.of(7, 4), -1, "W", false),
                served("thu/cold-salad-1", 3, 5, "carrot-slaw", 73, 34_200, Ratio.of(2), 3, "W", false),
                served("mon/standing-dip", 0, 2, "house-hummus", 30, 10_800, Ratio.of(1, 2), 0, "W", false),
                served("thu/standing-dip", 3, 5, "house-hummus", 45, 15_000, Ratio.of(3, 4), 3, "W", false),
                new WeekPlan.Served("harvest-meal/main", "main", List.of(day(3)), Optional.of("lentil-bake"), 48, 0, 0,
                        0, List.of(new WeekPlan.Production(day(3), day(3), day(6), Ratio.of(3, 2), 48)), "", true),
                new WeekPlan.Served("harvest-meal/vegan", "vegan", List.of(day(3)), Optional.empty(), 0, 0, 0, 0,
                        List.of(), "", false));
    }

    private static List<WeekPlan.Batch> batches() {
        return List.of(new WeekPlan.Batch("soffritto", day(-2), day(0), day(1), Ratio.of(1), 2_721_554, 190),
                new WeekPlan.Batch("house-marinara", day(-1), day(2), day(3), Ratio.of(7, 4), 12_700_586, 820));
    }

    private static WeekPlan.OrderLine line(String item, String pack, int packs, long mg, long price, Locality locality,
            String why, boolean onList, boolean promised) {
        return new WeekPlan.OrderLine(item, pack, packs, mg, price, price * packs, locality, why, onList, promised);
    }

    private static List<WeekPlan.Order> orders() {
        LocalDate fri = day(-3);
        WeekPlan.Order farm = new WeekPlan.Order("hollow-brook", day(0), LocalDateTime.of(2027, 8, 13, 12, 0), List.of(
                line("carrot", "25 lb sack", 4, 11_339_809, 2_150, Locality.LOCAL,
                        "grown in Quillby NY, 4 miles straight line", true, true),
                line("onion-yellow", "10 lb bag", 3, 4_535_923, 900, Locality.LOCAL,
                        "grown in Quillby NY, 4 miles straight line", false, false)), 11_300, 6_000, 6_000, 800);
        WeekPlan.Order creamery = new WeekPlan.Order("stone-creamery", day(1), LocalDateTime.of(2027, 8, 13, 15, 0),
                List.of(line("cheddar", "5 lb block", 3, 2_267_961, 3_100, Locality.LOCAL,
                        "grown in Ebbing NY, 23 miles straight line", false, false)), 9_300, 12_000, 10_000, 0);
        WeekPlan.Order depot = new WeekPlan.Order("mill-run-depot", fri, LocalDateTime.of(2027, 8, 12, 10, 0), List.of(
                line("salt", "25 lb bag", 1, 11_339_809, 1_100, Locality.UNCLASSIFIED,
                        "where it was grown is not known", false, true),
                line("chickpea", "25 lb bag", 1, 11_339_809, 3_600, Locality.UNCLASSIFIED,
                        "where it was grown is not known", false, false),
                line("tomato-crushed-can", "case of 6 No. 10 cans", 4, 17_349_908, 3_450, Locality.NOT_LOCAL,
                        "made in Vinefield NJ, 233 miles straight line", false, false),
                line("lentil-brown", "25 lb bag", 2, 11_339_809, 3_200, Locality.UNCLASSIFIED,
                        "where it was grown is not known", false, false)), 24_900, 10_000, 10_000, 1_500);
        return List.of(depot, farm, creamery);
    }

    private static List<WeekPlan.Surplus> surplus() {
        return List.of(new WeekPlan.Surplus("carrot", 4_000_000, 523, 0, 0),
                new WeekPlan.Surplus("thyme", 0, 0, 180_000, 6));
    }

    private static Account account() {
        return new Account(300_500, 96_000, 8_100, 2_640, 45_500, 20_600, 11_100, 523, 6, 2_300, 1_400, List.of(
                new Account.Broken(Account.Promise.EMPTY_SLOT, 3, 10, 1, 15_000),
                new Account.Broken(Account.Promise.COVERAGE, 0, 7, 1, 4_000),
                new Account.Broken(Account.Promise.LOCAL_SHARE, 0, -1, 2_150, 645)));
    }

    private static List<WeekPlan.Promise> promises() {
        List<WeekPlan.Promise> all = new java.util.ArrayList<>();
        all.add(new WeekPlan.Promise("filled-lines", "every line has a dish on every day", Optional.empty(), false, 1,
                15_000));
        for (int d = 0; d < 6; d++) {
            all.add(new WeekPlan.Promise("coverage vegan-main", "a vegan hot main", Optional.of(day(d)), d > 0,
                    d > 0 ? 0 : 1, d > 0 ? 0 : 4_000));
        }
        for (int d = 0; d < 6; d++) {
            all.add(new WeekPlan.Promise("coverage without-three", "two dishes that list no wheat, milk or egg",
                    Optional.of(day(d)), true, 0, 0));
        }
        all.add(new WeekPlan.Promise("local-share", "50 % of food money goes to local food", Optional.empty(), false,
                2_150, 645));
        all.add(new WeekPlan.Promise("food-cost", "food costs at most 36 % of sales", Optional.empty(), true, 0, 0));
        return List.copyOf(all);
    }
}
