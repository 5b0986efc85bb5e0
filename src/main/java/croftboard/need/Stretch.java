package croftboard.need;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Some weeks of a longer problem as a problem of their own: what earlier weeks have decided is given. What their orders
 * leave over is dated stock, dishes within the gap of other weeks' dishes cannot be chosen, and dishes that reach into
 * the first days stay. What a whole horizon decides together (batches that serve two weeks, one row of promises for all)
 * is seen only within the stretch, so a plan put together of stretches is judged by the whole problem.
 */
public final class Stretch {
    /** The problem of its own. Items, components and resources keep their numbers. */
    public final WeekProblem problem;
    private final WeekProblem whole;
    private final int start;
    private final int end;
    private final List<Integer> slots = new ArrayList<>();
    private final List<int[]> candidates = new ArrayList<>();
    private final int[] offers;
    private final int[] fixed;

    /**
     * @param from first week
     * @param until week after the last
     * @param choice candidates of all slots; those of the weeks themselves are to be chosen anew
     * @param packs of all offers; those of earlier deliveries are given
     */
    public Stretch(WeekProblem whole, ServiceWeeks weeks, int from, int until, int[] choice, int[] packs) {
        this.whole = whole;
        fixed = choice.clone();
        for (int s : weeks.slots(from, until)) {
            fixed[s] = -1;
        }
        start = from == 0 ? 0 : start(weeks, from, until);
        end = until >= weeks.count() ? whole.days() : Math.min(whole.days(), weeks.monday(until));
        List<WeekProblem.Slot> own = new ArrayList<>();
        for (int s = 0; s < choice.length; s++) {
            boolean free = from <= weeks.ofSlot(s) && weeks.ofSlot(s) < until;
            if (free || weeks.ofSlot(s) < from && choice[s] >= 0 && lastDay(s) >= start) {
                own.add(free ? free(s) : given(s, choice[s]));
                slots.add(s);
            }
        }
        int[] deliveries = IntStream.range(0, whole.deliveries().size())
                .filter(v -> within(whole.deliveries().get(v).day())).toArray();
        int[] number = new int[whole.deliveries().size()];
        Arrays.fill(number, -1);
        for (int v = 0; v < deliveries.length; v++) {
            number[deliveries[v]] = v;
        }
        offers = IntStream.range(0, whole.offers().size()).filter(o -> number[whole.offers().get(o).delivery()] >= 0)
                .toArray();
        int keepDay = until >= weeks.count() ? 0 : weeks.monday(until);
        problem = new WeekProblem(whole.name() + ", weeks " + (from + 1) + " to " + until, whole.firstDay().plusDays(start),
                end - start, Arrays.stream(whole.openDays()).filter(this::within).map(d -> d - start).toArray(),
                Arrays.copyOfRange(whole.prepDays(), start, end), List.copyOf(own), items(keepDay), whole.components(),
                Arrays.stream(offers).mapToObj(o -> renumbered(whole.offers().get(o), number)).toList(),
                Arrays.stream(deliveries).mapToObj(v -> shifted(whole.deliveries().get(v))).toList(),
                resources(), stock(packs), start == 0 ? whole.componentStock() : List.of(),
                start == 0 ? whole.looseStock() : List.of(), whole.prices(),
                whole.constantCents() * (until - from) / weeks.count());
    }

    /** Monday, or the first day on which something must be at hand for the weeks. */
    private int start(ServiceWeeks weeks, int from, int until) {
        int first = weeks.monday(from);
        for (int s : weeks.slots(from, until)) {
            for (WeekProblem.Candidate c : whole.slots().get(s).candidates()) {
                for (WeekProblem.LooseNeed n : c.loose()) {
                    first = Math.min(first, n.from());
                }
                for (WeekProblem.Use u : c.uses()) {
                    first = Math.min(first, u.day());
                }
            }
        }
        return Math.max(0, first);
    }

    private boolean within(int day) {
        return start <= day && day < end;
    }

    private int lastDay(int s) {
        int[] days = whole.slots().get(s).serviceDays();
        return days[days.length - 1];
    }

    private WeekProblem.Slot free(int s) {
        WeekProblem.Slot slot = whole.slots().get(s);
        int[] possible = IntStream.range(0, slot.candidates().size())
                .filter(k -> !slot.free() || !near(s, slot.candidates().get(k).dish())).toArray();
        if (possible.length == 0) {
            possible = IntStream.range(0, slot.candidates().size()).toArray();
        }
        candidates.add(possible);
        return new WeekProblem.Slot(slot.id(), slot.line(), shifted(slot.serviceDays()), slot.free(), slot.emptyCents(),
                slot.mayBeEmpty(), Arrays.stream(possible).mapToObj(k -> shifted(slot.candidates().get(k))).toList());
    }

    private boolean near(int s, int dish) {
        int day = whole.slots().get(s).startDay();
        for (int o = 0; o < fixed.length; o++) {
            WeekProblem.Slot other = whole.slots().get(o);
            if (fixed[o] >= 0 && other.free() && Math.abs(other.startDay() - day) < whole.prices().gapDays()
                    && other.candidates().get(fixed[o]).dish() == dish) {
                return true;
            }
        }
        return false;
    }

    /** A dish of earlier weeks that reaches into the stretch: it stays. */
    private WeekProblem.Slot given(int s, int candidate) {
        WeekProblem.Slot slot = whole.slots().get(s);
        candidates.add(new int[] {candidate});
        boolean all = slot.startDay() >= start;
        return new WeekProblem.Slot(slot.id(), slot.line(), shifted(slot.serviceDays()), slot.free() && all,
                slot.emptyCents(), false, List.of(shifted(slot.candidates().get(candidate))));
    }

