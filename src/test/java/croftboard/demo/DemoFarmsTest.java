package croftboard.demo;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Ingredient;
import croftboard.book.Seasons;
import croftboard.book.Vendor;
import croftboard.measure.Amount;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * The vendors of the demo book: packs that hold what their words say, and food there when a dish in
 * season needs it.
 */
class DemoFarmsTest {
    private static final String NUMBER = "(\\d+-\\d+/\\d+|\\d+/\\d+|\\d+)";
    private static final Pattern OF_SOME = Pattern.compile(
            "(\\d+) (?:cans|tubs|clamshells|bags) of " + NUMBER + " (lb|oz)");
    private static final Pattern WEIGHT = Pattern.compile(NUMBER + " (lb|oz)\\b");
    private static final Pattern COUNTED = Pattern.compile("(?:bag of )?" + NUMBER
            + " (dozen|loaves|heads|gallon|quart|L|can)\\b.*");
    private static final Map<String, String> UNITS = Map.of("loaves", "loaf", "heads", "head", "gallon",
            "gal", "quart", "qt",
            "L", "L", "can", "can");

    /** By the words of the pack: the weight it names, or its pieces or volume by the shelf's own measure. */
    @Test
    void pack_holdsWhatItsWordsSay_withinThreePerCent() {
        List<String> wrong = new ArrayList<>();
        List<String> tried = new ArrayList<>();
        DemoBook.BOOK.vendors().values().forEach(v -> v.offers().forEach(o -> {
            double holds = DemoBook.TREE.purchasedGrams(DemoBook.ingredient(o.item()), o.holds()).toDouble();
            double says = saidGrams(o);
            if (says > 0) {
                tried.add(o.pack());
                if (Math.abs(holds / says - 1) > 0.03) {
                    wrong.add(v.id() + " " + o.item() + ", " + o.pack() + ": " + holds
                            + " g, by its words " + says + " g");
                }
            }
        }));
        assertThat(wrong).isEmpty();
        assertThat(tried).hasSizeGreaterThan(250);
    }

    private static double saidGrams(Vendor.Offer offer) {
        String pack = offer.pack().contains("split: 1 bag") ? offer.pack().replaceFirst("^\\d+ bags of ",
                "") : offer.pack();
        Matcher some = OF_SOME.matcher(pack);
        if (some.find()) {
            return mass(some.group(2), some.group(3)) * Integer.parseInt(some.group(1));
        }
        Matcher weight = WEIGHT.matcher(pack);
        if (weight.find()) {
            return mass(weight.group(1), weight.group(2));
        }
        Matcher counted = COUNTED.matcher(pack);
        if (!counted.matches()) {
            return 0;
        }
        Ratio number = Amount.number(counted.group(1)).orElseThrow();
        boolean dozen = counted.group(2).equals("dozen");
        String unit = dozen ? offer.item().equals("corn-ear") ? "ear" : "each" : UNITS.get(counted.group(2));
        Amount amount = new Amount(dozen ? number.times(12) : number, Unit.named(unit).orElseThrow());
        Ingredient item = DemoBook.ingredient(offer.item());
        boolean measured = item.measures().stream().anyMatch(m -> m.measure().unit().converts(amount.unit()));
        return measured ? DemoBook.TREE.purchasedGrams(item, amount).toDouble() : 0;
    }

    private static double mass(String number, String unit) {
        return new Amount(Amount.number(number).orElseThrow(), Unit.named(unit).orElseThrow()).base()
                .toDouble();
    }

    /**
     * A piece used and a piece bought are the same piece: by count, the need of shelled eggs is met by as
     * many eggs.
     */
    @Test
    void pieces_areBoughtByThePiece() {
        for (String item : List.of("egg", "pita", "tortilla-wheat", "roll-soft", "corn-ear",
                "bread-whole-wheat",
                "bread-sourdough", "focaccia")) {
            assertThat(DemoBook.offers(item)).as(item).isNotEmpty()
                    .allMatch(o -> o.holds().unit().kind() == Unit.Kind.COUNT);
        }
        Ingredient egg = DemoBook.ingredient("egg");
        Ratio shelled = egg.measureFor(Unit.EACH, java.util.Optional.of("shelled")).orElseThrow().weighs()
                .base();
        Ratio whole = DemoBook.TREE.purchasedGrams(egg, new Amount(Ratio.ONE, Unit.EACH));
        assertThat(shelled.over(egg.cuts().get("shelled").yield()).over(whole).toDouble()).isBetween(0.995,
                1.005);
    }

    @Test
    void everyIngredient_isSold_exceptWater() {
        assertThat(DemoBook.BOOK.ingredients().values().stream().filter(i -> !i.free()))
                .allMatch(i -> DemoBook.offers(i.id()).findAny().isPresent());
    }

