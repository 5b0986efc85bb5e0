package croftboard.bench;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.Engine;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Stream;

/** Weeks planned in a process of its own: {@code SeasonRun WEEKS SEED SECONDS}. */
public final class SeasonRun {
    private SeasonRun() { }

    public static void main(String[] args) {
        int weeks = Integer.parseInt(args[0]);
        WeekProblem problem = RandomWeek.weeks(Long.parseLong(args[1]), weeks);
        long start = System.nanoTime();
        Engine.Answer answer = Engine.weeks(problem, weeks, Duration.ofSeconds(Long.parseLong(args[2])), 1);
        double clock = (System.nanoTime() - start) / 1e9;
        double processors = ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
                .getProcessCpuTime() / 1e9;
        System.out.printf(java.util.Locale.ROOT, "weeks %d %d %.1f %.1f %.0f %b%n", weeks, answer.valueCents(), clock, processors,
                held(), answer.complete());
    }

    /** Megabytes, native parts included; 0 where the system does not tell. */
    private static double held() {
        try (Stream<String> lines = Files.lines(Path.of("/proc/self/status"))) {
            return lines.filter(l -> l.startsWith("VmHWM")).mapToDouble(l -> Double.parseDouble(l.replaceAll("\\D", "")) / 1024)
                    .findFirst().orElse(0);
        } catch (IOException e) {
            return 0;
        }
    }
}
