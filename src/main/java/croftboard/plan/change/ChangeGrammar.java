package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.book.Kitchen;
import croftboard.book.Nearest;
import croftboard.measure.Amount;
import croftboard.measure.Cents;
import croftboard.measure.Unit;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads changes as a manager says them, a sentence each, and knows the book's words: a vendor, item, cook, equipment, recipe
 * or slot that is not there is a fault that names the nearest one. The same sentence may stand a line in a file; a line that
 * begins with {@code #} is a remark.
 */
public final class ChangeGrammar {
    private static final int LONGEST = 200;
    private static final int MOST = 9_999;
    private static final List<Form> FORMS = new ArrayList<>();
    private final Book book;
    private final Nearest nearest = new Nearest();

    static {
        supply();
        house();
        wishes();
    }

    /** What a sentence may look like. @param shape with words in capitals to fill in. @param means in words */
    public record Shape(String shape, String means) { }

    private record Form(Shape shape, Pattern pattern, Reading read) { }

    private interface Reading {
        Change read(ChangeGrammar g, Matcher m, List<String> faults);
    }

    /** What was read. @param faults one line each: what is wrong, what would be right; empty when all is well */
    public record Read(List<Change> changes, List<String> faults) { }

    public ChangeGrammar(Book book) {
        this.book = book;
    }

    /** All sentences that are understood, for help. */
    public static List<Shape> shapes() {
        return FORMS.stream().map(Form::shape).toList();
    }

    private static void form(String shape, String means, String pattern, Reading read) {
        String day = "(mon|tue|wed|thu|fri|sat|sun)";
        FORMS.add(new Form(new Shape(shape, means), Pattern.compile(pattern.replace("DAY", day)
                .replace("OFFER", "([^ /]+)/([^ /]+)").replace("WORD", "([^ /]+)").replace("MONEY", "(\\$[0-9.]+)")
                .replace("SLOT", "([^ /]+/[^ /]+)").replace("SIGNED", "([+-][0-9]{1,5})")
                .replace("COUNT", "([0-9]{1,5})")), read));
    }

    private static void supply() {
        form("VENDOR/ITEM got PACKS [DAY]", "the vendor brings so many packs in place of those ordered",
                "OFFER got COUNT(?: DAY)?", (g, m, f) -> new Change.Got(g.vendor(m.group(1), f), g.item(m.group(2), f),
                        Optional.ofNullable(m.group(4)).map(ChangeGrammar::day), count(m.group(3), f)));
        form("VENDOR late DAY until DAY", "the delivery of one day comes on a later one",
                "WORD late DAY until DAY", (g, m, f) -> new Change.Late(g.vendor(m.group(1), f), day(m.group(2)), day(m.group(3))));
        form("VENDOR not sent DAY", "the order for that delivery was never sent",
                "WORD not sent DAY", (g, m, f) -> new Change.NotSent(g.vendor(m.group(1), f), day(m.group(2))));
        form("VENDOR/ITEM price $PRICE", "a pack costs this from now on",
                "OFFER price MONEY", (g, m, f) -> new Change.Price(g.vendor(m.group(1), f), g.item(m.group(2), f), cents(m.group(3), f)));
        form("VENDOR/ITEM more PACKS at $PRICE DAY", "the vendor has more packs than announced, delivered that day",
                "OFFER more COUNT at MONEY DAY", (g, m, f) -> new Change.More(g.vendor(m.group(1), f), g.item(m.group(2), f),
                        count(m.group(3), f), cents(m.group(4), f), day(m.group(5))));
        form("VENDOR/ITEM take PACKS at $PRICE DAY", "the same, and all of them are taken",
                "OFFER take COUNT at MONEY DAY", (g, m, f) -> new Change.Take(g.vendor(m.group(1), f), g.item(m.group(2), f),
                        count(m.group(3), f), cents(m.group(4), f), day(m.group(5))));
        form("VENDOR out [DAY]", "the vendor brings nothing (that day, or at all any more)",
                "(?:vendor )?WORD out(?: DAY)?", ChangeGrammar::out);
        form("item ITEM out", "nobody can bring it any more: a crop has failed",
                "item WORD out", (g, m, f) -> new Change.ItemOut(g.item(m.group(1), f)));
    }

    private static void house() {
        form("ITEM lost AMOUNT [DAY]", "so much of what is in the house is lost (today), as purchased: zucchini lost 12 lb",
                "WORD lost ([0-9./-]+ [^ ]+)(?: DAY)?", (g, m, f) -> new Change.Lost(g.item(m.group(1), f),
                        amount(m.group(2), f), Optional.ofNullable(m.group(3)).map(ChangeGrammar::day)));
        form("batch RECIPE DAY lost", "the batch made that day is lost: a failed cooling log, a burnt pot",
                "batch WORD DAY lost", (g, m, f) -> new Change.BatchLost(g.recipe(m.group(1), f), day(m.group(2))));
        form("closed DAY", "the store does not open that day", "closed DAY",
                (g, m, f) -> new Change.DayClosed(day(m.group(1))));
        form("cook COOK out DAY", "the cook is not there that day", "cook WORD out DAY",
                (g, m, f) -> new Change.CookOut(g.cook(m.group(1), f), day(m.group(2))));
        form("equipment EQUIPMENT out DAY", "it cannot be used that day", "equipment WORD out DAY",
                (g, m, f) -> new Change.EquipmentOut(g.equipment(m.group(1), f), day(m.group(2))));
        form("hands STATION DAY +MINUTES min", "more (or, with -, fewer) minutes of hands", "hands WORD DAY SIGNED min",
                (g, m, f) -> new Change.Hands(g.station(m.group(1), f), day(m.group(2)), signed(m.group(3))));
        form("equipment EQUIPMENT DAY +UNITS", "more (or, with -, fewer) units of equipment",
                "equipment WORD DAY SIGNED", (g, m, f) -> new Change.Units(g.equipment(m.group(1), f), day(m.group(2)),
                        signed(m.group(3))));
    }

    private static void wishes() {
        form("want DAY/LINE DISH", "the dish is wanted there", "want SLOT WORD",
                (g, m, f) -> new Change.Wanted(g.slot(m.group(1), f), g.dish(m.group(2), f)));
        form("not DAY/LINE DISH", "the dish is not wanted there", "not SLOT WORD",
                (g, m, f) -> new Change.Unwanted(g.slot(m.group(1), f), g.dish(m.group(2), f)));
        form("buy VENDOR/ITEM PACKS", "at least so many packs are bought", "buy OFFER COUNT",
                (g, m, f) -> new Change.Buy(g.vendor(m.group(1), f), g.item(m.group(2), f), count(m.group(3), f)));
    }

    /** One sentence or more. Nothing is half read: faults and changes both say all there is. */
    public Read read(List<String> sentences) {
        List<Change> changes = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (String sentence : sentences) {
            String words = sentence.strip().replaceAll("\\s+", " ");
            if (words.isEmpty() || words.startsWith("#")) {
                continue;
            }
            read(words, changes, faults);
        }
        clashes(changes, faults);
        return new Read(List.copyOf(changes), List.copyOf(faults));
    }

    private void read(String words, List<Change> changes, List<String> faults) {
        String shown = words.length() > LONGEST ? words.substring(0, LONGEST) + "..." : words;
        if (words.length() <= LONGEST) {
            for (Form form : FORMS) {
                Matcher m = form.pattern.matcher(words);
                if (m.matches()) {
                    List<String> own = new ArrayList<>();
                    Change change = form.read.read(this, m, own);
                    own.forEach(f -> faults.add("\"" + shown + "\": " + f));
                    if (own.isEmpty()) {
                        changes.add(change);
                    }
                    return;
                }
            }
        }
        faults.add("\"" + shown + "\" is no sentence that is understood -> " + nearestShape(words));
    }

    private String nearestShape(String words) {
        for (String key : List.of("got", "late", "price", "more", "take", "lost", "batch", "closed", "sent", "cook", "equipment",
                "hands", "want", "buy", "out", "not")) {
            if (List.of(words.split(" ")).contains(key)) {
                return String.join(", or ", FORMS.stream().map(f -> f.shape.shape())
                        .filter(s -> List.of(s.split(" ")).contains(key)).toList());
            }
        }
        return "such as hollow-brook/zucchini got 2, or closed thu; all of them: croftboard short --help";
    }

    /** Whether both can be so, said at different times: the same again is said anew. */
    public boolean agree(Change earlier, Change now) {
        return !earlier.equals(now) && !Contradiction.between(earlier, now) && !Contradiction.between(now, earlier);
    }

    /** Two sentences that cannot both be true. */
    private static void clashes(List<Change> changes, List<String> faults) {
        for (int a = 0; a < changes.size(); a++) {
            for (int b = a + 1; b < changes.size(); b++) {
                if (changes.get(a).equals(changes.get(b))) {
                    faults.add("\"" + changes.get(a).sentence() + "\" is there twice -> once is enough");
                } else if (Contradiction.between(changes.get(a), changes.get(b))) {
                    faults.add("\"" + changes.get(a).sentence() + "\" and \"" + changes.get(b).sentence()
                            + "\" cannot both be so -> keep one of them");
                }
            }
        }
    }

    private Change out(Matcher m, List<String> faults) {
        String who = m.group(1);
        Optional<DayOfWeek> day = Optional.ofNullable(m.group(2)).map(ChangeGrammar::day);
        boolean cook = book.kitchen().cooks().stream().anyMatch(c -> c.id().equals(who));
        boolean equipment = book.kitchen().equipment().stream().anyMatch(e -> e.id().equals(who));
        if ((cook || equipment) && day.isEmpty()) {
            faults.add("on which day -> " + who + " out DAY");
        }
        if (!book.vendors().containsKey(who) && (cook || equipment) && day.isPresent()) {
            return cook ? new Change.CookOut(who, day.get()) : new Change.EquipmentOut(who, day.get());
        }
        return new Change.VendorOut(cook || equipment ? who : vendor(who, faults), day);
    }

    private static DayOfWeek day(String word) {
        for (DayOfWeek d : DayOfWeek.values()) {
            if (d.name().substring(0, 3).toLowerCase(Locale.ROOT).equals(word)) {
                return d;
            }
        }
        throw new IllegalArgumentException(word);
    }

    private static int count(String digits, List<String> faults) {
        int n = Integer.parseInt(digits);
        if (n > MOST) {
            faults.add(digits + " packs are too many -> at most " + MOST);
        }
        return n;
    }

    private static int signed(String digits) {
        return Integer.parseInt(digits);
    }

    private static Cents cents(String word, List<String> faults) {
        return Cents.parse(word).orElseGet(() -> {
            faults.add(word + " is no price -> such as $18 or $3.40");
            return Cents.ZERO;
        });
    }

    private static Amount amount(String words, List<String> faults) {
        Optional<Amount> amount = Amount.parse(words).filter(a -> a.unit().kind() != Unit.Kind.TIME
                && a.value().signum() > 0);
        return amount.orElseGet(() -> {
            faults.add(words + " is no amount -> such as 12 lb");
            return new Amount(croftboard.measure.Ratio.ONE, Unit.POUND);
        });
    }

    private String vendor(String id, List<String> faults) {
        return known(id, book.vendors().keySet(), "vendor", "farms/", faults);
    }

    private String item(String id, List<String> faults) {
        return known(id, book.ingredients().keySet(), "item", "kitchen/ingredients/", faults);
    }

    private String recipe(String id, List<String> faults) {
        return known(id, book.recipes().keySet(), "recipe", "recipes/", faults);
    }

    private String dish(String id, List<String> faults) {
        return known(id, book.recipes().values().stream().filter(r -> r.isDish()).map(r -> r.id()).toList(), "dish",
                "recipes/", faults);
    }

    private String cook(String id, List<String> faults) {
        return known(id, book.kitchen().cooks().stream().map(Kitchen.Cook::id).toList(), "cook", "kitchen/kitchen.yaml",
                faults);
    }

    private String equipment(String id, List<String> faults) {
        return known(id, book.kitchen().equipment().stream().map(Kitchen.Equipment::id).toList(), "equipment",
                "kitchen/kitchen.yaml", faults);
    }

    private String station(String id, List<String> faults) {
        return known(id, book.kitchen().stations().stream().map(Kitchen.Station::id).toList(), "station",
                "kitchen/kitchen.yaml", faults);
    }

    private String slot(String id, List<String> faults) {
        String line = id.substring(id.indexOf('/') + 1);
        boolean event = book.seasons().events().stream().anyMatch(e -> id.startsWith(e.id() + "/"));
        if (!event) {
            known(line, book.kitchen().lines().stream().map(Kitchen.ServiceLine::id).toList(), "line",
                    "kitchen/kitchen.yaml", faults);
        }
        return id;
    }

    private String known(String id, Collection<String> ids, String what, String where, List<String> faults) {
        if (!ids.contains(id)) {
            faults.add("no " + what + " " + id + " in " + where
                    + nearest.of(id, ids).map(n -> " -> did you mean " + n + "?").orElse(" -> an id as in the book"));
        }
        return id;
    }
}
