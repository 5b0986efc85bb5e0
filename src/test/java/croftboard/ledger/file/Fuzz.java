package croftboard.ledger.file;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.ledger.Matching;
import croftboard.ledger.VendorGoods;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Good files spoiled at random, read as sales and as an invoice: booked, or refused with words; nothing else may come of it. */
public final class Fuzz {
    private static final List<String> PIECES = List.of("=1+1", "+1", "@SUM(A1)", "\"", "\"\"", ";", ",", "\t", "|", "\r\n", "\n", "\r", "\0", "\ufeff",
            "1,5", "1.5", "1.234,56", "1,234.56", "-", "(3)", "9".repeat(30), "1e309", "NaN", "08/16/2027", "16/08/2027", "16.08.2027",
            "2027-08-16", "2027-02-30", "Aug 16, 2027", "99/99/9999", "24:61", "\u202e", "\ud800", "漢字", "é", "$", "USD", "a".repeat(3000),
            ",".repeat(300), "<", "&#0;", "]]>", "<!DOCTYPE a [<!ENTITY b \"c\">]>", "<cac:InvoiceLine>", "</Invoice>", "Date", "Total", "'");
    private static final List<Charset> CHARSETS = List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16, StandardCharsets.UTF_16LE,
            StandardCharsets.ISO_8859_1, Charset.forName("windows-1252"));
    private final List<byte[]> good = new ArrayList<>();
    private final Book book;
    private final Map<String, Long> came = new TreeMap<>();

    Fuzz() throws IOException {
        book = BookReader.read(Path.of("src/test/resources/kitchens/small")).orElseThrow();
        good.add(Files.readAllBytes(Path.of("docs/samples/ledger/register-2027-08-16.csv")));
        good.add(Files.readAllBytes(Path.of("docs/samples/ledger/thimblewren-herbs-2027-08-10.csv")));
        good.add("Date,Hour,Code,Item,Units,Money\r\n2027-08-16,11,4011,Leek soup,3,19.50\r\n2027-08-16,12,,\"Soup, small\",1.5,\"1,006.50\"\r\n"
                .getBytes(StandardCharsets.UTF_8));
        good.add(workbook());
        good.add(("<?xml version=\"1.0\"?><Invoice><IssueDate>2027-08-16</IssueDate><AccountingSupplierParty><Party><PartyName><Name>Hollow Brook"
                + "</Name></PartyName></Party></AccountingSupplierParty><InvoiceLine><InvoicedQuantity>3</InvoicedQuantity>"
                + "<LineExtensionAmount currencyID=\"USD\">55.50</LineExtensionAmount><Item><Name>leek</Name></Item><Price><PriceAmount>18.50"
                + "</PriceAmount></Price></InvoiceLine></Invoice>").getBytes(StandardCharsets.UTF_8));
    }

    static byte[] workbook() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook made = new Workbook(out, "croftboard", "1.0")) {
            Worksheet sheet = made.newWorksheet("sold");
            String[] head = {"Date", "Item", "Units", "Price", "Money"};
            for (int c = 0; c < head.length; c++) {
                sheet.value(0, c, head[c]);
            }
            for (int r = 1; r < 6; r++) {
                sheet.value(r, 0, "2027-08-1" + r);
                sheet.value(r, 1, "leek");
                sheet.value(r, 2, r);
                sheet.value(r, 3, 2.5);
                sheet.formula(r, 4, "C" + (r + 1) + "*D" + (r + 1));
            }
        }
        return out.toByteArray();
    }

    byte[] spoiled(Random g) {
        byte[] bytes = good.get(g.nextInt(good.size())).clone();
        if (g.nextInt(12) == 0 && bytes[0] != 'P') {
            bytes = new String(bytes, StandardCharsets.UTF_8).getBytes(CHARSETS.get(g.nextInt(CHARSETS.size())));
        }
        for (int n = 1 + g.nextInt(6); n > 0 && bytes.length > 0; n--) {
            bytes = once(bytes, g);
        }
        return bytes;
    }

    private static byte[] once(byte[] bytes, Random g) {
        int at = g.nextInt(bytes.length);
        int to = Math.min(bytes.length, at + g.nextInt(40));
        switch (g.nextInt(5)) {
            case 0:
                bytes[at] = (byte) g.nextInt(256);
                return bytes;
            case 1:
                return joined(Arrays.copyOf(bytes, at), PIECES.get(g.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8),
                        Arrays.copyOfRange(bytes, at, bytes.length));
            case 2:
                return joined(Arrays.copyOf(bytes, at), Arrays.copyOfRange(bytes, to, bytes.length));
            case 3:
                return joined(Arrays.copyOf(bytes, to), Arrays.copyOfRange(bytes, at, bytes.length));
            default:
                return g.nextInt(8) == 0 ? Arrays.copyOf(bytes, at) : joined(Arrays.copyOf(bytes, at),
                        PIECES.get(g.nextInt(PIECES.size())).getBytes(StandardCharsets.UTF_8), Arrays.copyOfRange(bytes, to, bytes.length));
        }
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.write(part, 0, part.length);
        }
        return all.toByteArray();
    }

    /** @throws AssertionError when something else comes of it than lines to book, or words why not */
    void read(byte[] bytes) {
        if (UblInvoice.looksLike(bytes)) {
            if (UblInvoice.read(bytes) instanceof UblInvoice.Invoice invoice) {
                invoice(invoice.table());
            } else {
                count("invoice refused");
            }
            return;
        }
        Table.Reading reading = Tables.read(bytes);
        if (reading instanceof Table.Reading.Refused refused) {
            must(!refused.why().isBlank() && refused.why().length() < 500);
            count("table refused");
            return;
        }
        Table table = ((Table.Reading.Read) reading).table();
        must(table.header().size() <= Table.MOST_COLUMNS && table.rows().stream().allMatch(r -> r.cells().size() == table.header().size()));
        must(table.rows().stream().flatMap(r -> r.cells().stream()).noneMatch(c -> c.chars().anyMatch(Character::isISOControl)));
        intake("sales", SalesFile.read(table, Map.of(), Map.of(), new Matching()));
        invoice(table);
    }

    private void invoice(Table table) {
        VendorGoods goods = new VendorGoods(book, book.vendors().values().iterator().next(), Map.of());
        intake("invoice", InvoiceFile.read(table, Map.of(), Map.of(), goods, Optional.empty()));
    }

    private void intake(String what, Intake intake) {
        if (intake instanceof Intake.Faulty faulty) {
            must(!faulty.faults().isEmpty() && faulty.faults().size() <= 51 && faulty.faults().stream().noneMatch(String::isBlank));
            count(what + " with faults");
        } else {
            must(!((Intake.Read) intake).entries().isEmpty());
            count(what + " read");
        }
    }

    private void count(String what) {
        came.merge(what, 1L, Long::sum);
    }

    private static void must(boolean holds) {
        if (!holds) {
            throw new AssertionError("a reading that must not be");
        }
    }

    /** @return what came of how many */
    Map<String, Long> run(int inputs, long seed) {
        for (int n = 0; n < inputs; n++) {
            byte[] bytes = spoiled(new Random(seed * 1_000_003 + n));
            try {
                read(bytes);
            } catch (RuntimeException | Error e) {
                throw new AssertionError("seed " + seed + ", input " + n + " of " + bytes.length + " bytes: " + e, e);
            }
        }
        return came;
    }

    /** INPUTS SEED. */
    public static void main(String[] args) throws IOException {
        System.out.println(new Fuzz().run(Integer.parseInt(args[0]), Long.parseLong(args[1])));
        System.out.println("memory at the end: " + (Runtime.getRuntime().totalMemory() >> 20) + " MiB of " + (Runtime.getRuntime().maxMemory() >> 20));
    }
}
