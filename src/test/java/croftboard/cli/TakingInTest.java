package croftboard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.ledger.Credit;
import croftboard.ledger.Entry;
import croftboard.ledger.Left;
import croftboard.ledger.Quantity;
import croftboard.ledger.Receipt;
import croftboard.ledger.Sale;
import croftboard.ledger.StockCount;
import croftboard.ledger.Waste;
import croftboard.ledger.store.LedgerStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What happened in the small kitchen, from the shell into the ledger. */
class TakingInTest {
    private static final String INVOICE = """
            Delivered,Item,Pack,Qty,Unit price,Extended
            08/26/2027,"Carrots, bunching, no tops",25 lb sack,2,$24.00,$48.00
            08/26/2027,"Onions, odd",bag,1,$14.00,$14.00
            08/26/2027,Delivery fee,,1,$8.00,$8.00
            Total,,,,,$70.00
            """;
    private static final String SHEET = """
            week,version,date,slot,line,dish,dish_name,planned_portions,prepared_portions,sold_portions,left_portions,ran_out_at,waste_portions,waste_reason,note
            2027-W33,1,2027-08-16,mon/hot-main-1,hot-main-1,lentil-bake,Lentil bake,40,40,33,7,,7,over-production,
            2027-W33,1,2027-08-17,tue/hot-main-1,hot-main-1,penne-bake,Penne bake,46,46,46,0,13:40,,,busy
            2027-W33,1,2027-08-18,wed/hot-main-1,hot-main-1,lentil-bake,Lentil bake,48,,,,,,,
            """;
    private static final String REGISTER = """
            Business date;Hour;PLU;Item name;Qty;Net sales
            16.08.2027;11;7101;Lentil bake;12;143,40
            16.08.2027;12;7102;Lentil bakes, large;4;31,80
            16.08.2027;12;4011;Bananas;3;2,07
            """;
    @TempDir
    private Path folder;
    private Desk desk;

