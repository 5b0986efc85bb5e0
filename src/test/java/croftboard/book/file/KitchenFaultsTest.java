package croftboard.book.file;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KitchenFaultsTest {
    private static final String KITCHEN = "kitchen/kitchen.yaml";

    @ParameterizedTest
    @MethodSource
    void oneFault_toldOnceAtItsPlaceWithTheRemedy(FaultCase fault) {
        fault.holds();
    }

    static Stream<FaultCase> oneFault_toldOnceAtItsPlaceWithTheRemedy() {
        return Stream.of(
            kitchen("unknown key", "time_zone:", "«timezone: x\ntime_zone:",
                    "unknown key [timezone] in the kitchen", "did you mean [time_zone]?"),
            kitchen("key missing", "gap: 2 days\n", "", "[gap] is missing in the kitchen", "add gap")
                    .expecting("«name: Tinderbox"),
            kitchen("unknown time zone", "America/New_York", "«America/New_Yorck",
                    "[America/New_Yorck] is no time zone", "did you mean [America/New_York]?"),
            kitchen("unknown paper", "paper: letter", "paper: «legal", "[legal] is not one of", "a4"),
            kitchen("unknown day", "open: [mon, tue", "open: [mon, «tues", "[tues] is not one of mon, tue",
                    "did you mean [tue]?"),
            kitchen("day twice", "open: [mon, tue", "open: [mon, tue, «mon", "a day stands twice",
                    "keep one"),
            kitchen("never open", "open: [mon, tue, wed, thu, fri, sat]", "open: «[]", "never opens",
                    "name the open days"),
            kitchen("line twice", "{id: cold-salad-1, name: Cold salad,",
                    "{id: cold-salad-1, name: Cold salad, course: salad, run: 3 days}\n  - {id: "
                    + "«cold-salad-1, "
            + "name: Cold salad,", "a second line [cold-salad-1]", "a name of its own"),
            kitchen("run longer than the week", "run: 1 day", "run: «7 days",
                    "a run of 7 days in a week of 6 open days", "at most 6 days"),
            kitchen("standing dish unknown", "standing: house-hummus", "standing: «house-humus",
                    "no dish is called [house-humus]", "did you mean [house-hummus]?"),
            kitchen("standing component", "standing: house-hummus", "standing: «house-marinara",
                    "[house-marinara] is a component, which is not sold", "kind: dish"),
            kitchen("station twice", "{id: dock, name: Dock}",
                    "{id: dock, name: Dock}\n  - {id: «dock, name: Dock 2}", "a second station [dock]",
                    "a name of its own"),
            kitchen("overtime by the day", "price: $28 per hour", "price: «$28 per day",
                    "[$28 per day] is no price \"... per hour\"", "$5.00 per hour"),
            kitchen("overtime without hours", "limit: 2 h", "limit: «2 days",
                    "[2 days] is no time of work", "45 min"),
            kitchen("hours at an unknown station", "mon: {hot: 7 h}", "mon: {«hott: 7 h}",
                    "no station is called [hott]", "did you mean [hot]?"),
            kitchen("hours on no day", "hours: {sun: {hot: 4 h}", "hours: {«sunday: {hot: 4 h}",
                    "[sunday] is no day", "sun"),
            kitchen("more hours than a day", "tue: {hot: 5 h, cold: 2 h}", "tue: «{hot: 15 h, cold: 12 h}",
                    "more than 24 hours on one day", "check the hours of tue"),
            kitchen("hours as a number", "mon: {hot: 7 h}", "mon: {hot: «7}", "[7] has no unit", "45 min"),
            kitchen("unknown receiving station", "receiving: {station: dock", "receiving: {station: «doc",
                    "no station is called [doc]", "did you mean [dock]?"),
            kitchen("equipment without units",
                    "{id: mixer, name: Bowl mixer, unit: bowls, per_week: 20, held: no}",
                    "«{id: mixer, name: Bowl mixer, unit: bowls, held: no}",
                    "[mixer] needs its units a day or a week", "per_day: or per_week:"),
            kitchen("equipment by day and week", "per_week: 20", "per_week: 20, per_day: 4",
                    "[mixer] needs its units a day or a week, one of the two", "per_day")
                    .expecting("«{id: mixer"),
            kitchen("equipment in words", "per_day: 24", "per_day: «many", "[many] is no whole number",
                    "whole number"),
            kitchen("held as a boolean", "held: yes", "held: «True", "[True] is neither yes nor no",
                    "write yes or no"),
            kitchen("surplus worth of one storage missing",
                    "surplus_worth: {walk-in: 60%, dry: 95%, freezer: 90%}",
                    "surplus_worth: «{walk-in: 60%, dry: 95%}", "[freezer] is missing in surplus_worth",
                    "add freezer"),
            kitchen("waste by the kilogram", "$0.15 per lb", "«$0.15 per kg", "no price \"... per lb\"",
                    "per lb"),
            kitchen("waste without words", "$0.15 per lb", "«$0.15", "[$0.15] is no price \"... per lb\"",
                    "per lb"),
            kitchen("empty slot a day", "$150 each", "«$150 per day", "no price \"... each\"",
                    "$5.00 each"),
            kitchen("coverage twice", "{id: without-three,", "{id: «vegan-main,",
                    "a second promise [vegan-main]", "a name of its own"),
            kitchen("mark twice", "mark: W", "mark: «V", "a second promise with the mark V",
                    "a letter of its own"),
            kitchen("mark of two letters", "mark: W", "mark: «WW", "[WW] is not one letter", "like V"),
            kitchen("coverage of an unknown course", "course: main, diet: vegan, at_least",
                    "course: «mains, diet: vegan, at_least", "no course of any line is called [mains]",
                    "did you mean [main]?"),
            kitchen("coverage of nothing",
                    "{id: vegan-main, say: \"a vegan hot main\", mark: V, course: main, diet: vegan,",
                    "«{id: vegan-main, say: \"a vegan hot main\", mark: V, course: main,",
                    "asks for nothing",
                    "diet: vegan or without"),
            kitchen("unknown diet", "diet: vegan, at_least", "diet: «veggan, at_least",
                    "[veggan] is not one of vegan, vegetarian", "did you mean [vegan]?"),
            kitchen("without a strange word", "without: [wheat, milk, egg]",
                    "without: [wheat, milk, «eggs]", "[eggs] is none of the words", "did you mean [egg]?"),
            kitchen("unknown trait", "{of: cuisine,", "{of: «kitchen,",
                    "[kitchen] is not one of main, method, cuisine", "write one of"),
            kitchen("variety twice", "{of: method, within: day,", "«{of: main, within: day,",
                    "a second variety promise of the same kind", "keep one"),
            kitchen("local share by the percent", "$0.30 per dollar short", "«$0.30 per cent short",
                    "no price \"... per dollar short\"", "$5.00 per dollar short"),
            kitchen("food cost without sign", "at_most: 36%", "at_most: «36", "[36] is no share", "36%"),
            kitchen("unknown definition in force", "in_force: near-150", "in_force: «near-15",
                    "there is no definition [near-15]", "did you mean [near-150]?"),
            kitchen("definition of nothing",
                    "{id: in-state, say: \"grown in New York State\", states: [NY], mixed: 50%}",
                    "«{id: in-state, say: \"grown in New York State\", mixed: 50%}",
                    "without states or miles",
                    "states: [NY]"),
            kitchen("definition twice", "{id: in-state, say", "{id: near-150, say",
                    "a second definition [near-150]", "a name of its own")
                    .expecting("«{id: near-150, say: \"grown in New York State\""),
            kitchen("latitude missing", "{town: Larkmoor, state: NY, latitude: 42.55, longitude: -76.90}",
                    "«{town: Larkmoor, state: NY, longitude: -76.90}", "[latitude] is missing in the place",
                    "add latitude"),
            season("season without weeks", "seasons", "winter: W49..W12", "winter: «December",
                    "[December] is no week of the year", "W30..W38"),
            season("season called all", "seasons", "winter: W49", "«all: W49..W50\nwinter: W49",
                    "cannot be called all", "rename it"),
            season("targets overlap", "targets", "weeks: W45..W22", "weeks: «W44..W22",
                    "W44..W22 overlaps W23..W44 of another target", "each week stand once"),
            season("target without sign", "targets", "local: 45%", "local: «45", "[45] is no share", "36%"),
            season("factors overlap", "demand", "weeks: W30..W34", "weeks: «W08..W34",
                    "W08..W34 overlaps W01..W08 of another factor", "each week stand once"),
            season("factor negative", "demand", "times: 0.90", "times: «-0.90", "[-0.90] is negative",
                    "like 0.90"),
            season("demand of an unknown line", "demand", "  standing-dip: {",
                    "  «standing-dib: {mon: 1}\n  standing-dip: {", "no line is called [standing-dib]",
                    "did you mean [standing-dip]?"),
            season("demand of a line missing", "demand",
                    "  standing-dip: {cv: 0.40, mon: 9, tue: 9, wed: 9, thu: 10, fri: 14, sat: 13}\n", "",
                    "the line [standing-dip] has no demand", "seasons/demand.yaml")
                    .atKitchen("{id: «standing-dip"),
            season("an open day without demand", "demand", "standing-dip: {cv: 0.40, mon: 9, ",
                    "«standing-dip: {cv: 0.40, ", "[standing-dip] has no portions for mon",
                    "every open day"),
            season("portions in words", "demand", "mon: 38", "mon: «many", "[many] is no number",
                    "like 38"),
            season("closure of no date", "closures", "2027-11-25", "«25 November",
                    "[25 November] is no date", "2027-08-19"),
            season("closure twice", "closures", "2027-12-25", "«2027-11-25", "2027-11-25 is closed twice",
                    "keep one"),
            season("event with an unknown dish", "events", "dish: lentil-bake", "dish: «lentil-bakes",
                    "no dish is called [lentil-bakes]", "did you mean [lentil-bake]?"),
            season("event of an unknown course", "events", "course: salad, share", "course: «side, share",
                    "no course of any line is called [side]",
                    "the lines have the courses main, salad, dip"),
            season("course twice", "events", "{id: side,", "{id: «main,", "a second course [main]",
                    "a name of its own"),
            season("share of nothing", "events", "share: 30%", "share: «0%", "[0%] is out of range",
                    "above 0%"),
            season("share above all", "events", "share: 30%", "share: «130%", "[130%] is out of range",
                    "100%"),
            season("guarantee of nobody", "events", "guarantee: 60", "guarantee: «0",
                    "[0] is out of range", "from 1 to"),
            season("service at no time", "events", "\"18:00\"", "«\"6 pm\"",
                    "[6 pm] is no time of the day", "18:00"),
            season("event on no day", "events", "date: 2027-08-19", "date: «2027-13-19",
                    "[2027-13-19] is a day that no calendar has", "2027-08-19"),
            season("crop of an unknown item", "crops", "item: carrot,", "item: «carots,",
                    "no ingredient is called [carots]", "did you mean [carrot]?"),
            season("crop without a source", "crops",
                    "{crop: carrots, item: carrot, weeks: W26..W48, region: New York State, source: "
                    + "\"invented\"}",
                    "«{crop: carrots, item: carrot, weeks: W26..W48, region: New York State}",
                    "[source] is missing in the crop", "add source"));
    }

    private static FaultCase kitchen(String name, String before, String after, String wrong, String right) {
        return new FaultCase(name, KITCHEN, before, after, wrong, right);
    }

    private static FaultCase season(String name, String file, String before, String after, String wrong,
            String right) {
        return new FaultCase(name, "seasons/" + file + ".yaml", before, after, wrong, right);
    }
}
