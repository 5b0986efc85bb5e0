package croftboard.cli;

import croftboard.ledger.AtTheDoor;
import croftboard.ledger.Quantity;
import croftboard.measure.Cents;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Option;

/** What was different at the door. */
final class DoorOptions {
    private static final int MOST_PACKS = 100_000;
    @Option(names = "--came", paramLabel = "ITEM=PACKS", description = "fewer or more packs than ordered")
    private Map<String, String> came = new LinkedHashMap<>();
    @Option(names = "--rejected", paramLabel = "ITEM=PACKS", description = "packs sent back")
    private Map<String, String> rejected = new LinkedHashMap<>();
    @Option(names = "--instead", paramLabel = "ITEM=OTHER", description = "that item came in its place")
    private Map<String, String> instead = new LinkedHashMap<>();
    @Option(names = "--price", paramLabel = "ITEM=$$3.20", description = "another price of a pack")
    private Map<String, String> price = new LinkedHashMap<>();
    @Option(names = "--temp", paramLabel = "ITEM=41", description = "temperature at the door in °F")
    private Map<String, String> temp = new LinkedHashMap<>();

    boolean nothingSaid() {
        return came.isEmpty() && rejected.isEmpty() && instead.isEmpty() && price.isEmpty() && temp.isEmpty();
    }

    /** @throws WrongUse with everything that is no number */
    AtTheDoor said() {
        List<String> faults = new ArrayList<>();
        AtTheDoor said = new AtTheDoor(read("--came", came, DoorOptions::packs, faults), read("--rejected", rejected, DoorOptions::packs, faults), instead,
                read("--price", price, p -> Cents.parse(p.startsWith("$") ? p : "$" + p).map(Cents::value).filter(c -> c >= 0), faults),
                read("--temp", temp, t -> Quantity.parse(t.replaceFirst("(?i)[ °]*F$", "")).map(q -> (int) (q.thousandths() / 100)), faults));
        if (!faults.isEmpty()) {
            throw new WrongUse(faults);
        }
        return said;
    }

    private static Optional<Quantity> packs(String text) {
        return Quantity.parse(text).filter(q -> q.signum() >= 0 && q.compareTo(Quantity.of(MOST_PACKS)) <= 0);
    }

    private static <T> Map<String, T> read(String option, Map<String, String> said, Function<String, Optional<T>> reader, List<String> faults) {
        Map<String, T> all = new LinkedHashMap<>();
        said.forEach((item, text) -> reader.apply(text.strip()).ifPresentOrElse(v -> all.put(item, v),
                () -> faults.add(option + " " + item + "=" + text + ": '" + text + "' is not what it can be -> a number, such as 2")));
        return all;
    }
}
