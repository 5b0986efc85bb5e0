package croftboard.cli;

import croftboard.book.Book;
import croftboard.cli.screen.ChangesScreen;
import croftboard.cli.screen.Headline;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.Shown;
import croftboard.measure.IsoWeek;
import croftboard.plan.Given;
import croftboard.plan.WeekPlan;
import croftboard.plan.WeekRun;
import croftboard.plan.change.ChangedWeek;
import croftboard.plan.change.Consequences;
import croftboard.plan.change.Repair;
import croftboard.plan.file.OrderLife;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.WeekNotes;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * One repair from the facts said to the next version: the answer at once, then the settled one, both on the screen; only the
 * settled one is kept.
 */
final class ShortRun {
    private static final double SETTLING = 0.6;
    private final Setting setting;
    private final Tools tools;
    private final Path folder;
    private final PlanStore plans;
    private final PrintWriter out;
    private final PrintWriter err;
    private final long start = System.nanoTime();
    private boolean said;

    /** @param folder of the book */
    ShortRun(Setting setting, Tools tools, Path folder, PrintWriter out, PrintWriter err) {
        this.setting = setting;
        this.tools = tools;
        this.folder = folder;
        this.plans = new PlanStore(folder);
        this.out = out;
        this.err = err;
    }

    /**
     * What is asked.
     *
     * @param ref a version; without one the posted version is meant
     * @param file more sentences; null: none
     * @param now empty: by the clock
     * @param accept a substitute may change what must be said of a dish
     */
    record Asked(PlanRef ref, List<String> sentences, Path file, Optional<LocalDateTime> now, Duration time,
            OptionalLong steps, long seed, boolean dryRun, boolean accept, Format format) { }

    /** The version that people work from, or the one that is named. @throws WrongUse when there is none */
    static int version(PlanStore plans, PlanRef ref) {
        if (ref.version().isPresent()) {
            return ref.version().getAsInt();
        }
        IsoWeek week = ref.week();
        return plans.postedVersion(week).orElseThrow(() -> new WrongUse("nobody works from a plan of " + week + " yet -> "
                + (plans.current(week).isPresent() ? "post one first: croftboard post " + week + " (or name a version: " + week
                        + "@" + plans.current(week).getAsInt() + ")" : "croftboard plan " + week)));
    }

    /** @return exit code */
    int run(Book book, Asked asked) {
        PlanStore.Seen seen = plans.seen(asked.ref.week());
        int of = version(plans, asked.ref);
        WeekPlan base = Kept.plan(plans, new PlanRef(asked.ref.week(), OptionalInt.of(of)));
        LocalDateTime now = asked.now.orElseGet(() -> LocalDateTime.ofInstant(setting.clock().instant(),
                book.kitchen().zone()));
        checkMoment(base, now);
        Changes changes = Changes.of(book, base, asked.sentences, asked.file, now);
        Given given = plans.given(base.week(), book);
        if (!base.fingerprint().equals(book.fingerprint())) {
            err.println("croftboard: the book has changed since that plan was made: what is past is taken from the plan, all"
                    + " else from today's book");
        }
        base = Pins.on(base, new WeekNotes(folder).kept(base.week()), now);
        changes = changes.and(Pins.packs(base, new WeekNotes(folder).kept(base.week()), changes.all(), now));
        ChangedWeek week = ChangedWeek.of(book, base, given, changes.all(), now, asked.accept);
        Changes.refuse(week.faults());
        Repair repair = new Repair(book, base, week, new WeekPlan.Revision(of, now, changes.sentences()));
        return settle(book, asked, seen, new Told(book, base, of, given, changes, now), repair);
    }

    private record Told(Book book, WeekPlan base, int of, Given given, Changes changes, LocalDateTime now) { }

    static void checkMoment(WeekPlan base, LocalDateTime now) {
        if (now.toLocalDate().isAfter(base.week().monday().plusDays(6))) {
            throw new WrongUse(base.week() + " is over at " + now + " -> a week that is not over, or --now"
                    + " for planning as of an earlier moment");
        }
        base.inputs().revision().filter(r -> r.now().isAfter(now)).ifPresent(r -> {
            throw new WrongUse("that plan was changed at " + r.now() + ", which is after " + now + " -> a later --now");
        });
    }

