package croftboard.ledger;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** A ledger in memory: what the rules of corrections mean, plainly. */
public final class EntryList implements Ledger {
    private static final Comparator<Entry> BY_DATE = Comparator.comparing(Entry::date).thenComparing(e -> e.stamp().id());
    private final List<Entry> all;

    public EntryList(List<? extends Entry> entries) {
        all = entries.stream().map(e -> (Entry) e).sorted(Comparator.comparing(e -> e.stamp().id())).toList();
    }

    @Override
    public <E extends Entry> List<E> entries(Class<E> kind, LocalDate from, LocalDate to) {
        Set<Long> gone = all.stream().flatMap(e -> e.stamp().corrects().stream()).map(Stamp.Correction::entry)
                .collect(Collectors.toSet());
        return all.stream().filter(kind::isInstance).filter(e -> !gone.contains(e.stamp().id()))
                .filter(e -> !e.date().isBefore(from) && !e.date().isAfter(to)).sorted(BY_DATE).map(kind::cast).toList();
    }

    @Override
    public Optional<Entry> entry(long id) {
        return all.stream().filter(e -> e.stamp().id() == id).findFirst();
    }

    @Override
    public List<Entry> history(long id) {
        Set<Long> family = new HashSet<>(Set.of(id));
        boolean grows = true;
        while (grows) {
            grows = false;
            for (Entry e : all) {
                if (e.stamp().corrects().isPresent()) {
                    long other = e.stamp().corrects().get().entry();
                    if (family.contains(other) || family.contains(e.stamp().id())) {
                        grows |= family.add(other) | family.add(e.stamp().id());
                    }
                }
            }
        }
        return all.stream().filter(e -> family.contains(e.stamp().id())).toList();
    }

    @Override
    public List<Entry> everything() {
        return all;
    }

    @Override
    public List<Booking> bookings() {
        TreeSet<Booking> bookings = new TreeSet<>(Comparator.comparing(Booking::number));
        all.forEach(e -> bookings.add(e.stamp().booking()));
        return List.copyOf(bookings);
    }
}
