package croftboard.book;

import java.util.Collection;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the known word that someone meant. One instance a reading: it remembers its answers and
 * stops looking after {@value #MOST} different words, so that a file full of nonsense costs no
 * time.
 */
public final class Nearest {
    private static final int MOST = 500;
    private static final int LONGEST = 60;
    private final Map<Collection<String>, Map<String, Optional<String>>> found = new IdentityHashMap<>();
    private int searches;

    /**
     * The nearest of {@code known} by edit distance, about a third of the word away at most; ties
     * go to the alphabet.
     */
    public Optional<String> of(String word, Collection<String> known) {
        if (word.isEmpty() || word.length() > LONGEST) {
            return Optional.empty();
        }
        Optional<String> before = found.getOrDefault(known, Map.of()).get(word);
        if (before != null) {
            return before;
        }
        if (searches >= MOST) {
            return Optional.empty();
        }
        searches++;
        Optional<String> answer = search(word, known);
        found.computeIfAbsent(known, k -> new HashMap<>()).put(word, answer);
        return answer;
    }

    private static Optional<String> search(String word, Collection<String> known) {
        String best = null;
        int bestDistance = Math.max(1, Math.min(5, (word.length() + 1) / 3)) + 1;
        for (String candidate : known) {
            boolean first = best == null || candidate.compareTo(best) < 0;
            int distance = distance(word, candidate, first ? bestDistance : bestDistance - 1);
            if (distance < bestDistance || distance == bestDistance && best != null && first) {
                bestDistance = distance;
                best = candidate;
            }
        }
        return best != null ? Optional.of(best) : sameWords(word, known);
    }

    /** {@code lentil-brown} for {@code brown-lentil}: the same words in another order. */
    private static Optional<String> sameWords(String word, Collection<String> known) {
        Set<String> parts = wordsOf(word);
        return known.stream().filter(k -> k.length() == word.length() && wordsOf(k).equals(parts)).sorted()
                .findFirst();
    }

    private static Set<String> wordsOf(String text) {
        return Set.copyOf(java.util.Arrays.asList(text.split("[-_ ]")));
    }

    /**
     * Edit distance with swaps of neighbours, or {@code limit + 1} as soon as it is above {@code
     * limit}.
     */
    static int distance(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) > limit) {
            return limit + 1;
        }
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = next(a, b, i, last, before);
            int least = row[0];
            for (int cell : row) {
                least = Math.min(least, cell);
            }
            if (least > limit) {
                return limit + 1;
            }
            before = last;
            last = row;
        }
        return Math.min(last[b.length()], limit + 1);
    }

    private static int[] next(String a, String b, int i, int[] last, int[] before) {
        int[] row = new int[b.length() + 1];
        row[0] = i;
        for (int j = 1; j <= b.length(); j++) {
            int cost = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
            row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + cost);
            if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2)
                    && a.charAt(i - 2) == b.charAt(j - 1)) {
                row[j] = Math.min(row[j], before[j - 2] + 1);
            }
        }
        return row;
    }
}
