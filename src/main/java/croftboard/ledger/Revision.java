package croftboard.ledger;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.function.Function;

/**
 * A newer file of what is in the ledger already: what is the same stays, what differs becomes a correction that keeps the old
 * entry, what is new is added.
 *
 * @param entries to be booked
 * @param same as booked. @param changed corrections among {@code entries}. @param added new ones
 * @param missing in the ledger, but not in the newer file
 */
public record Revision<E extends Entry>(List<Entry> entries, List<E> same, List<E> changed, List<E> added, List<E> missing) {
    /**
     * @param key of what an entry is about; entries with the same key are taken in their order
     * @param keep the new entry with what only the old one knows (first the old, then the new)
     */
    public static <E extends Entry> Revision<E> of(List<E> booked, List<E> now, Function<E, Object> key, BinaryOperator<E> keep,
            String why) {
        Map<Object, List<E>> old = new LinkedHashMap<>();
        booked.forEach(e -> old.computeIfAbsent(key.apply(e), k -> new ArrayList<>()).add(e));
        Revision<E> revision = new Revision<>(new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (E e : now) {
            List<E> mine = old.getOrDefault(key.apply(e), List.of());
            if (mine.isEmpty()) {
                revision.added.add(e);
                revision.entries.add(e);
            } else {
                revision.compare(mine.remove(0), e, keep, why);
            }
        }
        old.values().forEach(revision.missing::addAll);
        return revision;
    }

    private void compare(E was, E is, BinaryOperator<E> keep, String why) {
        E whole = keep.apply(was, is);
        if (whole.stamped(was.stamp()).equals(was)) {
            same.add(was);
            return;
        }
        changed.add(was);
        entries.add(whole.stamped(Draft.correction(is.stamp().line(), was.stamp().id(), why)));
    }

    /** Takes what is missing out of the ledger as well. */
    public Revision<E> withdrawMissing(String why) {
        missing.forEach(e -> entries.add(new Withdrawal(Draft.correction(0, e.stamp().id(), why), e.date())));
        return this;
    }
}
