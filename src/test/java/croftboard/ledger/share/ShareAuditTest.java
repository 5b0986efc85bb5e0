package croftboard.ledger.share;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.LocalRules.Definition;
import croftboard.book.LocalRules;
import croftboard.ledger.EntryList;
import croftboard.ledger.file.PublishedDefinitions;
import croftboard.measure.Ratio;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A second, slow counting from the ledger as text comes to the same cents. */
class ShareAuditTest {
    private static final int LEDGERS = 200;
    private static final LocalDate FROM = LocalDate.of(2027, 1, 20);
    private static final LocalDate TO = LocalDate.of(2027, 4, 9);

    private static List<Definition> definitions() {
        LocalRules own = new LocalRules("near", List.of(new Definition("near", "near", Set.of("NY"), Optional.of(150), Ratio.of(1, 2))));
        return Definitions.of(Optional.of(own), PublishedDefinitions.of("NY")).all();
    }

    @Test
    void twoHundredLedgers_countedTwice_areTheSameCents_underEachDefinition() {
        List<Definition> definitions = definitions();
        assertThat(definitions).hasSizeGreaterThanOrEqualTo(5);
        long[] seen = new long[7];
        for (int seed = 0; seed < LEDGERS; seed++) {
            EntryList ledger = new RandomEntries(seed).ledger(150);
            SlowShare slow = new SlowShare(ledger);
            Period period = Period.read(ledger, FROM, TO);
            for (Definition d : definitions) {
                Money m = Share.of(period, d, LedgerBuilder.STORE, Map.of()).all();
                long[] again = slow.cents(d, FROM, TO);
                assertThat(again).as("seed %d, %s", seed, d.id()).containsExactly(m.local(), m.notLocal(), m.unclassified(),
                        m.mixedIn(), m.mixedInPart(), m.mixedOut(), m.mixedOutPart());
                for (int i = 0; i < seen.length; i++) {
                    seen[i] += Math.abs(again[i]);
                }
            }
        }
        assertThat(seen).as("every kind of money occurs").doesNotContain(0L);
    }

    @Test
    void localNotLocalAndUnclassified_areAllFoodMoney_andSoAreTheGroups() {
        for (int seed = 0; seed < LEDGERS; seed++) {
            EntryList ledger = new RandomEntries(seed).ledger(150);
            Period period = Period.read(ledger, FROM, TO);
            long paid = period.receipts().stream().filter(r -> r.kind() == croftboard.ledger.Receipt.Kind.FOOD)
                    .mapToLong(croftboard.ledger.Receipt::cents).sum();
            for (Definition d : definitions()) {
                Share share = Share.of(period, d, LedgerBuilder.STORE, Map.of());
                assertThat(share.all().total()).isEqualTo(paid);
                assertThat(share.near().values().stream().mapToLong(c -> c).sum()).isEqualTo(paid);
                for (Map<String, Money> groups : List.of(share.by(l -> l.receipt().vendor()), share.by(Counted::month),
                        share.by(l -> l.receipt().item().orElse("")))) {
                    assertThat(groups.values().stream().reduce(Money.NONE, Money::plus)).isEqualTo(share.all());
                }
                long aside = share.asides().stream().filter(a -> a.kind().ordinal() <= Aside.Kind.DEPOSIT.ordinal())
                        .mapToLong(Aside::cents).sum();
                assertThat(paid + aside).isEqualTo(period.receipts().stream().mapToLong(r -> r.cents()).sum());
            }
        }
    }

    @Test
    void spreadOverDishes_isAllFoodMoney_toTheCent() {
        DishSpread.Uses uses = dish -> Map.of("item-" + dish.charAt(0), Ratio.of(100, 3), "item-3", Ratio.of(7));
        Map<String, croftboard.ledger.Quantity> sold = new java.util.TreeMap<>(Map.of("1a", croftboard.ledger.Quantity.of(12),
                "1b", croftboard.ledger.Quantity.of(7), "2", new croftboard.ledger.Quantity(1500)));
        Set<String> seen = new java.util.TreeSet<>();
        for (int seed = 0; seed < LEDGERS; seed++) {
            EntryList ledger = new RandomEntries(seed).ledger(150);
            Share share = Share.of(Period.read(ledger, FROM, TO), definitions().get(0), LedgerBuilder.STORE, Map.of());
            Map<String, Money> dishes = DishSpread.of(share, sold, uses);
            assertThat(dishes.values().stream().reduce(Money.NONE, Money::plus)).isEqualTo(share.all());
            seen.addAll(dishes.keySet());
        }
        assertThat(seen).containsExactlyInAnyOrder("1a", "1b", "2", DishSpread.NO_DISH);
    }
}
