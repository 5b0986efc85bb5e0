package croftboard.cli;

import croftboard.book.file.BookReader;
import croftboard.plan.PlanAnswer;
import croftboard.plan.WeekPlan;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Runs commands on a copy of the small kitchen, with what a person would see. */
final class Desk {
    static final Clock FRIDAY = Clock.fixed(Instant.parse("2027-08-06T14:00:00Z"), ZoneOffset.UTC);
    final Path book;
    private final Tools tools;
    private final Setting setting;

    Desk(Path folder, PlanService planner) {
        this(folder, planner, (b, p, g, n) -> new PlanCheck.Verdict(true, "nothing was found wrong."), new Stop());
    }

    Desk(Path folder, PlanService planner, PlanCheck check, Stop stop) {
        book = folder.resolve("book");
        copy(SamplePlan.KITCHEN, book);
        tools = new Tools(BookReader::read, planner, check);
        setting = new Setting(FRIDAY, Map.of("COLUMNS", "90"), false, () -> stop);
    }

    private Desk(Path book, Tools tools, Setting setting) {
        this.book = book;
        this.tools = tools;
        this.setting = setting;
    }

    /** The same book at another time. */
    Desk at(Clock clock) {
        return new Desk(book, tools, new Setting(clock, Map.of("COLUMNS", "90"), false, Stop::new));
    }

    /** A planner whose plan is always this one. */
    static PlanService always(boolean complete) {
        return (book, now, request) -> {
            WeekPlan plan = complete ? SamplePlan.complete(book) : SamplePlan.incomplete(book);
            request.progress().doing("menus");
            request.progress().better(plan);
            return new PlanAnswer.Planned(plan, false);
        };
    }

    /** A stop signal that a test gives. */
    static final class Stop implements StopSignal {
        volatile boolean asked;
        final List<Integer> finished = new ArrayList<>();

        @Override
        public boolean asked() {
            return asked;
        }

        @Override
        public void finished(int code) {
            finished.add(code);
        }

        @Override
        public void close() {
            // nothing to let go
        }
    }

    /** What came of a command. */
    record Run(int code, String out, String err) { }

    /** Runs on the copy of the book. */
    Run run(String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("--book=" + book);
        return runAsTyped(all.toArray(String[]::new));
    }

    Run runAsTyped(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Main.commandLine(setting, tools, args);
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        int code = line.execute(args);
        return new Run(code, out.toString(), err.toString());
    }

    void write(String path, String text) {
        try {
            Files.writeString(book.resolve(path), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Files.copy(path, to.resolve(from.relativize(path).toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