    private int[] shifted(int[] days) {
        return Arrays.stream(days).filter(this::within).map(d -> d - start).toArray();
    }

    private WeekProblem.Candidate shifted(WeekProblem.Candidate c) {
        if (start == 0) {
            return c;
        }
        return new WeekProblem.Candidate(c.dish(), c.recipe(), c.portions(), c.salesCents(), c.leftCents(), c.stapleCents(),
                c.needs().stream().filter(n -> within(n.day()))
                        .map(n -> new WeekProblem.Need(n.item(), n.day() - start, n.mg())).toList(),
                c.uses().stream().filter(u -> within(u.day()))
                        .map(u -> new WeekProblem.Use(u.resource(), u.day() - start, u.units())).toList(),
                c.demands().stream().filter(d -> d.useDay() >= start).map(d -> new WeekProblem.Demand(d.component(),
                        d.useDay() - start, d.lastDay() - start, d.mg())).toList(),
                c.loose().stream().filter(n -> n.to() >= start).map(n -> new WeekProblem.LooseNeed(n.item(),
                        Math.max(0, n.from() - start), n.to() - start, n.mg())).toList(),
                c.looseStapleCents(), c.covers(), c.main(), c.method(), c.cuisine(), List.of());
    }

    private List<WeekProblem.Item> items(int keepDay) {
        return whole.items().stream().map(i -> new WeekProblem.Item(i.id(), i.name(), i.lifeDays(),
                (keepDay == 0 ? i.keepDay() : keepDay) - start, i.keptCentsPerMg(), i.wasteCentsPerMg())).toList();
    }

    private static WeekProblem.Offer renumbered(WeekProblem.Offer o, int[] number) {
        return new WeekProblem.Offer(o.vendor(), o.item(), number[o.delivery()], o.pack(), o.packMg(), o.tiers(),
                o.minPacks(), o.maxPacks(), o.locality(), o.whyLocal(), o.onList());
    }

    private WeekProblem.Delivery shifted(WeekProblem.Delivery d) {
        return new WeekProblem.Delivery(d.vendor(), d.day() - start, d.cutOff(), d.minimumCents(), d.feeCents(), d.forced());
    }

    private List<WeekProblem.Resource> resources() {
        return whole.resources().stream().map(r -> {
            int[] of = Arrays.stream(r.period(), start, end).distinct().sorted().toArray();
            int[] period = Arrays.stream(r.period(), start, end).map(t -> Arrays.binarySearch(of, t)).toArray();
            return new WeekProblem.Resource(r.id(), r.name(), r.hands(), period, pick(r.regular(), of),
                    pick(r.overtime(), of), r.overtimeCentsPerHour(), r.held());
        }).toList();
    }

    private static long[] pick(long[] from, int[] places) {
        return Arrays.stream(places).mapToLong(t -> from[t]).toArray();
    }

    /** What is left at the start of stock and of earlier deliveries. */
    private List<WeekProblem.ItemStock> stock(int[] packs) {
        if (start == 0) {
            return whole.stock();
        }
        long[][] need = Workload.of(whole, fixed).needMg();
        for (long[] days : need) {
            Arrays.fill(days, start, days.length, 0);
        }
        long[][] left = new long[whole.items().size()][start];
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = whole.offers().get(o);
            int day = whole.deliveries().get(offer.delivery()).day();
            if (day < start) {
                left[offer.item()][day] += packs[o] * offer.packMg();
            }
        }
        long[] lots = whole.stock().stream().mapToLong(WeekProblem.ItemStock::mg).toArray();
        for (Buying.Flow f : Buying.of(whole, need, packs).flows()) {
            if (f.delivery() < 0) {
                lots[f.stockLot()] -= f.mg();
            } else if (f.delivery() < start) {
                left[f.item()][f.delivery()] -= f.mg();
            }
        }
        List<WeekProblem.ItemStock> stock = new ArrayList<>();
        for (int k = 0; k < lots.length; k++) {
            WeekProblem.ItemStock lot = whole.stock().get(k);
            add(stock, lot.item(), lot.from(), lot.until(), lots[k]);
        }
        for (int i = 0; i < left.length; i++) {
            for (int t = 0; t < start; t++) {
                add(stock, i, t, t + whole.items().get(i).lifeDays(), left[i][t]);
            }
        }
        return stock;
    }

    private void add(List<WeekProblem.ItemStock> stock, int item, int from, int until, long mg) {
        if (mg > 0 && until >= start) {
            stock.add(new WeekProblem.ItemStock(item, Math.max(0, from - start), until - start, mg));
        }
    }

    /** The whole problem's choice, seen from here; -1 where it cannot be chosen here. */
    public int[] choice(int[] wholeChoice) {
        int[] own = new int[slots.size()];
        for (int s = 0; s < own.length; s++) {
            own[s] = indexOf(candidates.get(s), wholeChoice[slots.get(s)]);
        }
        return own;
    }

    private static int indexOf(int[] list, int candidate) {
        for (int k = 0; k < list.length; k++) {
            if (list[k] == candidate) {
                return k;
            }
        }
        return -1;
    }

    public int[] packs(int[] wholePacks) {
        return Arrays.stream(offers).map(o -> wholePacks[o]).toArray();
    }

    /** Writes what was chosen here into the whole problem's choice. */
    public void choiceInto(int[] own, int[] wholeChoice) {
        for (int s = 0; s < own.length; s++) {
            wholeChoice[slots.get(s)] = own[s] < 0 ? -1 : candidates.get(s)[own[s]];
        }
    }

    /** Writes the packs ordered here into those of the whole problem. */
    public void packsInto(int[] own, int[] wholePacks) {
        for (int o = 0; o < own.length; o++) {
            wholePacks[offers[o]] = own[o];
        }
    }
}
