package croftboard.ledger;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which thing of the book other people's words mean. Only words that are the same, apart from case, marks and a plural s, are a
 * match; everything else is a candidate for a person to choose.
 */
public final class Matching {
    private static final int LEAST_ALIKE = 250;
    private final Map<String, String> meanings = new HashMap<>();
    private final Map<String, Set<String>> names = new TreeMap<>();
    private final Map<String, List<String>> asked = new HashMap<>();

    /** Another name of a thing. A name that two things have means neither. */
    public void name(String id, String words) {
        String plain = plain(words);
        if (!plain.isEmpty()) {
            names.computeIfAbsent(id, k -> new HashSet<>()).add(plain);
            meanings.merge(plain, id, (a, b) -> a.equals(b) ? a : "");
        }
    }

    /** What someone said that these words mean: it comes before every name. */
    public void learned(String words, String id) {
        meanings.put(plain(words), id);
    }

    /** The thing of that code or name. */
    public Optional<String> of(String words) {
        return Optional.ofNullable(meanings.get(plain(words))).filter(id -> !id.isEmpty());
    }

    /** At most three ids whose names are most like the words, the nearest first. */
    public List<String> nearest(String words) {
        return asked.computeIfAbsent(plain(words), this::candidates);
    }

    private List<String> candidates(String plain) {
        Set<String> mine = parts(plain);
        record Near(String id, int alike) { }
        List<Near> near = new ArrayList<>();
        names.forEach((id, all) -> {
            int best = all.stream().mapToInt(n -> alike(mine, parts(n))).max().orElse(0);
            if (best >= LEAST_ALIKE) {
                near.add(new Near(id, best));
            }
        });
        near.sort(Comparator.comparing(Near::alike).reversed().thenComparing(Near::id));
        return near.stream().limit(3).map(Near::id).toList();
    }

    /** Of a thousand: the share of three-letter pieces that both have. */
    private static int alike(Set<String> a, Set<String> b) {
        long both = a.stream().filter(b::contains).count();
        return a.isEmpty() || b.isEmpty() ? 0 : (int) (2000 * both / (a.size() + b.size()));
    }

    private static Set<String> parts(String plain) {
        Set<String> parts = new HashSet<>();
        for (String word : plain.split(" ")) {
            String padded = " " + word + " ";
            for (int i = 0; i + 3 <= padded.length(); i++) {
                parts.add(padded.substring(i, i + 3));
            }
        }
        return parts;
    }

    /** Lower case, letters and digits only, one blank between words, no plural s. */
    public static String plain(String words) {
        StringBuilder plain = new StringBuilder();
        for (String word : words.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
            String single = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss") ? word.substring(0, word.length() - 1) : word;
            plain.append(plain.length() > 0 && !single.isEmpty() ? " " : "").append(single);
        }
        return plain.toString();
    }
}
