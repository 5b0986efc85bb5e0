package croftboard.book.file;

import croftboard.book.Nearest;
import croftboard.book.Fault;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What one reading gathers on its way: faults, warnings, where each record was written, and which
 * words point elsewhere.
 */
final class Notebook {
    private static final int SHOWN = 60;
    private static final Comparator<Fault> IN_ORDER = Comparator.comparing(Fault::file)
            .thenComparingInt(Fault::line)
            .thenComparingInt(Fault::column).thenComparing(Fault::wrong).thenComparing(Fault::right);
    private final List<Fault> faults = new ArrayList<>();
    private final List<Warning> warnings = new ArrayList<>();
    private final List<Pointer> pointers = new ArrayList<>();
    private final List<StepReader.EquipmentUse> uses = new ArrayList<>();
    private final Map<Object, Map<String, Spot>> parts = new IdentityHashMap<>();
    private final Map<Object, Spot> spots = new IdentityHashMap<>();
    private final Set<Object> unsound = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Set<FileKind> unread = EnumSet.noneOf(FileKind.class);
    private final Nearest nearest = new Nearest();

    void fault(Spot spot, String wrong, String right) {
        faults.add(new Fault(spot.file(), spot.line(), spot.column(), wrong, right));
    }

    void warn(Spot spot, String says) {
        warnings.add(new Warning(spot.file(), spot.line(), spot.column(), says));
    }

    /** Notes a use of equipment, to be held against the kitchen's. */
    void uses(StepReader.EquipmentUse use) {
        uses.add(use);
    }

    List<StepReader.EquipmentUse> uses() {
        return uses;
    }

    /** Notes where one part of a record was written. */
    void part(Object record, String part, Spot spot) {
        parts.computeIfAbsent(record, r -> new HashMap<>()).put(part, spot);
    }

    /** Where that part of the record was written, or the record itself when the part was not noted. */
    Spot spotOf(Object record, String part) {
        Spot spot = parts.getOrDefault(record, Map.of()).get(part);
        return spot == null ? spotOf(record) : spot;
    }

    /** Notes a word that must name something; looked up when all files are read. */
    void points(Pointer.To to, String word, Spot spot, String from) {
        pointers.add(new Pointer(to, word, spot, from));
    }

    /** How many faults there are by now: the measure before a record is read, for {@link #wrote}. */
    int faultCount() {
        return faults.size();
    }

    /**
     * Notes where a record was written, and whether it was read without a fault since {@code
     * faultsBefore}.
     */
    <T> T wrote(T record, Spot spot, int faultsBefore) {
        spots.put(record, spot);
        if (faults.size() > faultsBefore) {
            unsound.add(record);
        }
        return record;
    }

    /** Where that very record was written. */
    Spot spotOf(Object record) {
        Spot spot = spots.get(record);
        return spot == null ? Spot.whole("") : spot;
    }

    /** Whether the record was read without any fault: only then do checks across files trust its values. */
    boolean isSound(Object record) {
        return !unsound.contains(record);
    }

    /** A file of that kind did not parse: what it defines is not known. */
    void unread(FileKind kind) {
        unread.add(kind);
    }

    boolean isUnread(FileKind kind) {
        return unread.contains(kind);
    }

    /** {@code did you mean [x]?} with the nearest known word, or the other remedy when none is near. */
    String meant(String word, Collection<String> known, String otherwise) {
        return nearest.of(word, known).map(m -> "did you mean [" + m + "]?").orElse(otherwise);
    }

    Nearest nearest() {
        return nearest;
    }

    List<Pointer> pointers() {
        return pointers;
    }

    List<Fault> faultsInOrder() {
        return faults.stream().distinct().sorted(IN_ORDER).toList();
    }

    List<Warning> warningsInOrder() {
        return warnings.stream().distinct().sorted(Comparator.comparing(Warning::file)
                .thenComparingInt(Warning::line).thenComparingInt(Warning::column)
                .thenComparing(Warning::says)).toList();
    }

    /** A word of the book inside a message: in brackets, short, on one line. */
    static String show(String text) {
        StringBuilder out = new StringBuilder("[");
        int at = 0;
        for (int shown = 0; at < text.length() && shown < SHOWN; shown++) {
            int c = text.codePointAt(at);
            at += Character.charCount(c);
            boolean plain = !Character.isISOControl(c) && Character.isDefined(c) && !isSurrogate(c);
            out.appendCodePoint(plain ? c : ' ');
        }
        return out.append(at < text.length() ? "...]" : "]").toString();
    }

    private static boolean isSurrogate(int codePoint) {
        return codePoint >= 0xD800 && codePoint <= 0xDFFF;
    }
}
