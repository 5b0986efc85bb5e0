package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Recipe;
import croftboard.cli.screen.Page;
import croftboard.cli.screen.TakenScreen;
import croftboard.ledger.Receipt;
import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.PlanStore;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;

/** Which dishes, cards and labels rest on an item that came as something else: what is on sale first. */
final class RestingOn {
    private final Book book;
    private final PlanStore plans;
    private final LocalDate today;

    RestingOn(Book book, PlanStore plans, LocalDate today) {
        this.book = book;
        this.plans = plans;
        this.today = today;
    }

    /** What was booked with its warnings: before a text; beside a table, where a program reads it, for the person. */
    static void print(TakenScreen screen, List<String> warnings, Format format, Setting setting, CommandSpec spec) {
        Page page = setting.page();
        if (format == Format.TEXT) {
            print(page, warnings);
            page.gap();
        } else {
            Page beside = setting.page();
            print(beside, warnings);
            spec.commandLine().getErr().print(beside);
            spec.commandLine().getErr().flush();
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(ScreenPrint.as(format, screen, page));
        out.flush();
    }

    static void print(Page page, List<String> warnings) {
        warnings.forEach(w -> page.item(w.startsWith("- ") ? "- " : "", w.startsWith("- ") ? w.substring(2) : w));
    }

    /** Sentences for one receipt whose label nobody has read. */
    List<String> warnings(Receipt receipt) {
        String was = receipt.insteadOf().orElseThrow();
        String came = receipt.item().map(this::name).orElse(receipt.words());
        List<String> all = new ArrayList<>();
        all.add("ALLERGENS UNKNOWN: " + came + " came from " + Optional.ofNullable(book.vendors().get(receipt.vendor())).map(v -> v.name())
                .orElse(receipt.vendor()) + " on " + receipt.date() + " instead of " + name(was) + " (entry " + receipt.stamp().id()
                + "). Until its label is read, no statement of these holds:");
        Set<String> names = new LinkedHashSet<>();
        boolean planned = false;
        for (int w = 0; w < 2; w++) {
            IsoWeek week = IsoWeek.of(receipt.date()).plusWeeks(w);
            Optional<WeekPlan> plan = plans.posted(week).or(() -> plans.current(week).isPresent()
                    ? plans.read(week).fold(r -> Optional.of(r.plan()), a -> Optional.empty(), r -> Optional.empty()) : Optional.empty());
            planned |= plan.isPresent();
            plan.ifPresent(p -> served(p, was, receipt.date()).forEach(names::add));
        }
        if (!planned) {
            List<String> users = book.recipes().values().stream().filter(r -> r.sale().isPresent() && uses(r.id(), was)).map(Recipe::name).toList();
            names.add("- no plan says what is on sale. " + users.size() + " dishes of the book use " + name(was) + ", with their case cards and"
                    + " labels: " + String.join("; ", users));
        }
        all.addAll(names.isEmpty() ? List.of("- no dish of the plan from that day on uses " + name(was) + ".") : names);
        all.add("Read the label, then: croftboard receive \"label " + receipt.stamp().id() + " contains ALLERGENS\"");
        return all;
    }

    private List<String> served(WeekPlan plan, String was, LocalDate from) {
        record Hit(LocalDate first, boolean now, boolean over, String say) { }
        List<Hit> hits = new ArrayList<>();
        for (WeekPlan.Served served : plan.menu()) {
            List<LocalDate> days = served.days().stream().filter(d -> !d.isBefore(from)).toList();
            if (served.recipe().isPresent() && !days.isEmpty() && (uses(served.recipe().get(), was)
                    || plan.swaps().getOrDefault(served.recipe().get(), new java.util.TreeMap<>()).containsValue(was))) {
                boolean now = days.contains(today);
                boolean over = days.get(days.size() - 1).isBefore(today);
                hits.add(new Hit(days.get(0), now, over, (now ? "- PULL NOW: " : over ? "- sold already: " : "- ") + name(served.recipe().get()) + ", " + served.line() + ", "
                        + days.get(0) + (days.size() > 1 ? " to " + days.get(days.size() - 1) : "") + ": its case card"
                        + (book.kitchen().paperwork().packed().contains(served.line()) ? " and its label" : "")));
            }
        }
        hits.sort(Comparator.comparing((Hit h) -> !h.now).thenComparing(Hit::over).thenComparing(Hit::first).thenComparing(Hit::say));
        return hits.stream().map(Hit::say).toList();
    }

    private boolean uses(String recipe, String item) {
        Recipe made = book.recipes().get(recipe);
        return made != null && made.ingredients().stream().anyMatch(l -> l.item().equals(item) || uses(l.item(), item));
    }

    private String name(String id) {
        return book.ingredients().containsKey(id) ? book.ingredient(id).name()
                : book.recipes().containsKey(id) ? book.recipe(id).name() : id;
    }
}
