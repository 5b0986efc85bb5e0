package croftboard.ledger.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What was learned about other people's files, as two plain tables of the book: {@code ledger/columns.csv} (source, field, column)
 * and {@code ledger/names.csv} (source, words, means). A source is a vendor's id, {@code register}, {@code waste} or {@code count}.
 */
public final class Memory {
    public static final String COLUMNS = "ledger/columns.csv";
    public static final String NAMES = "ledger/names.csv";
    /** What words may mean beside ids of the book. */
    public static final String NOT_FOOD = croftboard.ledger.Meaning.NOT_FOOD;
    public static final String NOT_OURS = croftboard.ledger.Meaning.NOT_OURS;
    private final TreeMap<String, TreeMap<String, String>> columns = new TreeMap<>();
    private final TreeMap<String, TreeMap<String, String>> names = new TreeMap<>();

    /** @param faults gets a sentence for each line that is not understood */
    public static Memory read(byte[] columnsCsv, byte[] namesCsv, List<String> faults) {
        Memory memory = new Memory();
        fill(COLUMNS, columnsCsv, memory.columns, faults);
        fill(NAMES, namesCsv, memory.names, faults);
        return memory;
    }

    private static void fill(String name, byte[] csv, TreeMap<String, TreeMap<String, String>> into, List<String> faults) {
        if (csv.length == 0) {
            return;
        }
        Table.Reading reading = Tables.read(csv);
        if (reading instanceof Table.Reading.Refused refused) {
            faults.add(name + ": " + refused.why());
        } else if (reading instanceof Table.Reading.Read read && read.table().header().size() == 3) {
            read.table().rows().forEach(row -> into.computeIfAbsent(row.cells().get(0), k -> new TreeMap<>())
                    .put(CsvOut.read(row.cells().get(1)), CsvOut.read(row.cells().get(2))));
        } else {
            faults.add(name + ": three columns wanted -> " + (name.equals(COLUMNS) ? "source,field,column" : "source,words,means"));
        }
    }

    public Map<String, String> columns(String source) {
        return columns.getOrDefault(source, new TreeMap<>());
    }

    public Map<String, String> names(String source) {
        return names.getOrDefault(source, new TreeMap<>());
    }

    /** @return whether that is news */
    public boolean rememberColumns(String source, Map<String, String> chosen) {
        TreeMap<String, String> now = new TreeMap<>(chosen);
        return !now.equals(columns.put(source, now));
    }

    public void rememberName(String source, String words, String means) {
        names.computeIfAbsent(source, k -> new TreeMap<>()).put(words, means);
    }

    public String columnsCsv() {
        return csv("source,field,column", columns);
    }

    public String namesCsv() {
        return csv("source,words,means", names);
    }

    private static String csv(String header, TreeMap<String, TreeMap<String, String>> all) {
        List<String> lines = new ArrayList<>(List.of(header));
        all.forEach((source, map) -> map.forEach((key, value) -> lines.add(List.of(source, key, value).stream().map(CsvOut::cell)
                .collect(Collectors.joining(",")))));
        return String.join("\r\n", lines) + "\r\n";
    }
}
