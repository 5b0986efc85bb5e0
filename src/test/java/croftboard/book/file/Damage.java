package croftboard.book.file;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Damages the files of a kitchen at random, one to four times a case; the same seed gives the same
 * cases.
 */
final class Damage {
    private static final String[] NASTY = {"", "~", "null", "-1", "0", "1e999999999", "0x1F", "1_000",
            "999999999999999999999",
        "1/0", "1-1/0 cup", "0 lb", "-5 lb", "5 furlongs", "NaN", "Infinity", "true", "2027-02-30",
        "9999-12-31", "W00",
        "W54..W01", "W53", "100.000001%", "$-3", "$1e9", "$0.001", "&a x", "*a", "!!int 3", "!x y", "{",
        "}", "[", "]", "[[[[[[[[",
        "{a: {a: {a: {a: {a: {}", "---", "...", "%YAML 1.1", "%TAG ! x", "|", ">-", "? x",
        "- - - - - - - - - - - - - - - - - - -",
        "\u00bd", "\u2212 5 lb", "\ud83e\udd55", "\u200b", "\u0000", "\u0085", "\u2028", "\ufeff", "\t",
        "\r", "\"", "'", "\\",
        "\"\\U0011ffff\"", "\"\\ud800\"", "\"\\x0\"", ",", ", , ,", ": ", " #", "a".repeat(70),
        "a".repeat(20_000), "1".repeat(5_000),
        "(".repeat(500), "a-".repeat(500), "<<: *a", "=", "carrot", "lentil-bake", "house-marinara", "mon",
        "here", "all", "yes",
        "25 lb", "$5.00", "36%", "\"; drop\"", "\"\"\"\"", "1:30", "010", ".5", "5.", "+5"};
    private final SortedMap<String, byte[]> sound;
    private final List<String> paths;
    private final Random random = new Random();
    private long seed;

    record Case(String name, Map<String, byte[]> files) { }

    Damage(long firstSeed, SortedMap<String, byte[]> sound) {
        this.seed = firstSeed * 1_000_003;
        this.sound = sound;
        this.paths = List.copyOf(sound.keySet());
    }

    Case next() {
        return of(seed++);
    }

    Case of(long caseSeed) {
        random.setSeed(caseSeed * 0x9E3779B97F4A7C15L ^ caseSeed >>> 17);  // neighbours must not be alike
        SortedMap<String, byte[]> files = new TreeMap<>(sound);
        int times = 1 + random.nextInt(4);
        for (int i = 0; i < times; i++) {
            String path = paths.get(random.nextInt(paths.size()));
            byte[] content = files.get(path);
            if (content == null || random.nextInt(300) == 0) {
                files.remove(path);
            } else {
                files.put(path, damaged(content));
            }
        }
        return new Case("seed " + caseSeed, files);
    }

    private byte[] damaged(byte[] content) {
        return switch (random.nextInt(12)) {
            case 0, 1 -> flipped(content);
            case 2 -> cut(content);
            case 3, 4 -> lines(content);
            case 5, 6, 7 -> tokens(content);
            default -> values(content);
        };
    }

    private byte[] flipped(byte[] content) {
        byte[] out = content.clone();
        for (int i = random.nextInt(3); i >= 0 && out.length > 0; i--) {
            int at = random.nextInt(out.length);
            out[at] = random.nextBoolean() ? (byte) (out[at] ^ 1 << random.nextInt(8))
                    : (byte) random.nextInt(256);
        }
        return out;
    }

    private byte[] cut(byte[] content) {
        int from = random.nextInt(content.length + 1);
        int to = Math.min(content.length, from + random.nextInt(40));
        byte[] out = new byte[content.length - (to - from)];
        System.arraycopy(content, 0, out, 0, from);
        System.arraycopy(content, to, out, from, content.length - to);
        return out;
    }

    private byte[] lines(byte[] content) {
        List<String> lines = new ArrayList<>(List.of(text(content).split("\n", -1)));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(5)) {
            case 0 -> lines.add(at, lines.get(random.nextInt(lines.size())));
            case 1 -> lines.remove(at);
            case 2 -> lines.set(at, "  ".repeat(random.nextInt(4)) + lines.get(at).strip());
            case 3 -> lines.set(at, lines.set(random.nextInt(lines.size()), lines.get(at)));
            default -> lines.add(at, lines.get(at));
        }
        return bytes(String.join("\n", lines));
    }

    private byte[] tokens(byte[] content) {
        String[] tokens = text(content).split("(?<=[\\s,:{}\\[\\]\"])|(?=[\\s,:{}\\[\\]\"])");
        int at = random.nextInt(tokens.length);
        int other = random.nextInt(tokens.length);
        switch (random.nextInt(4)) {
            case 0 -> tokens[at] = tokens[other];
            case 1 -> tokens[at] = NASTY[random.nextInt(NASTY.length)];
            case 2 -> tokens[at] = "";
            default -> {
                String kept = tokens[at];
                tokens[at] = tokens[other];
                tokens[other] = kept;
            }
        }
        return bytes(String.join("", tokens));
    }

    /** Puts something nasty behind a colon, a dash or a comma: where values stand. */
    private byte[] values(byte[] content) {
        String text = text(content);
        int from = random.nextInt(text.length() + 1);
        int at = Math.max(text.indexOf(": ", from), text.indexOf("- ", from));
        if (at < 0) {
            return bytes(text + NASTY[random.nextInt(NASTY.length)]);
        }
        int end = at + 2;
        while (end < text.length() && ",}]\n".indexOf(text.charAt(end)) < 0) {
            end++;
        }
        return bytes(text.substring(0, at + 2) + NASTY[random.nextInt(NASTY.length)] + text.substring(end));
    }

    private static String text(byte[] content) {
        return new String(content, StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
