package croftboard.bench;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.book.Vendor;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Two years of a kitchen as the files that would have come in: one export of the register and one file of invoice lines a vendor.
 * From a seed; invented throughout: nobody bought or ate any of it.
 */
final class MadeFiles {
    static final LocalDate FIRST = LocalDate.of(2025, 1, 6);
    static final int DAYS = 728;
    private final Book book;
    private final Random random;

    MadeFiles(Book book, long seed) {
        this.book = book;
        this.random = new Random(seed);
    }

    /**
     * @param sales lines of the register. @param receipts lines of all vendors together
     * @return the files by whose they are: a vendor's id, or {@code register}
     */
    Map<String, Path> write(Path folder, int sales, int receipts) throws IOException {
        Map<String, Path> files = new LinkedHashMap<>();
        files.put("register", Files.writeString(folder.resolve("register.csv"), register(sales)));
        List<Vendor> vendors = book.vendors().values().stream().filter(v -> !v.offers().isEmpty()).toList();
        for (int v = 0; v < vendors.size(); v++) {
            int lines = receipts * (v + 1) / vendors.size() - receipts * v / vendors.size();
            String id = vendors.get(v).id();
            files.put(id, Files.writeString(folder.resolve(id + ".csv"), invoices(vendors.get(v), lines)));
        }
        return files;
    }

    private String register(int lines) {
        List<Recipe> dishes = book.recipes().values().stream().filter(r -> r.sale().isPresent()).toList();
        TreeMap<String, String> sold = new TreeMap<>();
        while (sold.size() < lines) {
            LocalDate day = FIRST.plusDays(random.nextInt(DAYS));
            Recipe dish = dishes.get(random.nextInt(dishes.size()));
            int hour = 10 + random.nextInt(8);
            int units = 1 + random.nextInt(6);
            long cents = units * dish.sale().orElseThrow().price().value();
            if (day.getDayOfWeek() != DayOfWeek.SUNDAY) {
                sold.putIfAbsent(day + " " + hour + " " + dish.id(), day + "," + hour + "," + quoted(dish.name()) + "," + units + "," + money(cents));
            }
        }
        return "Date,Hour,Item,Units,Money\r\n" + String.join("\r\n", sold.values()) + "\r\n";
    }

    private String invoices(Vendor vendor, int lines) {
        TreeMap<String, String> came = new TreeMap<>();
        for (int n = 0; n < lines; n++) {
            LocalDate day = FIRST.plusDays(7L * random.nextInt(DAYS / 7) + (random.nextBoolean() ? 1 : 4));
            Vendor.Offer offer = vendor.offers().get(random.nextInt(vendor.offers().size()));
            int packs = 1 + random.nextInt(4);
            came.put(day + String.format(Locale.ROOT, " %06d", n), day + "," + quoted(offer.as().orElse(offer.item())) + ","
                    + quoted(offer.pack()) + "," + packs + "," + money(offer.price().value()) + "," + money(packs * offer.price().value()));
        }
        return "Date,Item,Pack,Qty,Price,Amount\r\n" + String.join("\r\n", came.values()) + "\r\n";
    }

    private static String quoted(String words) {
        return '"' + words.replace("\"", "\"\"") + '"';
    }

    private static String money(long cents) {
        return String.format(Locale.ROOT, "%d.%02d", cents / 100, cents % 100);
    }
}
