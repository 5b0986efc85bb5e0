package croftboard.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What the figures were measured on, in words. */
final class Machine {
    private Machine() { }

    /** @param load as it was before the measuring */
    static String line(String command, String load) {
        return "`" + command + "`, " + LocalDate.now() + ", " + processor() + ", "
                + Runtime.getRuntime().availableProcessors() + " cores, " + memory() + ", "
                + System.getProperty("os.name") + ", Java " + Runtime.version().feature()
                + "; load average before: " + load + ".";
    }

    /** Of the last minute, other work on the machine included. */
    static String load() {
        double load = ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
        return load < 0 ? "not known" : String.format(Locale.ROOT, "%.1f", load);
    }

    private static String processor() {
        return entry("/proc/cpuinfo", "model name").orElse(System.getProperty("os.arch"));
    }

    private static String memory() {
        return entry("/proc/meminfo", "MemTotal").map(m -> Long.parseLong(m.replaceAll("\\D", "")) / 1048576.0)
                .map(gigabytes -> Math.round(gigabytes) + " GB memory").orElse("memory not known");
    }

    private static Optional<String> entry(String file, String key) {
        try (Stream<String> lines = Files.lines(Path.of(file))) {
            return lines.filter(l -> l.startsWith(key)).findFirst()
                    .map(l -> l.substring(l.indexOf(':') + 1).strip());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
