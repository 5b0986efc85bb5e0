package croftboard.ledger;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.measure.Cents;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One typed line as an entry: what came, a credit, a label that was read, a correction, a meal of the staff, a transfer.
 * docs/ledger.md has the forms.
 */
public final class TypedWords {
    private static final String MONEY = "\\$(\\d{1,7}(?:\\.\\d\\d)?)";
    private static final Pattern ON = Pattern.compile("(.*?) on (\\S+)");
    private static final Pattern CAME = Pattern.compile("(\\S+) (\\d+(?:\\.\\d{1,3})?) (\\S+)(?: (?:pack|in) (.+?))?(?: at " + MONEY
            + ")?(?: (\\d{1,3}(?:\\.\\d)?) ?F)?(?: instead of (\\S+))?(?: rejected (\\d+(?:\\.\\d{1,3})?))?");
    private static final Pattern CREDIT = Pattern.compile("credit (\\S+) (asked|received|refused) " + MONEY + "(?: entry (\\d{1,18}))?(?: (.+))?");
    private static final Pattern LABEL = Pattern.compile("label (\\d{1,18}) (?:contains|names) (.+?)( only)?");
    private static final Pattern CORRECT = Pattern.compile("correct (\\d{1,18}) (.+?) because (.+)");
    private static final Pattern WITHDRAW = Pattern.compile("withdraw (\\d{1,18}) because (.+)");
    private static final Pattern STAFF = Pattern.compile("staff meal " + MONEY + "(?: (.+))?");
    private static final Pattern TRANSFER = Pattern.compile("transfer (in|out) (\\S+) " + MONEY + "(?: (.+))?");
    private static final Pattern CHANGE = Pattern.compile("(came|rejected|ordered) (\\d+(?:\\.\\d{1,3})?)|(price|money) " + MONEY
            + "|(item|instead-of) (\\S+)|(temp) (\\d{1,3}(?:\\.\\d)?)|(food|not-food|fee|deposit)");
    /** The words of the book for allergens; what is none of them is refused rather than lost. */
    private final SortedSet<String> allergens;
    private final Book book;
    private final Ledger ledger;
    private final LocalDate today;
    private final Function<String, Map<String, String>> learned;

    /** @param allergens the words that a label may name. @param learned names by vendor */
    public TypedWords(Book book, Ledger ledger, LocalDate today, SortedSet<String> allergens, Function<String, Map<String, String>> learned) {
        this.book = book;
        this.ledger = ledger;
        this.today = today;
        this.allergens = allergens;
        this.learned = learned;
    }

    /** What is typed makes no entry. The message says what would be right. */
    public static final class Wrong extends Exception {
        private static final long serialVersionUID = 1;

        Wrong(String message) {
            super(message);
        }
    }

    public Entry entry(String typed) throws Wrong {
        String line = typed.strip().replaceAll("\\s+", " ");
        LocalDate date = today;
        Matcher on = ON.matcher(line);
        if (on.matches() && !line.contains(" because ")) {
            date = date(on.group(2));
            line = on.group(1);
        }
        Matcher m = CREDIT.matcher(line);
        if (m.matches()) {
            return credit(m, date);
        }
        m = LABEL.matcher(line);
        if (m.matches()) {
            return label(m, date);
        }
        m = WITHDRAW.matcher(line);
        if (m.matches()) {
            Entry was = known(m.group(1));
            return new Withdrawal(Draft.correction(1, was.stamp().id(), m.group(2)), was.date());
        }
        m = CORRECT.matcher(line);
        if (m.matches()) {
            return correction(m);
        }
        m = STAFF.matcher(line);
        if (m.matches()) {
            return new Transfer(Draft.line(1), date, Transfer.Way.STAFF_MEAL, "staff", words(m.group(2)), Quantity.ZERO, 0, cents(m.group(1)));
        }
        m = TRANSFER.matcher(line);
        if (m.matches()) {
            return new Transfer(Draft.line(1), date, Transfer.Way.valueOf(m.group(1).toUpperCase(Locale.ROOT)), m.group(2), words(m.group(4)),
                    Quantity.ZERO, 0, cents(m.group(3)));
        }
        m = CAME.matcher(line);
        if (m.matches()) {
            return came(m, date);
        }
        throw new Wrong("'" + line + "' is not understood -> such as: hollow-brook 3 leek at $18.50 41F; credit hollow-brook asked $12.40 short kale;"
                + " label 12 contains milk, wheat; correct 12 came 2 because miscounted; withdraw 12 because booked twice; staff meal $34.20"
                + " soup; transfer out produce $12.00 leeks");
    }

