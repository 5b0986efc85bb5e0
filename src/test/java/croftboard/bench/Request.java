package croftboard.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is to be measured.
 *
 * @param parts in the order asked for
 * @param seconds empty: each part's own
 * @param seeds empty: each part's own
 * @param quick fewer seeds and less time, for a look
 * @param print nothing is written
 */
record Request(Path folder, List<Part> parts, List<Integer> seconds, List<Integer> seeds, boolean quick, boolean print) {
    /** @param args folder first */
    static Request of(String[] args) {
        List<Part> parts = new ArrayList<>();
        List<Integer> seconds = List.of();
        List<Integer> seeds = List.of();
        boolean quick = false;
        boolean print = false;
        for (int a = 1; a < args.length; a++) {
            switch (args[a]) {
                case "--seconds" -> seconds = numbers(args[++a]);
                case "--seeds" -> seeds = numbers(args[++a]);
                case "--quick" -> quick = true;
                case "--print" -> print = true;
                case "all" -> parts.addAll(List.of(Part.values()));
                default -> parts.add(Part.named(args[a]));
            }
        }
        List<Part> wanted = parts.isEmpty() ? List.of(Part.values()) : List.copyOf(parts);
        return new Request(Path.of(args[0]).toAbsolutePath().normalize(), wanted, seconds, seeds, quick, print);
    }

    /** {@code 5}, {@code 5,20} or {@code 1-20}. */
    static List<Integer> numbers(String text) {
        List<Integer> all = new ArrayList<>();
        for (String part : text.split(",")) {
            int dash = part.indexOf('-');
            int from = Integer.parseInt(dash < 0 ? part : part.substring(0, dash));
            int to = Integer.parseInt(part.substring(dash + 1));
            IntStream.rangeClosed(from, to).forEach(all::add);
        }
        return List.copyOf(all);
    }

    List<Integer> secondsOr(String own, String quickly) {
        return !seconds.isEmpty() ? seconds : numbers(quick ? quickly : own);
    }

    List<Integer> seedsOr(String own, String quickly) {
        return !seeds.isEmpty() ? seeds : numbers(quick ? quickly : own);
    }

    /** As it is typed, to measure one part so again. */
    String command(Part part) {
        return "./bench " + part.word() + option("--seconds", seconds) + option("--seeds", seeds)
                + (quick ? " --quick" : "");
    }

    private static String option(String name, List<Integer> numbers) {
        return numbers.isEmpty() ? "" : " " + name + " "
                + String.join(",", numbers.stream().map(String::valueOf).toList());
    }
}
