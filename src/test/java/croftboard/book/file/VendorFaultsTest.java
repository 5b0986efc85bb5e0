package croftboard.book.file;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class VendorFaultsTest {
    private static final String FARM = "farms/hollow-brook.yaml";
    private static final String DEPOT = "farms/mill-run-depot.yaml";
    private static final String LIST = "farms/lists/2027-W33.csv";
    private static final String ON_HAND = "kitchen/on-hand.csv";

    @ParameterizedTest
    @MethodSource
    void oneFault_toldOnceAtItsPlaceWithTheRemedy(FaultCase fault) {
        fault.holds();
    }

    static Stream<FaultCase> oneFault_toldOnceAtItsPlaceWithTheRemedy() {
        return Stream.of(
            creamery("hours that are none", "window: \"07:00..10:30\"", "window: «7 to 10",
                    "[7 to 10] are no hours of a day", "07:00..10:30"),
            creamery("hours that end first", "window: \"07:00..10:30\"", "window: «10:30..07:00",
                    "end before they begin", "earlier time first"),
            creamery("hours past midnight", "window: \"07:00..10:30\"", "window: 07:00..«24:30",
                    "[24:30] is no time of the day", "18:00"),
            creamery("no telephone number", "phone: 607-555-0151 ext 4", "phone: «ring the bell",
                    "[ring the bell] is no telephone number", "607-555-0142"),
            creamery("no e-mail address", "email: orders@stonefold.example", "email: «orders at stonefold",
                    "[orders at stonefold] is no e-mail address", "orders@farm.example"),
            creamery("address as one text", "address: [\"8 Fold Lane\", \"Ebbing, NY\"]", "address: «8 Fold Lane",
                    "a list belongs here", "[one, two]"),
            creamery("substitution without words", "{say: \"Cheddar, 10 lb block\"}", "«{at_most: 2}",
                    "[say] is missing in what is accepted instead", "add say"),
            creamery("substitution of no pack", "at_most: 2, price", "at_most: «0, price", "[0] is out of range",
                    "from 1 to"),
            creamery("substitution at no price", "price: $30.00}", "price: «30}", "[30]", "$"),
            farm("unknown key", "minimum: $60", "«minimun: $60",
                    "unknown key [minimun] in the vendor [hollow-brook]", "did you mean [minimum]?"),
            farm("key missing", "name: Hollow Brook Acre\nkind: grower", "«kind: grower",
                    "[name] is missing in the vendor [hollow-brook]", "add name"),
            farm("unknown kind", "kind: grower", "kind: «farmer", "[farmer] is not one of grower",
                    "grower, processor, distributor"),
            farm("state by name", "state: NY", "state: «New York", "[New York] is no state's code", "NY"),
            farm("no degrees", "latitude: 42.61", "latitude: «142.61", "[142.61] are no degrees",
                    "-90 to 90"),
            farm("cut-off on the delivery day", "{day: mon, cut_off: fri 12:00}",
                    "{day: mon, cut_off: «mon 06:00}", "the cut-off is not before the delivery",
                    "the day before"),
            farm("cut-off without a time", "cut_off: fri 12:00", "cut_off: «fri", "[fri] is no cut-off",
                    "like fri 12:00"),
            farm("cut-off at no time", "cut_off: fri 12:00", "cut_off: «fri 24:00",
                    "[24:00] is no time of the day", "18:00"),
            farm("unknown day", "{day: mon, cut_off: fri 12:00}", "{day: «mun, cut_off: fri 12:00}",
                    "[mun] is not one of mon", "did you mean [mon]?"),
            farm("two deliveries a day", "{day: thu, cut_off: tue 17:00}",
                    "{day: thu, cut_off: tue 17:00}\n  - {day: «thu, cut_off: wed 17:00}",
                    "a second delivery on the same day", "one delivery a day"),
            farm("span ends before it begins", "may_buy: 2026-01-01..2028-12-31",
                    "may_buy: «2028-01-01..2026-12-31", "ends before it begins", "earlier date first"),
            farm("span of one date", "may_buy: 2026-01-01..2028-12-31", "may_buy: «2026-01-01",
                    "[2026-01-01] is no span of dates", "2026-01-01..2028-12-31"),
            farm("no such date", "may_buy: 2026-01-01..2028-12-31", "may_buy: 2026-01-01..«2028-02-30",
                    "[2028-02-30] is a day that no calendar has", "2027-08-19"),
            farm("minimum without dollars", "minimum: $60", "minimum: «60", "[60] is no money", "$12"),
            farm("offer of an unknown item", "- item: carrot\n", "- item: «carot\n",
                    "no ingredient is called [carot]", "did you mean [carrot]?"),
            farm("offer of a recipe", "- item: thyme\n", "- item: «soffritto\n",
                    "[soffritto] is a recipe where an offer names an ingredient", "name an ingredient"),
            new FaultCase("offer of something free", DEPOT, "{item: salt, pack", "{item: «water, pack",
                    "[water] is free and never bought", "leave the offer out"),
            farm("zero pack", "holds: 25 lb", "holds: «0 lb", "an amount of zero", "above zero"),
            farm("pack by time", "holds: 25 lb", "holds: «25 days", "[days] is a time", "units here: g kg"),
            farm("count without a measure", "holds: 25 lb", "holds: «25 bunches",
                    "no measure says what one bunch of [carrot] weighs as purchased", "of: ap"),
            farm("volume with an EP measure only", "holds: 25 lb", "holds: «25 cups",
                    "no measure says what one cup of [carrot] weighs as purchased", "of: ap"),
            farm("break of one pack", "breaks: [{packs: 4,", "breaks: [{packs: «1,", "[1] is out of range",
                    "from 2 to"),
            farm("breaks descending", "breaks: [{packs: 4, price: $21.50}]",
                    "breaks: [{packs: 4, price: $21.50}, {packs: «3, price: $20.00}]", "do not ascend",
                    "smaller number first"),
            farm("break that is dearer", "breaks: [{packs: 4, price: $21.50}]",
                    "breaks: [{packs: 4, price: «$24.50}]", "is not below $24.00", "lowers the price"),
            farm("on no delivery day", "on: [mon, thu]", "on: [mon, «wed]",
                    "the vendor does not deliver on wed", "one of its delivery days"),
            farm("on no day", "on: [mon, thu]", "on: «[]", "an offer on no day", "leave on out"),
            farm("grown at an unknown vendor", "grown_at: here\n    weeks:\n      - {from: W30",
                    "grown_at: «stone-cremery\n    weeks:\n      - {from: W30",
                    "no vendor is called [stone-cremery]", "did you mean [stone-creamery]?"),
            farm("share of local above all", "    grown_at: here\n    weeks:\n      - {from: W30",
                    "    local_part: «120%\n    grown_at: here\n    weeks:\n      - {from: W30",
                    "[120%] is out of range", "0% to 100%"),
            farm("weeks overlap", "{from: W45, to: W12, packs: 3", "«{from: W44, to: W12, packs: 3",
                    "W44..W12 overlaps W22..W44 of the same offer", "each week stand once"),
            farm("weeks overlap over New Year", "{from: W45, to: W12, packs: 3",
                    "«{from: W45, to: W22, packs: 3", "W45..W22 overlaps W22..W44", "each week stand once"),
            farm("a range where one week belongs", "{from: W45, to: W12", "{from: «W45..W46, to: W12",
                    "[W45..W46] is more than one week", "like W26"),
            farm("no such week", "{from: W45, to: W12", "{from: «W00, to: W12",
                    "[W00] is no week of the year", "W01 to W53"),
            farm("no packs", "packs: 6, confidence: likely", "packs: «0, confidence: likely",
                    "[0] is out of range", "from 1 to"),
            farm("half a pack", "packs: 6, confidence: likely", "packs: «1/2, confidence: likely",
                    "[1/2] is no whole number", "whole number"),
            farm("unknown confidence", "confidence: likely", "confidence: «maybe",
                    "[maybe] is not one of sure, likely, hope", "write one of"),
            farm("in no week", "    weeks:\n      - {from: W30, to: W10, packs: 8, confidence: sure}\n",
                    "    weeks: «[]\n", "an offer in no week", "{from: ..."),
            farm("same pack in the same weeks", "  - item: onion-yellow\n",
                "  - {item: «carrot, pack: 25 lb sack, holds: 25 lb, price: $1.00, grown_at: here, "
                + "weeks: [{from: W40, to: W41, packs: 1, confidence: sure}]}\n  - item: onion-yellow\n",
                "[25 lb sack] of [carrot] is offered twice in the same weeks", "other weeks"),
            farm("commitment without its pack", "{item: carrot, pack: 25 lb sack",
                    "{item: carrot, pack: «25 lb sacks",
                    "does not offer [carrot] in the pack [25 lb sacks]",
                    "its packs are 25 lb sack"),
            farm("commitment without an offer", "{item: carrot, pack: 25 lb sack",
                    "{item: «garlic, pack: 25 lb sack", "[hollow-brook] has no offer of [garlic]",
                    "add the offer"),
            farm("commitment without packs", "from: W30, to: W38, packs: 1}", "from: W11, to: W38, packs: 1}",
                    "the offer of [carrot] has no packs in W13..W21", "shorten the commitment")
                    .expecting("- {item: «carrot, pack"),
            farm("commitments overlap", "{item: carrot, pack: 25 lb sack, from: W30, to: W38, packs: 1}",
                    "{item: carrot, pack: 25 lb sack, from: W30, to: W38, packs: 1}\n  - {item: "
                    + "«carrot, pack: "
            + "25 lb sack, from: W38, to: W40, packs: 2}",
                "W38..W40 overlaps W30..W38 of another commitment", "each week stand once"),
            farm("unknown priority", "priorities: [carrot, onion-yellow]",
                    "priorities: [carrot, «onion-yelow]", "no ingredient is called [onion-yelow]",
                    "[onion-yellow]"),
            list("wrong number of columns", "hollow-brook,carrot,25 lb sack,$23.00,5,mon,\n",
                    "«hollow-brook,carrot,25 lb sack,$23.00,5,mon\n",
                    "6 columns where the first line has 7",
                    "6 commas"),
            list("a comma too many", "hollow-brook,carrot,25 lb sack,$23.00,5,mon,\n",
                    "«hollow-brook,carrot,25 lb sack,$23.00,5,mon,dry, clean\n",
                    "8 columns where the first line has 7", "\"quotes\""),
            list("unknown column", "vendor,item", "«vender,item", "unknown column [vender]",
                    "did you mean [vendor]?"),
            list("column missing", "vendor,item,pack,price,packs,delivery,note",
                    "«vendor,item,pack,price,packs,delivery", "[note] is missing",
                    "vendor,item,pack,price,packs,delivery,note"),
            list("column twice", "vendor,item,pack", "vendor,item,«item", "[item] stands twice",
                    "keep one"),
            list("semicolons", "vendor,item,pack,price,packs,delivery,note",
                    "«vendor;item;pack;price;packs;delivery;note", "not separated by commas",
                    "CSV with commas"),
            list("open quote", "25 lb sack,$23.00,5,mon,", "«\"25 lb sack,$23.00,5,mon,",
                    "a quoted text that is not closed", "close it"),
            list("unknown vendor", "hollow-brook,carrot,25 lb sack,$23.00,5",
                    "«holow-brook,carrot,25 lb sack,$23.00,5", "no vendor is called [holow-brook]",
                    "did you mean [hollow-brook]?"),
            list("unknown item", "hollow-brook,carrot,25 lb sack,$23.00,5",
                    "hollow-brook,«carot,25 lb sack,$23.00,5", "no ingredient is called [carot]",
                    "did you mean [carrot]?"),
            list("item it does not offer", "hollow-brook,carrot,25 lb sack,$23.00,5",
                    "hollow-brook,«garlic,25 lb sack,$23.00,5", "[hollow-brook] has no offer of [garlic]",
                    "farms/hollow-brook.yaml"),
            list("unknown pack", "hollow-brook,carrot,25 lb sack,$23.00,5",
                    "hollow-brook,carrot,«20 lb sack,$23.00,5",
                    "does not offer [carrot] in the pack [20 lb sack]",
                    "its packs are 25 lb sack"),
            list("price without dollars", "25 lb sack,$23.00,5", "25 lb sack,«23.00,5",
                    "[23.00] is no money", "$3.40"),
            list("packs in words", "$23.00,5,mon", "$23.00,«five,mon", "[five] is no whole number",
                    "from 0 to"),
            list("no packs told", "$23.00,5,mon", "$23.00,«,mon", "nothing is written under [packs]",
                    "fill the cell"),
            list("no delivery day of the vendor", "$23.00,5,mon", "$23.00,5,«wed",
                    "[hollow-brook] does not deliver on 2027-08-18", "its delivery days are mon, thu"),
            list("no day", "$23.00,5,mon", "$23.00,5,«monday", "[monday] is no delivery", "a day like mon"),
            list("another week's date", "2027-08-19,after", "«2027-08-26,after",
                    "2027-08-26 is no delivery of 2027-W33", "2027-08-10 to 2027-08-21"),
            list("same delivery twice", "hollow-brook,carrot,25 lb sack,$23.00,4,2027-08-19",
                    "«hollow-brook,carrot,25 lb sack,$23.00,4,mon",
                    "the same pack for the same delivery stands twice", "keep one"),
            onHand("unknown item", "carrot,12 lb", "«carot,12 lb",
                    "no ingredient or recipe is called [carot]", "did you mean [carrot]?"),
            onHand("no amount", "carrot,12 lb", "carrot,«12", "[12] has no unit", "12 lb"),
            onHand("a count that nobody can weigh", "carrot,12 lb", "carrot,«12 cans",
                    "no measure says what one can of [carrot] weighs", "of: ap"),
            onHand("component by the piece", "soffritto,3 lb", "soffritto,«3 bags",
                    "[soffritto] cannot be counted by the bag", "write a weight"),
            onHand("no date", "carrot,12 lb,2027-08-12", "carrot,12 lb,«12 August",
                    "[12 August] is no date", "2027-08-19"),
            onHand("thawed but never frozen", "2027-08-11,2027-08-15,", ",«2027-08-15,",
                    "thawed, but never frozen", "the day it was frozen"),
            onHand("thawed before frozen", "2027-08-11,2027-08-15,", "2027-08-11,«2027-08-10,",
                    "thawed on 2027-08-10, before 2027-08-11", "check the dates"),
            onHand("opened before received", "2027-07-01,,2027-08-02", "2027-07-01,,«2027-06-02",
                    "opened on 2027-06-02, before 2027-07-01", "check the dates"));
    }

    private static FaultCase farm(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, FARM, before, after, wrong, right);
    }

    private static FaultCase creamery(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, "farms/stone-creamery.yaml", before, after, wrong, right);
    }

    private static FaultCase list(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, LIST, before, after, wrong, right);
    }

    private static FaultCase onHand(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, ON_HAND, before, after, wrong, right);
    }
}