    private int settle(Book book, Asked asked, PlanStore.Seen seen, Told told, Repair repair) {
        try (StopSignal stop = setting.stop().start()) {
            WeekPlan first = repair.atOnce(asked.seed);
            if (asked.format == Format.TEXT) {
                say(told, screen(told, first, Optional.empty(), Optional.empty()), "At once", false);
            }
            err.println(String.format(java.util.Locale.ROOT, "croftboard: first answer after %.1f s; looking for a better one"
                    + " (Ctrl-C keeps the best so far)", seconds()));
            err.flush();
            Repair.Settled settled = repair.settle(effort(asked, stop, SETTLING), p -> { });
            Optional<WeekPlan> anew = stop.asked() ? Optional.empty()
                    : Optional.of(repair.anew(settled.choice(), effort(asked, stop, 1 - SETTLING)));
            ChangesScreen screen = screen(told, settled.plan(), anew, settled.atMostBetter());
            OptionalInt version = asked.dryRun ? OptionalInt.empty() : keep(settled.plan(), seen);
            if (asked.format == Format.TEXT) {
                boolean stays = settled.plan().orders().equals(first.orders()) && settled.plan().menu().equals(first.menu());
                say(told, screen, stays ? "Settled: the answer above stays" : "Settled", stays);
            } else {
                out.print(PlanPrint.json(shown(told, settled.plan(), version), List.of(screen),
                        asked.steps.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(seconds())));
            }
            out.flush();
            tell(asked, told, version, settled.plan());
            int code = !asked.dryRun && version.isEmpty() ? Exit.WRONG_USE
                    : settled.plan().complete() ? Exit.DONE : Exit.INCOMPLETE;
            stop.finished(code);
            return code;
        }
    }

    private WeekRun.Effort effort(Asked asked, StopSignal stop, double share) {
        return new WeekRun.Effort(asked.seed, Duration.ofMillis(Math.max(500, (long) (asked.time.toMillis() * share))),
                asked.steps, stop::asked);
    }

    private double seconds() {
        return (System.nanoTime() - start) / 1e9;
    }

    private ChangesScreen screen(Told t, WeekPlan plan, Optional<WeekPlan> anew, Optional<Long> atMostBetter) {
        return new ChangesScreen(new ChangesScreen.Repaired(shown(t, plan, OptionalInt.empty()), t.base, t.of,
                t.changes.sentences(), Consequences.of(t.book, t.base, plan, t.changes.all(), t.now), anew, atMostBetter));
    }

    private Shown shown(Told t, WeekPlan plan, OptionalInt version) {
        String verdict = tools.check().check(t.book, plan, t.given, PlanCheck.asOf(plan), Optional.of(t.base)).sentence();
        return new Shown(t.book, plan, version.isPresent() ? Optional.of(version.getAsInt()) : Optional.empty(), false, t.now,
                verdict);
    }

    private void say(Told t, ChangesScreen screen, String heading, boolean stays) {
        Page page = setting.page();
        boolean posted = !said && plans.postedVersion(t.base.week()).stream().anyMatch(v -> v == t.of);
        said = true;
        Headline.notSent(new Shown(t.book, t.base, Optional.of(t.of), posted, t.now, "", posted ? new WeekNotes(folder)
                .orders(t.base.week()).doubts(t.base, true, t.now) : OrderLife.Doubts.NONE), page);
        page.heading(heading);
        if (stays) {
            screen.printMoney(page);
        } else {
            screen.print(page);
        }
        out.print(page);
        out.println();
        out.flush();
    }

    /** @return empty: somebody else was faster */
    private OptionalInt keep(WeekPlan plan, PlanStore.Seen seen) {
        return plans.writeRevision(plan, seen);
    }

    private void tell(Asked asked, Told t, OptionalInt version, WeekPlan plan) {
        String week = t.base.week().toString();
        if (asked.dryRun) {
            err.println("croftboard: --dry-run: nothing was written");
        } else if (version.isEmpty()) {
            err.println("croftboard: nothing was written: another version of " + week + " was written or posted meanwhile"
                    + " -> look at it (croftboard show " + week + "), then say the change again");
        } else {
            err.println("croftboard: kept as " + week + "@" + version.getAsInt() + ", a draft; people still work from version "
                    + t.of + (plan.complete() ? " -> croftboard post " + week + "@" + version.getAsInt()
                    + ", then croftboard paper " + week + " says which pages to take down" : ""));
        }
        err.flush();
    }
}
