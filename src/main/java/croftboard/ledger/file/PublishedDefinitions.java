package croftboard.ledger.file;

import croftboard.book.LocalRules.Definition;
import croftboard.measure.Ratio;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Definitions of "local" in law and practice, shipped as {@code definitions.csv}: columns id, say, states, miles, mixed, source;
 * no cell holds a comma, {@code {state}} stands for the store's own State.
 */
public final class PublishedDefinitions {
    private PublishedDefinitions() { }

    /** As they read for a store in {@code state}, in the file's order. */
    public static List<Definition> of(String state) {
        return lines().map(line -> line.replace("{state}", state).split(",", -1)).map(c -> new Definition(c[0],
                c[1], c[2].isEmpty() ? Set.of() : Set.of(c[2]),
                c[3].isEmpty() ? Optional.empty() : Optional.of(Integer.valueOf(c[3])),
                Ratio.decimal(c[4].replace("%", "")).over(100))).toList();
    }

    /** Where a definition comes from, when it is a published one as it reads for that State. */
    public static Optional<String> source(Definition definition, String state) {
        List<Definition> all = of(state);
        int at = all.indexOf(definition);
        return at < 0 ? Optional.empty() : lines().skip(at).findFirst().map(line -> line.split(",", -1)[5]);
    }

    private static java.util.stream.Stream<String> lines() {
        try (InputStream in = PublishedDefinitions.class.getResourceAsStream("/croftboard/ledger/definitions.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().skip(1).toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
