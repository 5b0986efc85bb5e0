package croftboard.bench;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.JointAlone;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** One integer solver with the whole of a random week, in a process of its own that is ended when its time is over. */
enum ExactAlone {
    SCIP("SCIP", "SCIP"), CP_SAT("SAT", "CP-SAT"), HIGHS("HIGHS", "HiGHS");

    /** Beyond its time, for loading and for writing its answer down. */
    private static final int GRACE_SECONDS = 30;
    private final String solver;
    private final String title;

    /** @param solver as the wrapper calls it */
    ExactAlone(String solver, String title) {
        this.solver = solver;
        this.title = title;
    }

    /**
     * @param plan judged as the program judges its own; empty: no whole plan, or one that breaks a must
     * @param steps as the solver told of them
     */
    record Answer(Optional<Judged> plan, List<SolverLog.Step> steps) { }

    String title() {
        return title;
    }

    Answer solve(int seed, int seconds) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("croftboard-bench");
        try {
            Path file = folder.resolve("columns.txt");
            Path log = folder.resolve("log.txt");
            run(List.of("croftboard.sourcing.JointAlone", solver, Integer.toString(seed),
                    Long.toString(1000L * seconds), file.toString()), log, seconds + GRACE_SECONDS);
            WeekProblem problem = RandomWeek.week(seed);
            Optional<Judged> plan = JointAlone.read(problem, file)
                    .map(p -> Judged.of(problem, p.choice(), p.packs())).filter(Judged::complete);
            Answer answer = new Answer(plan, SolverLog.steps(Files.readAllLines(log)));
            Bench.tell("week " + seed + ", " + title() + ": "
                    + plan.map(p -> Figures.dollars(p.cents())).orElse("no answer"));
            return answer;
        } finally {
            for (String name : List.of("columns.txt", "log.txt")) {
                Files.deleteIfExists(folder.resolve(name));
            }
            Files.deleteIfExists(folder);
        }
    }

    /** Runs a class of the tests. @return whether it ended by itself */
    static boolean run(List<String> words, Path output, int seconds) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx1g", "-XX:+UseSerialGC", "-cp",
                System.getProperty("java.class.path")));
        command.addAll(words);
        Process process = new ProcessBuilder(command).redirectOutput(output.toFile())
                .redirectError(ProcessBuilder.Redirect.DISCARD).start();
        Thread end = new Thread(process::destroyForcibly);
        Runtime.getRuntime().addShutdownHook(end);
        boolean ended = process.waitFor(seconds, TimeUnit.SECONDS);
        process.destroyForcibly().waitFor();
        Runtime.getRuntime().removeShutdownHook(end);
        return ended;
    }
}