    /**
     * Every ingredient that a dish in season needs is on some delivery of the week or the one before, so
     * that on every prep
     * day one of them is still within its storage life; hopes do not count, staples stand on the shelf.
     */
    @Test
    void whatADishInSeasonNeeds_isReachableOnEveryPrepDay() {
        Map<String, Set<Integer>> needed = new TreeMap<>();
        DemoBook.dishes().forEach(d -> DemoBook.ingredientsOf(d).forEach(i ->
                needed.computeIfAbsent(i, k -> new TreeSet<>()).addAll(DemoBook.weeksOf(d))));
        List<String> missing = new ArrayList<>();
        needed.forEach((item, weeks) -> {
            Ingredient ingredient = DemoBook.ingredient(item);
            if (!ingredient.free() && !ingredient.isStaple()) {
                for (int week : weeks) {
                    Set<Integer> arrivals = arrivals(item, week);
                    for (int day = -1; day <= 5; day++) {
                        int on = day;
                        if (arrivals.stream().noneMatch(a -> a <= on && on <= a + ingredient.keepsDays())) {
                            missing.add(item + " W" + week + " day " + day);
                        }
                    }
                }
            }
        });
        assertThat(missing).isEmpty();
    }

    /** Days of delivery, Monday of the week is 0, the week before negative. */
    private static Set<Integer> arrivals(String item, int week) {
        Set<Integer> days = new TreeSet<>();
        int before = week == 1 ? 52 : week - 1;
        DemoBook.BOOK.vendors().values().forEach(v -> v.offers().stream().filter(o -> o.item().equals(item))
                .forEach(o ->
                v.deliveries().stream().map(Vendor.Delivery::day).filter(d -> o.on().isEmpty() || o.on()
                        .contains(d))
                        .forEach(d -> {
                            if (sold(o, week)) {
                                days.add(d.getValue() - 1);
                            }
                            if (sold(o, before)) {
                                days.add(d.getValue() - 8);
                            }
                        })));
        return days;
    }

    private static boolean sold(Vendor.Offer offer, int week) {
        return offer.weeks().stream().anyMatch(e -> e.weeks().holds(week) && e.packs() > 0
                && e.confidence() != Vendor.Confidence.HOPE);
    }

    /**
     * A grower's own crop stands in its weeks of seasons/crops.yaml, or comes from a store that is filled
     * in autumn, or from a tunnel.
     */
    @Test
    void growersCalendar_staysWithinTheCropsOfTheRegion() {
        Map<String, Set<Integer>> crops = new TreeMap<>();
        for (Seasons.Crop c : DemoBook.BOOK.seasons().crops()) {
            for (int w = 1; w <= 52; w++) {
                boolean stored = c.crop().contains("in store") && w > 40;
                if (c.weeks().holds(w) || stored) {
                    crops.computeIfAbsent(c.item(), k -> new TreeSet<>()).add(w);
                }
            }
        }
        List<String> out = new ArrayList<>();
        DemoBook.BOOK.vendors().values().stream().filter(v -> v.kind() == Vendor.Kind.GROWER)
                .filter(v -> !v.id().equals("quenbeck-tunnels"))
                .forEach(v -> v.offers().stream().filter(o -> crops.containsKey(o.item()) && grown(o))
                        .forEach(o -> {
                    int keeps = DemoBook.ingredient(o.item()).keepsDays() / 7;
                    for (int w = 1; w <= 52; w++) {
                        if (DemoBook.holds(o.weeks(), w) && !within(crops.get(o.item()), w, keeps)) {
                            out.add(v.id() + " " + o.item() + " W" + w);
                        }
                    }
                }));
        assertThat(out).isEmpty();
    }

    private static boolean grown(Vendor.Offer offer) {
        return offer.grownAt() instanceof Vendor.Whence.Here;
    }

    /**
     * In the weeks of a crop, a week early or late, or as long after as it keeps in the grower's own
     * store.
     */
    private static boolean within(Set<Integer> weeks, int week, int keeps) {
        for (int back = -1; back <= Math.max(1, keeps); back++) {
            if (weeks.contains(Math.floorMod(week - back - 1, 52) + 1)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void deliveries_reachTheDock_onOpenDays() {
        assertThat(DemoBook.BOOK.vendors().values()).allSatisfy(v -> assertThat(v.deliveries())
                .extracting(Vendor.Delivery::day).isNotEmpty().doesNotContain(DayOfWeek.SUNDAY));
    }

    /** Local food is to be had in every week, more or less of it. */
    @Test
    void everyWeek_someGrowerSells() {
        for (int week = 1; week <= 53; week++) {
            int w = week;
            long items = DemoBook.BOOK.vendors().values().stream().filter(v -> v.kind() == Vendor.Kind.GROWER)
                    .flatMap(v -> v.offers().stream()).filter(o -> sold(o, w)).map(Vendor.Offer::item)
                            .distinct().count();
            assertThat(items).as("W" + w).isGreaterThanOrEqualTo(10);
        }
    }
}