    private LocalDate date(String text) throws Wrong {
        try {
            LocalDate date = LocalDate.parse(text);
            if (Math.abs(java.time.temporal.ChronoUnit.DAYS.between(date, today)) > 366) {
                throw new Wrong(date + " is more than a year away -> the day on which it happened");
            }
            return date;
        } catch (DateTimeException e) {
            throw new Wrong("'" + text + "' is no date -> such as 2027-08-16");
        }
    }

    private static String words(String text) {
        return text == null ? "" : text;
    }

    private static long cents(String dollars) {
        return Cents.parse("$" + dollars).orElseThrow().value();
    }

    private static Quantity quantity(String text) throws Wrong {
        return Quantity.parse(text).orElseThrow(() -> new Wrong("'" + text + "' is no number of packs -> such as 3 or 2.5"));
    }

    private Vendor vendor(String id) throws Wrong {
        Vendor vendor = book.vendors().get(id);
        if (vendor == null) {
            throw new Wrong("there is no vendor '" + id + "' -> one of " + String.join(", ", book.vendors().keySet()));
        }
        return vendor;
    }

    private String item(String words, Vendor vendor) throws Wrong {
        Matching matching = new VendorGoods(book, vendor, learned.apply(vendor.id())).matching();
        String spaced = words.replace('_', ' ');
        Optional<String> known = Optional.of(words).filter(w -> book.ingredients().containsKey(w) || book.recipes().containsKey(w))
                .or(() -> matching.of(spaced));
        if (known.isPresent()) {
            return known.get();
        }
        Matching all = new Matching();
        book.ingredients().values().forEach(i -> {
            all.name(i.id(), i.id());
            all.name(i.id(), i.name());
        });
        throw new Wrong("the book has no '" + words + "' -> " + (all.nearest(spaced).isEmpty() ? "an id of kitchen/ingredients"
                : "perhaps " + String.join(", ", all.nearest(spaced))));
    }

    private Receipt came(Matcher m, LocalDate date) throws Wrong {
        Vendor vendor = vendor(m.group(1));
        String item = item(m.group(3), vendor);
        Quantity packs = quantity(m.group(2));
        VendorGoods goods = new VendorGoods(book, vendor, Map.of());
        long said = m.group(5) == null ? -1 : cents(m.group(5));
        Optional<Vendor.Offer> offer = goods.offer(item, words(m.group(4)), said);
        if (said < 0 && offer.isEmpty()) {
            throw new Wrong("what does a pack of " + item + " cost? The book has no price of " + vendor.name() + " for it -> add: at $18.50");
        }
        long price = said < 0 ? offer.orElseThrow().price().value() : said;
        Optional<String> instead = m.group(7) == null ? Optional.empty() : Optional.of(item(m.group(7), vendor));
        Quantity rejected = m.group(8) == null ? Quantity.ZERO : quantity(m.group(8));
        return new Receipt(Draft.line(1), date, vendor.id(), Optional.empty(), Receipt.Kind.FOOD, m.group(), Optional.of(item),
                offer.map(Vendor.Offer::pack).or(() -> Optional.ofNullable(m.group(4))), Optional.empty(), packs, rejected,
                offer.map(o -> VendorGoods.mg(o, packs)).orElse(0L), price, Math.multiplyExact(price, packs.thousandths()) / 1000, instead,
                tenths(m.group(6)), offer.map(goods::origin).orElse(Origin.UNKNOWN), "");
    }

    private static OptionalInt tenths(String degrees) throws Wrong {
        return degrees == null ? OptionalInt.empty() : OptionalInt.of((int) (quantity(degrees).thousandths() / 100));
    }

    private Credit credit(Matcher m, LocalDate date) throws Wrong {
        Optional<Long> receipt = Optional.empty();
        if (m.group(4) != null) {
            Entry about = known(m.group(4));
            if (!(about instanceof Receipt r) || !r.vendor().equals(m.group(1))) {
                throw new Wrong("entry " + m.group(4) + " is no delivery of " + m.group(1) + " -> the entry that the credit is about");
            }
            receipt = Optional.of(about.stamp().id());
        }
        return new Credit(Draft.line(1), date, vendor(m.group(1)).id(), receipt, Credit.Step.valueOf(m.group(2).toUpperCase(Locale.ROOT)),
                cents(m.group(3)), words(m.group(5)));
    }

    private LabelRead label(Matcher m, LocalDate date) throws Wrong {
        Entry about = known(m.group(1));
        if (!(about instanceof Receipt r) || r.insteadOf().isEmpty()) {
            throw new Wrong("entry " + m.group(1) + " is nothing that came instead of something else -> the entry of the substitute");
        }
        SortedSet<String> contains = new TreeSet<>();
        for (String word : m.group(2).equals("nothing") ? new String[0] : m.group(2).split(" ?, ?| and ")) {
            String plain = word.strip().toLowerCase(Locale.ROOT);
            if (!allergens.contains(plain)) {
                throw new Wrong("'" + word + "' is no allergen of the book -> " + String.join(", ", allergens) + ", or nothing");
            }
            contains.add(plain);
        }
        return new LabelRead(Draft.line(1), date, about.stamp().id(), contains, m.group(3) != null, m.group());
    }

