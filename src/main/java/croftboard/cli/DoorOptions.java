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
        AtTheDoor said = new AtTheDoor(read("--came", came, Quantity::parse, faults), read("--rejected", rejected, Quantity::parse, faults), instead,
                read("--price", price, p -> Cents.parse(p.startsWith("$") ? p : "$" + p).map(Cents::value), faults),
                read("--temp", temp, t -> Quantity.parse(t.replaceFirst("(?i)[ °]*F$", "")).map(q -> (int) (q.thousandths() / 100)), faults));
        if (!faults.isEmpty()) {
            throw new WrongUse(faults);
        }
        return said;
    }

    private static <T> Map<String, T> read(String option, Map<String, String> said, Function<String, Optional<T>> reader, List<String> faults) {
        Map<String, T> all = new LinkedHashMap<>();
        said.forEach((item, text) -> reader.apply(text.strip()).ifPresentOrElse(v -> all.put(item, v),
                () -> faults.add(option + " " + item + "=" + text + ": '" + text + "' is no number -> such as 2")));
        return all;
    }
}
