package croftboard.bench;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.plan.Engine;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * {@code SizeRun SLOTS SEED SECONDS}, in a process of its own: prints slots, seconds to the first complete plan, seconds to
 * a plan within 2 % of what is proved in the end (-1: never), the gap in the end, Java memory and memory of the process in
 * MB, value and whether complete.
 */
public final class SizeRun {
    private static final double NEAR = .02;

    private SizeRun() { }

    static WeekProblem problem(int slots, long seed) {
        return switch (slots) {
            case 30 -> RandomWeek.small(seed);
            case 54 -> RandomWeek.week(seed);
            default -> RandomWeek.weeks(seed, slots / 54);
        };
    }

    public static void main(String[] args) throws IOException {
        WeekProblem problem = problem(Integer.parseInt(args[0]), Long.parseLong(args[1]));
        Duration time = Duration.ofSeconds(Long.parseLong(args[2]));
        Engine.Answer answer = problem.slots().size() > 100 ? Engine.month(problem, time, 1) : Engine.week(problem, time, 1);
        double first = answer.moments().isEmpty() ? -1 : answer.moments().get(0).seconds();
        double near = answer.moments().stream().filter(m -> answer.bestAtAll()
                .filter(b -> b - m.valueCents() <= NEAR * m.valueCents()).isPresent())
                .mapToDouble(Engine.Moment::seconds).findFirst().orElse(-1);
        System.out.println("size " + problem.slots().size() + " " + first + " " + near + " " + answer.gap() + " "
                + heapMegabytes() + " " + processMegabytes() + " " + answer.valueCents() + " " + answer.complete());
    }

    /** At most in use, garbage included. */
    private static double heapMegabytes() {
        return ManagementFactory.getMemoryPoolMXBeans().stream().filter(p -> p.getType() == MemoryType.HEAP)
                .mapToDouble(p -> p.getPeakUsage().getUsed() / 1e6).sum();
    }

    private static double processMegabytes() throws IOException {
        Path status = Path.of("/proc/self/status");
        return !Files.exists(status) ? -1 : Files.readAllLines(status).stream().filter(l -> l.startsWith("VmHWM"))
                .mapToDouble(l -> Double.parseDouble(l.replaceAll("\\D", "")) / 1024).findFirst().orElse(-1);
    }
}
