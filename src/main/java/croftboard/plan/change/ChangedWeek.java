package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.measure.Ratio;
import croftboard.need.WeekProblem;
import croftboard.plan.Altered;
import croftboard.plan.Given;
import croftboard.plan.ProblemBuilder;
import croftboard.plan.Standing;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A week that people already work from, under changed facts, as a problem of its own. What is past stays as it was: dishes
 * that are made or served, batches, orders past their cut-off; everything else is open again.
 *
 * @param built the changed week; {@code problem()} judges every plan of it
 * @param priced the same, with dishes other than the plan's worth less by the price of a change: for the search
 * @param start the plan's own menu, -1 where it can no longer stand
 * @param standing what is made and served
 * @param faults what was said and cannot be so, in words; then nothing else is to be used
 * @param variants by slot and number of candidate: which of them are the plan's dish with a substitute or in fewer portions
 */
public record ChangedWeek(ProblemBuilder.Built built, WeekProblem priced, int[] start,
        Standing standing, List<String> faults, Map<Integer, Map<Integer, Variants.Variant>> variants) {

    /** Where batches that are made take what they were made of; no dish. */
    public static final String HOUSE = "house/made";

    /**
     * @param plan the plan that people work from
     * @param given what other weeks have decided, as when the plan was made
     * @param now in the kitchen's zone
     */
    public static ChangedWeek of(Book book, WeekPlan plan, Given given, List<Change> changes, LocalDateTime now) {
        return of(book, plan, given, changes, now, false);
    }

    /** @param accept a substitute may change what must be said of a dish */
    public static ChangedWeek of(Book book, WeekPlan plan, Given given, List<Change> changes, LocalDateTime now,
            boolean accept) {
        return new Changing(book, plan, given, changes, new Past(now), accept).run();
    }

    private static final class Changing {
        private final Book book;
        private final WeekPlan plan;
        private final Given given;
        private final List<Change> changes;
        private final Past past;
        private final boolean accept;
        private final List<String> faults = new ArrayList<>();
        private final Map<String, WeekPlan.Served> frozen = new TreeMap<>();
        private final Map<String, LocalDate> again = new TreeMap<>();
        private final List<WeekPlan.Batch> batches = new ArrayList<>();
        private final Set<WeekPlan.Batch> spoiled = new HashSet<>();
        private final List<LostProduction> lostProductions = new ArrayList<>();

        Changing(Book book, WeekPlan plan, Given given, List<Change> changes, Past past, boolean accept) {
            this.accept = accept;
            this.book = book;
            this.plan = plan;
            this.given = given;
            this.changes = changes;
            this.past = past;
        }

        ChangedWeek run() {
            plan.batches().stream().filter(b -> past.day(b.made())).forEach(batches::add);
            plan.menu().stream().filter(this::isFrozen).forEach(row -> frozen.put(row.slot(), row));
            changes.stream().filter(Change.BatchLost.class::isInstance).map(Change.BatchLost.class::cast)
                    .forEach(this::lose);
            Altered altered = new Altered(notSold(), madeBatches(), again, EveryLine.of(plan));
            ProblemBuilder.Built built = ProblemBuilder.build(book, plan.week(), keptDishes(), given, LostProduction.asOf(plan),
                    altered);
            WeekProblem open = frozenSlots(built.problem());
            SupplyChanges supply = new SupplyChanges(book, plan, past, open, changes, faults);
            WeekProblem bought = supply.apply();
            WeekProblem changed = new WishChanges(faults).apply(new HandsChanges(book, bought, faults).apply(changes),
                    changes, frozen.keySet());
            Variants variants = new Variants(book, plan, given, altered, changed,
                    dayNumber(changed, past.firstOpenDay()), accept);
            WeekProblem all = variants.add(changes.isEmpty() ? Set.of() : Concerned.items(book, plan, changes));
            int[] start = start(all);
            ProblemBuilder.Built as = new ProblemBuilder.Built(all, built.keptFaults(), built.swaps(), built.gone());
            return new ChangedWeek(as, priced(all, start, variants.found()), start, new Standing(frozen, batches,
                    Set.of(HOUSE), plan.orders()), faults.stream().filter(this::ofNow).toList(), variants.found());
        }

        /** The plan was changed for it before. */
        private boolean earlier(Change change) {
            return plan.inputs().revision().map(r -> r.changes().contains(change.sentence())).orElse(false);
        }

        /** What was said of an earlier day was right then. */
        private boolean ofNow(String fault) {
            return plan.inputs().revision().stream().flatMap(r -> r.changes().stream())
                    .noneMatch(sentence -> fault.startsWith("\"" + sentence + "\""));
        }

        /** Something of it is made or served. */
        private boolean isFrozen(WeekPlan.Served row) {
            return past.day(row.days().get(0)) || row.productions().stream().anyMatch(p -> past.day(p.made()));
        }

        private void lose(Change.BatchLost lost) {
            LocalDate made = dateOf(lost.day());
            boolean component = batches.stream().filter(b -> b.recipe().equals(lost.recipe()) && b.made().equals(made))
                    .map(spoiled::add).count() > 0;
            boolean dish = false;
            for (WeekPlan.Served row : List.copyOf(frozen.values())) {
                dish |= loseDish(lost, made, row);
            }
            if (!component && !dish) {
                faults.add("\"" + lost.sentence() + "\": no batch of " + lost.recipe() + " was made on " + made
                        + " -> " + madeOf(lost.recipe()));
            }
        }

        private boolean loseDish(Change.BatchLost lost, LocalDate made, WeekPlan.Served row) {
            Optional<WeekPlan.Production> batch = row.productions().stream()
                    .filter(p -> row.recipe().equals(Optional.of(lost.recipe())) && p.made().equals(made)).findFirst();
            if (batch.isEmpty()) {
                return false;
            }
            LocalDate from = row.days().stream().filter(d -> !past.day(d)).findFirst().orElse(batch.get().lastServed().plusDays(1));
            again.put(row.slot(), from);
            lostProductions.add(new LostProduction(row, batch.get()));
            if (!past.day(row.days().get(0))) {
                frozen.remove(row.slot());
            }
            return true;
        }

        private String madeOf(String recipe) {
            List<String> days = new ArrayList<>();
            plan.batches().stream().filter(b -> b.recipe().equals(recipe)).forEach(b -> days.add(b.made().toString()));
            plan.menu().stream().filter(r -> r.recipe().equals(Optional.of(recipe)))
                    .forEach(r -> r.productions().forEach(p -> days.add(p.made().toString())));
            return days.isEmpty() ? "the plan has none" : "the plan makes it on " + String.join(", ", days);
        }

        /** The day of the plan's week; a batch made on the Sunday before it counts to it. */
        private LocalDate dateOf(java.time.DayOfWeek day) {
            LocalDate inWeek = plan.week().monday().plusDays(day.getValue() - 1L);
            boolean before = plan.batches().stream().anyMatch(b -> b.made().equals(inWeek.minusWeeks(1)))
                    || plan.menu().stream().flatMap(r -> r.productions().stream())
                            .anyMatch(p -> p.made().equals(inWeek.minusWeeks(1)));
            return before && !past.day(inWeek) ? inWeek.minusWeeks(1) : inWeek;
        }

        private SortedMap<String, String> keptDishes() {
            SortedMap<String, String> kept = new TreeMap<>(plan.inputs().kept());
            changes.forEach(c -> {
                if (c instanceof Change.Wanted w) {
                    kept.remove(w.slot());
                } else if (c instanceof Change.Unwanted w) {
                    kept.remove(w.slot());
                }
            });
            frozen.values().forEach(row -> row.recipe().ifPresent(r -> kept.put(row.slot(), r)));
            return kept;
        }

        private Set<LocalDate> notSold() {
            Set<LocalDate> days = new HashSet<>();
            for (Change c : changes) {
                if (c instanceof Change.DayClosed closed) {
                    LocalDate day = plan.week().monday().plusDays(closed.day().getValue() - 1L);
                    if (past.day(day)) {
                        faults.add("\"" + c.sentence() + "\": that day is over -> a day still to come");
                    }
                    days.add(day);
                }
            }
            return days;
        }

        private Map<String, SortedMap<LocalDate, Ratio>> madeBatches() {
            Map<String, SortedMap<LocalDate, Ratio>> made = new HashMap<>();
            frozen.forEach((slot, row) -> row.productions().stream().filter(p -> past.day(p.made()))
                    .forEach(p -> made.computeIfAbsent(slot, k -> new TreeMap<>()).put(p.made(), p.batches())));
            return made;
        }

        private int dayNumber(WeekProblem p, LocalDate date) {
            return Math.toIntExact(ChronoUnit.DAYS.between(p.firstDay(), date));
        }

        /** Dishes that are made or served stay; no other dish may need anything from a day that is over. */
        private WeekProblem frozenSlots(WeekProblem p) {
            int open = Math.max(0, Math.min(p.days(), dayNumber(p, past.firstOpenDay())));
            Map<String, String> planned = plan.choices();
            List<WeekProblem.Slot> slots = new ArrayList<>();
            for (WeekProblem.Slot s : p.slots()) {
                WeekPlan.Served row = frozen.get(s.id());
                boolean nothing = row != null && row.recipe().isEmpty();
                List<WeekProblem.Candidate> may = s.candidates().stream().filter(c -> !nothing && (row != null
                        || c.recipe().equals(planned.get(s.id())) || startsFrom(c, open))).toList();
                slots.add(new WeekProblem.Slot(s.id(), s.line(), s.serviceDays(), s.free(), s.emptyCents(),
                        nothing || s.mayBeEmpty() || may.isEmpty(), may));
            }
            MadeSlot made = new MadeSlot(p, batches, spoiled);
            lostProductions.stream().filter(l -> !l.standsIn(p)).forEach(l -> made.lose(l.asMade(book, plan, given)));
            LostFood lost = new LostFood(book, plan, past, p);
            changes.stream().filter(Change.Lost.class::isInstance).map(Change.Lost.class::cast)
                    .forEach(c -> lost.need(c, earlier(c), faults).ifPresent(made::lose));
            slots.add(made.slot());
            boolean[] prep = p.prepDays().clone();
            Arrays.fill(prep, 0, open, false);
            return Problems.with(p, slots, prep, made.stock(), made.looseStock());
        }

        private static boolean startsFrom(WeekProblem.Candidate c, int open) {
            return c.productions().stream().allMatch(x -> x.day() >= open)
                    && c.needs().stream().allMatch(n -> n.day() >= open);
        }

        private int[] start(WeekProblem p) {
            int[] choice = new int[p.slots().size()];
            Arrays.fill(choice, -1);
            Map<String, String> planned = plan.choices();
            for (int s = 0; s < choice.length; s++) {
                WeekProblem.Slot slot = p.slots().get(s);
                for (int k = slot.candidates().size() - 1; k >= 0; k--) {
                    boolean own = slot.id().equals(HOUSE) || slot.candidates().get(k).recipe().equals(planned.get(slot.id()));
                    boolean better = choice[s] < 0 || !asPlanned(slot, choice[s]);
                    choice[s] = own && better ? k : choice[s];
                }
            }
            return choice;
        }

        /** In as many batches as the plan makes. */
        private boolean asPlanned(WeekProblem.Slot slot, int k) {
            List<Ratio> planned = plan.menu().stream().filter(r -> r.slot().equals(slot.id()))
                    .flatMap(r -> r.productions().stream()).map(WeekPlan.Production::batches).toList();
            return slot.candidates().get(k).productions().stream().map(WeekProblem.Production::batches).toList().equals(planned);
        }

        /** A change costs what the kitchen says, unless the plan's own dish can no longer stand there. */
        private WeekProblem priced(WeekProblem p, int[] start, Map<Integer, Map<Integer, Variants.Variant>> variants) {
            long price = book.kitchen().promises().change().value();
            List<WeekProblem.Slot> slots = new ArrayList<>();
            for (int s = 0; s < start.length; s++) {
                WeekProblem.Slot slot = p.slots().get(s);
                List<WeekProblem.Candidate> all = new ArrayList<>();
                for (int k = 0; k < slot.candidates().size(); k++) {
                    WeekProblem.Candidate c = slot.candidates().get(k);
                    boolean same = k == start[s] || slot.id().equals(HOUSE);
                    boolean own = start[s] >= 0 && c.recipe().equals(slot.candidates().get(start[s]).recipe());
                    Optional<Variants.Variant> variant = Optional.ofNullable(variants.getOrDefault(s, Map.of()).get(k));
                    all.add(same ? c : Problems.worthLess(c, own ? ChangePrices.ofOwn(price, variant) : price));
                }
                slots.add(new WeekProblem.Slot(slot.id(), slot.line(), slot.serviceDays(), slot.free(),
                        slot.emptyCents() + (start[s] < 0 ? 0 : price), slot.mayBeEmpty(), all));
            }
            return Problems.withSlots(p, slots);
        }
    }
}