    @BeforeEach
    void posted() {
        Desk friday = new Desk(folder, Desk.always(true));
        assertThat(friday.run("plan", "2027-W33").code()).isZero();
        assertThat(friday.run("post", "2027-W33").code()).isZero();
        desk = friday.at(Clock.fixed(Instant.parse("2027-08-18T14:00:00Z"), ZoneOffset.UTC));
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private Path ledger() {
        return desk.book.resolve(LedgerAt.FILE);
    }

    private <E extends Entry> List<E> booked(Class<E> kind) {
        return LedgerStore.toRead(ledger().toString()).map(store -> {
            try (store) {
                return store.entries(kind, LocalDate.of(2020, 1, 1), LocalDate.of(2030, 1, 1));
            }
        }).orElse(List.of());
    }

    private int everything() {
        return LedgerStore.toRead(ledger().toString()).map(store -> {
            try (store) {
                return store.everything().size();
            }
        }).orElse(0);
    }

    private Desk.Run good(String... args) {
        Desk.Run run = desk.run(args);
        assertThat(run.code()).as(run.out() + run.err()).isZero();
        return run;
    }

    private String refused(String... args) {
        int before = everything();
        Desk.Run run = desk.run(args);
        assertThat(run.code()).as(run.out() + run.err()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("->");
        assertThat(everything()).isEqualTo(before);
        return run.err();
    }

    @Test
    void ordersAsTheyCame_bookedOnce_withWhatWasDifferentAtTheDoor() {
        Desk.Run run = good("receive", "--from-orders", "2027-W33", "--came", "carrot=3", "--price", "cheddar=$32.00", "--temp", "cheddar=39",
                "--rejected", "onion-yellow=1");
        assertThat(run.out()).contains("1 short").contains("39 °F").contains("1 sent back");
        assertThat(booked(Receipt.class)).hasSize(9);
        assertThat(booked(Receipt.class)).filteredOn(r -> r.words().equals("carrot")).singleElement().satisfies(r -> {
            assertThat(r.cents()).isEqualTo(3 * 2_150);
            assertThat(r.mg()).isEqualTo(3 * 11_339_809L);
            assertThat(r.order()).hasValue("2027-W33/hollow-brook/0816");
        });
        assertThat(booked(Receipt.class)).filteredOn(r -> r.words().equals("cheddar")).singleElement()
                .extracting(Receipt::cents).isEqualTo(9_600L);
        assertThat(good("receive", "--from-orders", "2027-W33").out()).contains("booked already");
        assertThat(booked(Receipt.class)).hasSize(9);
        assertThat(refused("receive", "--from-orders", "2027-W33", "--came", "carrot=2")).contains("correct N came 2");
    }

    @Test
    void dryRun_showsTheSameLines_andLeavesNothingOnDisk() {
        String dry = good("receive", "--from-orders", "2027-W33", "--dry-run").out();
        assertThat(ledger()).doesNotExist();
        String real = good("receive", "--from-orders", "2027-W33").out();
        assertThat(dry.lines().filter(l -> l.contains("2027-08-"))).containsExactlyElementsOf(real.lines().filter(l -> l.contains("2027-08-")).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"rutabaga=2", "carrot=many", "carrot=-1", "carrot=1000000000"})
    void whatCannotHaveComeOfAnOrder_isRefused(String came) {
        refused("receive", "--from-orders", "2027-W33", "--came", came);
    }

    @Test
    void moreSentBackThanWasOrdered_isRefused() {
        assertThat(refused("receive", "--from-orders", "2027-W33", "--rejected", "carrot=5")).contains("ordered were 4");
        assertThat(refused("receive", "--from-orders", "2027-W33", "--instead", "carrot=rutabaga")).contains("the book has no");
    }

    @Test
    void substitute_namesWhatRestsOnIt_onSaleFirst_untilItsLabelIsRead() {
        Desk.Run run = good("receive", "--from-orders", "2027-W33", "--vendor", "hollow-brook", "--instead", "carrot=onion-yellow");
        List<String> lines = run.out().lines().toList();
        assertThat(lines.get(0)).startsWith("ALLERGENS UNKNOWN");
        List<String> dishes = lines.stream().filter(l -> l.startsWith("- ")).toList();
        assertThat(dishes.get(0)).startsWith("- PULL NOW: ");
        assertThat(dishes).anyMatch(l -> l.startsWith("- PULL NOW: Lentil bake, hot-main-1, 2027-08-18"));
        assertThat(dishes).anyMatch(l -> l.startsWith("- Carrot slaw"));
        assertThat(dishes.get(dishes.size() - 1)).startsWith("- sold already: ");
        assertThat(dishes.stream().dropWhile(l -> l.startsWith("- PULL NOW"))).noneMatch(l -> l.startsWith("- PULL NOW"));
        assertThat(run.out()).contains("instead of").contains("1 label is still to be read");
        long entry = booked(Receipt.class).stream().filter(r -> r.insteadOf().isPresent()).findFirst().orElseThrow().stamp().id();
        assertThat(refused("receive", "label " + entry + " contains plutonium")).contains("milk");
        assertThat(good("receive", "label " + entry + " contains milk, wheat").out()).contains("other allergens not stated");
        assertThat(good("receive", "--unread").out()).contains("Every label of a substitute has been read.");
    }

    @Test
    void substitute_isAnnouncedBesideATable_whenAProgramReadsIt() {
        for (String format : new String[] {"csv", "json"}) {
            Desk.Run run = good("receive", "--from-orders", "2027-W33", "--vendor", "hollow-brook", "--instead", "carrot=onion-yellow",
                    "--dry-run", "--format", format);
            assertThat(run.out()).doesNotContain("ALLERGENS UNKNOWN");
            assertThat(run.err()).contains("ALLERGENS UNKNOWN", "PULL NOW");
        }
    }

    @Test
    void unreadLabel_staysUnread_whenTheEntryIsCorrected() {
        good("receive", "hollow-brook 2 onion-yellow at $9.00 instead of carrot");
        good("receive", "correct 1 came 1 because miscounted");
        assertThat(good("receive", "--unread").out()).contains("ALLERGENS UNKNOWN").contains("label 2 contains");
    }

    @Test
    void invoice_bookedOnce_columnsRemembered_unmatchedListedWithNames() throws IOException {
        String path = file("hollow-brook-1.csv", INVOICE);
        String out = good("receive", path).out();
        assertThat(out).contains("Column 'Qty' is read as quantity").contains("Onions, odd: perhaps onion-yellow").contains("is a total");
        assertThat(good("receive", path).out()).contains("booked already");
        assertThat(booked(Receipt.class)).extracting(Receipt::kind)
                .containsExactly(Receipt.Kind.FOOD, Receipt.Kind.FOOD, Receipt.Kind.FEE);
        assertThat(booked(Receipt.class).stream().mapToLong(Receipt::cents).sum()).isEqualTo(7_000);
        assertThat(Files.readString(desk.book.resolve("ledger/columns.csv"))).contains("hollow-brook,amount,Extended");
    }

    @Test
    void changedLine_isACorrectionOnlyWhenSaid_andTheOldOneIsKept() throws IOException {
        good("receive", file("hollow-brook-1.csv", INVOICE));
        String newer = file("hollow-brook-2.csv", INVOICE.replace("2,$24.00,$48.00", "3,$24.00,$72.00"));
        assertThat(refused("receive", newer)).contains("--correct").contains("--also");
        assertThat(good("receive", newer, "--correct").out()).contains("2 the same, 1 corrected, 0 new");
        assertThat(booked(Receipt.class)).hasSize(3);
        assertThat(everything()).isEqualTo(4);
        assertThat(booked(Receipt.class).stream().mapToLong(Receipt::cents).sum()).isEqualTo(9_400);
    }

    @Test
    void faultyInvoice_saysEveryFaultWithItsLine_booksNothing() throws IOException {
        String err = refused("receive", file("hollow-brook-1.csv", INVOICE.replace("$14.00,$14.00", "cheap,cheap").replace("08/26/2027,Deliv", "soon,Deliv")));
        assertThat(err).contains("hollow-brook-1.csv: line 3: ").contains("hollow-brook-1.csv: line 4: 'soon' is no date");
    }

    @Test
    void typedLine_bookedOnceADay_creditsAskedAndReceived() {
        good("receive", "hollow-brook 3 carrot at $18.50 41F");
        assertThat(good("receive", "hollow-brook 3 carrot at $18.50 41F").out()).contains("booked already");
        assertThat(booked(Receipt.class)).singleElement().satisfies(r -> {
            assertThat(r.cents()).isEqualTo(5_550);
            assertThat(r.tenthsF()).hasValue(410);
        });
        good("receive", "credit hollow-brook asked $12.40 entry 1 short");
        good("receive", "credit hollow-brook received $10.00 entry 1");
        assertThat(booked(Credit.class)).extracting(Credit::step).containsExactly(Credit.Step.ASKED, Credit.Step.RECEIVED);
        assertThat(refused("receive", "hollow-brook 3 carot at $18.50")).contains("perhaps carrot");
        assertThat(refused("receive", "credit hollow-brook asked $12.40 entry 99")).contains("no entry 99");
    }

    @Test
    void register_bookedOnce_unmatchedCountsItsMoney_andIsMatchedLater() throws IOException {
        String path = file("register.csv", REGISTER);
        String out = good("sold", path).out();
        assertThat(out).contains("day, month, year").contains("decimal commas").contains("7102 Lentil bakes, large: perhaps lentil-bake");
        assertThat(good("sold", path).out()).contains("booked already");
        assertThat(booked(Sale.class).stream().mapToLong(Sale::cents).sum()).isEqualTo(17_727);
        assertThat(good("match").out()).contains("7102 Lentil bakes, large").contains("4011 Bananas");
        assertThat(refused("match", "7102", "carrot")).contains("a dish that is sold");
        good("match", "7102", "lentil-bake");
        good("match", "4011 Bananas", "not-ours");
        assertThat(good("match").out()).contains("Everything that is booked is matched.");
        assertThat(booked(Sale.class)).filteredOn(s -> s.dish().isPresent()).hasSize(2);
        assertThat(everything()).as("what was booked first is kept").isEqualTo(5);
        String next = file("next.csv", REGISTER.replace("16.08", "17.08").replace("large", "very large"));
        assertThat(good("sold", next).out()).as("learned").doesNotContain("Not matched");
    }

    @Test
    void invoiceWords_matched_giveWeightAndOrigin_andHoldForTheNextInvoice() throws IOException {
        good("receive", file("hollow-brook-1.csv", INVOICE.replace("odd\",bag", "odd\",10 lb bag")));
        good("match", "Onions, odd", "onion-yellow");
        assertThat(booked(Receipt.class)).filteredOn(r -> r.item().equals(java.util.Optional.of("onion-yellow"))).singleElement()
                .satisfies(r -> assertThat(r.mg()).isEqualTo(4_535_923));
        assertThat(good("receive", file("hollow-brook-2.csv", INVOICE.replace("08/26", "08/30"))).out()).doesNotContain("Not matched");
    }

    @Test
    void newerRegisterFile_correctsAndWithdraws_onlyWhenSaid() throws IOException {
        good("sold", file("register.csv", REGISTER));
        String newer = file("newer.csv", REGISTER.replace("12;143,40", "13;155,35").replace("16.08.2027;12;4011;Bananas;3;2,07\n", ""));
        assertThat(refused("sold", newer)).contains("--correct");
        assertThat(good("sold", newer, "--correct").out()).contains("1 the same, 1 corrected, 0 new, 1 not in this file and withdrawn");
        assertThat(booked(Sale.class).stream().mapToLong(Sale::cents).sum()).isEqualTo(18_715);
        assertThat(everything()).isEqualTo(5);
    }

    @Test
    void productionSheet_readBack_bookedOnce_emptyRowsSaid_correctedWithItsWaste() throws IOException {
        String path = file("sheet.csv", SHEET);
        String out = good("left", path).out();
        assertThat(out).contains("1 row has nothing written in").doesNotContain("is read as");
        assertThat(good("left", path).out()).contains("booked already");
        assertThat(booked(Left.class)).hasSize(2).first().satisfies(l -> {
            assertThat(l.week()).isEqualTo("2027-W33@1");
            assertThat(l.left()).hasValue(Quantity.of(7));
            assertThat(l.ranOut()).isEmpty();
        });
        assertThat(booked(Left.class).get(1).ranOut()).hasValue(java.time.LocalTime.of(13, 40));
        assertThat(booked(Waste.class)).singleElement().extracting(Waste::reason).isEqualTo(Waste.Reason.OVER_PRODUCTION);
        good("waste", "2.5 lb carrot trim on 2027-08-16");
        String newer = file("newer.csv", SHEET.replace("33,7,,7,", "35,5,,5,"));
        assertThat(refused("left", newer)).contains("--correct");
        assertThat(good("left", newer, "--correct").out()).contains("1 the same, 2 corrected, 0 new, 0 not in this file");
        assertThat(booked(Waste.class)).extracting(w -> w.portions().toString()).containsExactlyInAnyOrder("5", "0");
        assertThat(good("left", file("other.csv", SHEET.replace("hot-main-1,l", "hot-main-2,l").replace("hot-main-1,p", "hot-main-2,p"))).code())
                .as("another line's sheet of the same days").isZero();
    }

    @Test
    void sheetWithSlips_everyOneIsNamed_nothingIsBooked() throws IOException {
        String err = refused("left", file("sheet.csv", SHEET.replace("lentil-bake,Lentil bake,40,40", "lentl-bake,Lentil bake,40,forty")
                .replace("over-production", "bad").replace("13:40", "25:40")));
        assertThat(err.lines()).hasSize(4).allMatch(l -> l.startsWith("sheet.csv: line ")).anyMatch(l -> l.contains("perhaps lentil-bake"))
                .anyMatch(l -> l.contains("'bad' is no reason")).anyMatch(l -> l.contains("'25:40' is no time")).anyMatch(l -> l.contains("'forty'"));
    }

    @Test
    void sheetThatContradictsItself_isBookedAsWritten_andSaid() throws IOException {
        assertThat(good("left", file("sheet.csv", SHEET.replace("46,46,0,13:40", "46,46,3,1:40 pm"))).out())
                .contains("sold and left make 49, put out were 46").contains("ran out at 13:40, yet 3 left");
    }

    @Test
    void wasteLog_bookedOnce_unmatchedListed_typedLineInWeightOrPortions() throws IOException {
        String path = file("waste.csv", """
                date,what,portions,weight,reason,note
                2027-08-17,Lentil bake,4,,donated,to the pantry
                2027-08-17,carrot,,3.5 lb,trim,
                2027-08-17,lentl bakes,2,,mistake,
                """);
        assertThat(good("waste", path, "--dry-run").out()).contains("Nothing was booked.");
        assertThat(good("waste", path).out()).contains("lentl bakes: perhaps lentil-bake");
        assertThat(good("waste", path).out()).contains("booked already");
        good("waste", "6 portions lentil-bake spoiled on 2027-08-16");
        good("match", "lentl bakes", "lentil-bake");
        assertThat(booked(Waste.class)).hasSize(4).noneMatch(Waste::unmatched);
        assertThat(booked(Waste.class)).filteredOn(w -> w.item().isPresent()).singleElement().extracting(Waste::mg).isEqualTo(1_587_573L);
        assertThat(refused("waste", "6 portions lentul-bake spoiled")).contains("perhaps lentil-bake");
        assertThat(refused("waste", "some soup")).contains("such as");
        assertThat(refused("waste", file("bad.csv", "date,what,portions,reason\n2027-08-17,Lentil bake,,eaten\n"))).contains("how much?")
                .contains("'eaten' is no reason");
    }

    @Test
    void count_sheetOutAndBack_emptyIsNotZero_bookedOnce() throws IOException {
        Path sheet = folder.resolve("count.csv");
        good("count", "--sheet", sheet.toString());
        assertThat(refused("count", "--sheet", sheet.toString())).contains("is there already");
        String empty = Files.readString(sheet);
        assertThat(empty).startsWith("date,item,name,pack,pack_grams,pack_price,counted_packs,or_weight\r\n");
        Files.writeString(sheet, empty.replace("25 lb sack,11339.8,24.00,,", "25 lb sack,11339.8,24.00,2.5,")
                .replace("50 lb sack,22679.6,41.00,,", "50 lb sack,22679.6,41.00,,3 lb").replace("25 lb bag,11339.8,11.00,,", "25 lb bag,11339.8,11.00,0,"));
        assertThat(good("count", sheet.toString()).out()).contains("were not counted");
        assertThat(good("count", sheet.toString()).out()).contains("booked already");
        assertThat(booked(StockCount.class)).filteredOn(c -> c.item().equals(java.util.Optional.of("carrot"))).extracting(StockCount::cents)
                .containsExactly(6_000L, 246L);
        assertThat(booked(StockCount.class)).filteredOn(c -> c.item().equals(java.util.Optional.of("salt"))).singleElement()
                .extracting(StockCount::mg).isEqualTo(0L);
        Files.writeString(sheet, Files.readString(sheet).replace(",2.5,", ",3,"));
        assertThat(refused("count", sheet.toString())).contains("--correct");
        assertThat(good("count", sheet.toString(), "--correct").out()).contains("1 corrected");
    }
}