    private Entry known(String id) throws Wrong {
        return ledger.entry(Long.parseLong(id)).orElseThrow(() -> new Wrong("there is no entry " + id
                + " -> the number that was printed when it was booked"));
    }

    private Entry correction(Matcher m) throws Wrong {
        Entry was = known(m.group(1));
        if (!(was instanceof Receipt r)) {
            throw new Wrong("entry " + m.group(1) + " is no delivery -> withdraw it and book it anew");
        }
        Receipt now = r;
        Matcher change = CHANGE.matcher(m.group(2));
        int at = 0;
        while (at < m.group(2).length()) {
            if (!change.find(at) || change.start() != at) {
                throw new Wrong("'" + m.group(2).substring(at) + "' changes nothing that is known -> came 2, rejected 1, price $3.20, money $12.40,"
                        + " item leek, instead-of leek, temp 41, food, not-food, fee, deposit");
            }
            now = changed(now, change);
            at = change.end();
            while (at < m.group(2).length() && " ,".indexOf(m.group(2).charAt(at)) >= 0) {
                at++;
            }
        }
        Receipt corrected = now;
        return corrected.stamped(Draft.correction(1, was.stamp().id(), m.group(3)));
    }

    private Receipt changed(Receipt r, Matcher c) throws Wrong {
        Vendor vendor = vendor(r.vendor());
        if (c.group(1) != null) {
            Quantity q = quantity(c.group(2));
            return switch (c.group(1)) {
                case "came" -> with(r, r.item(), q, r.rejected(), r.ordered(), r.price(), Math.multiplyExact(r.price(), q.thousandths()) / 1000, r.insteadOf(),
                        r.tenthsF(), r.kind());
                case "rejected" -> with(r, r.item(), r.came(), q, r.ordered(), r.price(), r.cents(), r.insteadOf(), r.tenthsF(), r.kind());
                default -> with(r, r.item(), r.came(), r.rejected(), Optional.of(q), r.price(), r.cents(), r.insteadOf(), r.tenthsF(), r.kind());
            };
        }
        if (c.group(3) != null) {
            long money = cents(c.group(4));
            boolean price = c.group(3).equals("price");
            return with(r, r.item(), r.came(), r.rejected(), r.ordered(), price ? money : r.price(),
                    price ? Math.multiplyExact(money, r.came().thousandths()) / 1000 : money, r.insteadOf(), r.tenthsF(), r.kind());
        }
        if (c.group(5) != null) {
            Optional<String> item = Optional.of(item(c.group(6), vendor));
            boolean instead = c.group(5).equals("instead-of");
            return with(r, instead ? r.item() : item, r.came(), r.rejected(), r.ordered(), r.price(), r.cents(), instead ? item : r.insteadOf(),
                    r.tenthsF(), r.kind());
        }
        if (c.group(7) != null) {
            return with(r, r.item(), r.came(), r.rejected(), r.ordered(), r.price(), r.cents(), r.insteadOf(), tenths(c.group(8)), r.kind());
        }
        Receipt.Kind kind = Arrays.stream(Receipt.Kind.values()).filter(k -> k.name().replace('_', '-').equalsIgnoreCase(c.group(9))).findFirst()
                .orElseThrow();
        return with(r, kind == Receipt.Kind.FOOD ? r.item() : Optional.empty(), r.came(), r.rejected(), r.ordered(), r.price(), r.cents(), r.insteadOf(),
                r.tenthsF(), kind);
    }

    private Receipt with(Receipt r, Optional<String> item, Quantity came, Quantity rejected, Optional<Quantity> ordered, long price, long cents,
            Optional<String> instead, OptionalInt tenthsF, Receipt.Kind kind) throws Wrong {
        VendorGoods goods = new VendorGoods(book, vendor(r.vendor()), Map.of());
        boolean same = item.equals(r.item());
        Optional<Vendor.Offer> offer = item.flatMap(i -> goods.offer(i, same ? r.pack().orElse("") : "", price));
        long mg = offer.map(o -> VendorGoods.mg(o, came)).orElse(0L);
        return new Receipt(r.stamp(), r.date(), r.vendor(), r.order(), kind, r.words(), item, same ? r.pack() : offer.map(Vendor.Offer::pack).or(r::pack),
                ordered, came, rejected, mg, price, cents, instead, tenthsF,
                same ? r.origin() : offer.map(goods::origin).orElse(Origin.UNKNOWN), r.note());
    }
}
