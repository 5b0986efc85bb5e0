package croftboard.ledger.file;

import croftboard.ledger.Booking;
import croftboard.ledger.Cells;
import croftboard.ledger.Contents;
import croftboard.ledger.Entry;
import croftboard.ledger.Form;
import croftboard.ledger.Forms;
import croftboard.ledger.Stamp;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Rows of an export as bookings and entries; what does not fit together is a fault. */
final class ArchiveRows {
    private final Map<String, byte[]> files;
    private final List<String> faults;
    private final TreeMap<Long, Booking> bookings = new TreeMap<>();
    private final TreeMap<Long, Entry> entries = new TreeMap<>();

    ArchiveRows(Map<String, byte[]> files, List<String> faults) {
        this.files = files;
        this.faults = faults;
    }

    Contents contents() {
        readBookings();
        for (Form<?> form : Forms.ALL) {
            String name = form.table() + ".csv";
            for (Table.Row row : Archive.rows(name, files.get(name), Archive.head(form), faults)) {
                readEntry(name, form, row);
            }
        }
        checkCorrections();
        return new Contents(new ArrayList<>(bookings.values()), new ArrayList<>(entries.values()));
    }

    private void readBookings() {
        Set<String> seen = new HashSet<>();
        for (Table.Row row : Archive.rows(Archive.BOOKING, files.get(Archive.BOOKING), Archive.BOOKING_HEAD, faults)) {
            List<String> c = row.cells();
            try {
                Booking b = new Booking(Long.parseLong(c.get(0)), LocalDateTime.parse(c.get(1)), c.get(2), c.get(3), c.get(4), c.get(5));
                if (bookings.put(b.number(), b) != null || !seen.add(b.fingerprint())) {
                    fault(Archive.BOOKING, row, "booking " + b.number() + " stands here twice");
                }
            } catch (NumberFormatException | DateTimeException e) {
                fault(Archive.BOOKING, row, "a number and a time wanted, such as 12,2027-08-16T06:30");
            }
        }
    }

    private void readEntry(String name, Form<?> form, Table.Row row) {
        List<String> c = row.cells();
        try {
            Booking booking = bookings.get(Long.valueOf(c.get(1)));
            if (booking == null) {
                fault(name, row, "there is no booking " + c.get(1));
                return;
            }
            Optional<Stamp.Correction> corrects = c.get(4).isEmpty() ? Optional.empty()
                    : Optional.of(new Stamp.Correction(Long.parseLong(c.get(4)), c.get(5)));
            Stamp stamp = new Stamp(Long.parseLong(c.get(0)), booking, Integer.parseInt(c.get(2)), corrects);
            Entry entry = form.entry(stamp, LocalDate.parse(c.get(3)), c.subList(Archive.ENTRY_HEAD.size(), c.size()));
            if (entries.put(stamp.id(), entry) != null) {
                fault(name, row, "entry " + stamp.id() + " stands in the export twice");
            }
        } catch (Cells.Wrong e) {
            fault(name, row, e.getMessage());
        } catch (DateTimeException | IllegalArgumentException | ArithmeticException e) {
            fault(name, row, "cannot be understood -> take the untouched folder");
        }
    }

    private void checkCorrections() {
        Set<Long> corrected = new HashSet<>();
        for (Entry e : entries.values()) {
            e.stamp().corrects().ifPresent(c -> {
                if (c.entry() >= e.stamp().id() || !entries.containsKey(c.entry()) || !corrected.add(c.entry())) {
                    faults.add("entry " + e.stamp().id() + " corrects entry " + c.entry()
                            + ", which is not there before it or is corrected already");
                }
            });
        }
    }

    private void fault(String name, Table.Row row, String what) {
        faults.add(name + ": line " + row.line() + ": " + what);
    }
}
