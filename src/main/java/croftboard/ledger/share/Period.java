package croftboard.ledger.share;

import croftboard.ledger.Credit;
import croftboard.ledger.Entry;
import croftboard.ledger.Ledger;
import croftboard.ledger.Receipt;
import croftboard.ledger.Transfer;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a share is counted from, read once: all days from {@code from} to {@code to}, both included, by the day on which food
 * was received.
 *
 * @param credited receipts that the credits are about, by the id that the credit names, corrections applied
 */
public record Period(LocalDate from, LocalDate to, List<Receipt> receipts, List<Credit> credits, List<Transfer> transfers,
        Map<Long, Receipt> credited) {

    public static Period read(Ledger ledger, LocalDate from, LocalDate to) {
        List<Receipt> receipts = ledger.entries(Receipt.class, from, to);
        List<Credit> credits = ledger.entries(Credit.class, from, to);
        Map<Long, Receipt> inForce = new HashMap<>();
        receipts.forEach(r -> inForce.put(r.stamp().id(), r));
        Map<Long, Receipt> credited = new HashMap<>();
        for (Credit credit : credits) {
            credit.receipt().filter(id -> !credited.containsKey(id)).flatMap(id -> Optional.ofNullable(inForce.get(id))
                    .or(() -> newest(ledger, id))).ifPresent(r -> credited.put(credit.receipt().orElseThrow(), r));
        }
        return new Period(from, to, receipts, credits, ledger.entries(Transfer.class, from, to), Map.copyOf(credited));
    }

    private static Optional<Receipt> newest(Ledger ledger, long id) {
        List<Entry> history = ledger.history(id);
        for (int i = history.size() - 1; i >= 0; i--) {
            if (history.get(i) instanceof Receipt receipt) {
                return Optional.of(receipt);
            }
        }
        return Optional.empty();
    }
}
