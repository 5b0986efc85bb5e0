package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.file.BookReading;
import croftboard.cli.screen.ChangesScreen;
import croftboard.cli.screen.ScaleScreen;
import croftboard.cli.screen.Shown;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.need.CheapestPrices;
import croftboard.need.ScaledRecipe;
import croftboard.paper.PaperContext;
import croftboard.paper.SheetKind;
import croftboard.paper.file.Packet;
import croftboard.paper.file.PaperFormat;
import croftboard.plan.Given;
import croftboard.plan.PlanRequest;
import croftboard.plan.WeekPlan;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.Consequences;
import croftboard.plan.change.Repair;
import croftboard.plan.file.PlanFile;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import picocli.CommandLine;

/** Touches what a normal run uses and keeps nothing, so that the program's classes can be archived for a fast start. */
final class WarmUp {
    private final Setting setting;
    private final Tools tools;

    WarmUp(Setting setting, Tools tools) {
        this.setting = setting;
        this.tools = tools;
    }

    /** Reads, plans a little, shows and scales; what goes wrong is no matter here. */
    void run(Path folder) {
        QuietLibraries.hush();
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        try {
            writeHelp();
            tools.books().read(folder).fold(read -> {
                use(read, nowhere);
                return true;
            }, faulty -> false);
        } catch (RuntimeException | LinkageError e) {
            nowhere.println(e);
        }
    }

    private void writeHelp() {
        Setting plain = new Setting(setting.clock(), Map.of(), false, setting.stop());
        CommandLine all = Main.commandLine(plain, tools);
        if (ReadyHelp.folder().isPresent()) {
            try {
                ReadyHelp.write(ReadyHelp.folder().get(), all);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private void use(BookReading.Read read, PrintWriter nowhere) {
        Book book = read.book();
        LocalDateTime now = LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone());
        IsoWeek week = Weeks.next(book, now);
        book.recipes().values().stream().filter(r -> r.worthOnly().isEmpty()).findFirst().ifPresent(r -> nowhere.println(
                PlanPrint.text(new ScaleScreen(book, ScaledRecipe.tree(book, r, Ratio.ONE),
                        new CheapestPrices(book, week), "once"), setting.page())));
        PlanRequest request = new PlanRequest(week, 1, Duration.ofSeconds(1), OptionalLong.of(1), new TreeMap<>(),
                Optional.empty(), Given.NOTHING, new Quiet(), () -> false);
        tools.planner().plan(book, now, request).fold(planned -> {
            Shown shown = new Shown(book, planned.plan(), Optional.empty(), false, now,
                    tools.check().check(book, planned.plan(), Given.NOTHING, Optional.of(now)).sentence());
            nowhere.println(PlanPrint.text(shown, Part.ALL.screens(shown), setting.page()));
            nowhere.println(PlanFile.write(planned.plan()));
            repair(book, planned.plan(), nowhere);
            print(book, planned.plan(), now);
            return true;
        }, refused -> false);
    }

    /** A repair under no changes, as of the week's Tuesday. */
    private void repair(Book book, WeekPlan plan, PrintWriter nowhere) {
        LocalDateTime tuesday = plan.week().monday().plusDays(1).atTime(7, 0);
        ChangedWeek week = ChangedWeek.of(book, plan, Given.NOTHING, List.of(), tuesday);
        if (week.faults().isEmpty()) {
            WeekPlan after = new Repair(book, plan, week, new WeekPlan.Revision(1, tuesday, List.of())).atOnce(1);
            Shown shown = new Shown(book, after, Optional.empty(), false, tuesday, tools.check().check(book, after, Given.NOTHING,
                    PlanCheck.asOf(after), Optional.of(plan)).sentence());
            nowhere.println(PlanPrint.text(new ChangesScreen(new ChangesScreen.Repaired(shown, plan, 1, List.of(),
                    Consequences.of(book, plan, after, List.of(), tuesday), Optional.empty(), Optional.empty())), setting.page()));
        }
    }

    /** Prints into a folder that is thrown away. */
    private static void print(Book book, WeekPlan plan, LocalDateTime now) {
        PaperContext context = new PaperContext(book, plan, 1, false, now, PaperContext.Filters.NONE, Set.of());
        try {
            Path folder = Files.createTempDirectory("croftboard");
            try {
                Packet.write(context, folder, SheetMakers.make(context, EnumSet.allOf(SheetKind.class)), Set.of(), PaperFormat.PDF);
            } finally {
                try (Stream<Path> all = Files.walk(folder)) {
                    all.sorted(Comparator.reverseOrder()).forEach(p -> p.toFile().delete());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Quiet implements PlanRequest.Progress {
        @Override
        public void doing(String what) {
            // nobody looks
        }

        @Override
        public void better(WeekPlan plan) {
            // nobody looks
        }
    }
}
