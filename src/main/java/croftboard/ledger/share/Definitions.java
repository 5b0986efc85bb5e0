package croftboard.ledger.share;

import croftboard.book.LocalRules.Definition;
import croftboard.book.LocalRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * By which definitions a share can be told.
 *
 * @param inForce id of the kitchen's own; empty: the book has none
 * @param all the one in force first, then the book's others, then published ones that differ from all of them
 */
public record Definitions(Optional<String> inForce, List<Definition> all) {
    public Definitions {
        all = List.copyOf(all);
    }

    /** @param published as they read for the kitchen's State; the book's own of the same id or meaning stand in their place */
    public static Definitions of(Optional<LocalRules> rules, List<Definition> published) {
        List<Definition> all = new ArrayList<>();
        rules.ifPresent(r -> {
            all.add(r.definition());
            r.definitions().stream().filter(d -> !d.id().equals(r.inForce())).forEach(all::add);
        });
        published.stream().filter(p -> all.stream().noneMatch(d -> d.id().equals(p.id()) || sameMeaning(d, p))).toList()
                .forEach(all::add);
        return new Definitions(rules.map(LocalRules::inForce), all);
    }

    private static boolean sameMeaning(Definition one, Definition other) {
        return one.states().equals(other.states()) && one.miles().equals(other.miles()) && one.mixed().equals(other.mixed());
    }

    public Optional<Definition> named(String id) {
        return all.stream().filter(d -> d.id().equals(id)).findFirst();
    }

    /** The one in force; where the book has none, the first published one. */
    public Definition first() {
        return all.get(0);
    }
}
