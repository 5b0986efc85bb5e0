package croftboard.plan.ask;

import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What differs between two plans, by what follows from it; nothing that is equal. Days of the first plan are told as days of
 * the second's week, so that two weeks can be laid beside each other.
 *
 * @param orders by delivery day and vendor
 * @param dishes by slot
 * @param prep by day and recipe
 * @param promises kept in one and broken in the other, or broken at another price
 * @param money lines of the account that differ, the value last
 * @param shareBefore low end of the local share, @param shareAfter the same of the second
 */
public record Comparison(List<OrderDiffers> orders, List<DishDiffers> dishes, List<PrepDiffers> prep,
        List<PromiseDiffers> promises, List<MoneyDiffers> money, Ratio shareBefore, Ratio shareAfter) {

    /** What is to be done with an order. */
    public enum Act { SEND, SEND_AGAIN, CANCEL }

    /** @param lines those that differ */
    public record OrderDiffers(Act act, String vendor, LocalDate delivery, long before, long after, List<LineDiffers> lines) { }

    public record LineDiffers(String item, String pack, int before, int after) { }

    /** A dish, or its portions. */
    public record DishDiffers(String slot, Optional<String> before, int portionsBefore, Optional<String> after,
            int portionsAfter) { }

    /** @param before standard batches made that day; zero: none */
    public record PrepDiffers(LocalDate day, String recipe, Ratio before, Ratio after) { }

    /** @param day empty: of the whole week. @param before what breaking it costs, cents; 0: kept */
    public record PromiseDiffers(String say, Optional<LocalDate> day, long before, long after) { }

    public record MoneyDiffers(String line, long before, long after) { }

    public static Comparison of(WeekPlan before, WeekPlan after) {
        long shift = ChronoUnit.DAYS.between(before.week().monday(), after.week().monday());
        return new Comparison(orders(before, after, shift), dishes(before, after), prep(before, after, shift),
                promises(before, after, shift), money(before.account(), after.account()), before.share().low(),
                after.share().low());
    }

    public boolean nothing() {
        return orders.isEmpty() && dishes.isEmpty() && prep.isEmpty() && promises.isEmpty() && money.isEmpty();
    }

    private static <K extends Comparable<K>> TreeSet<K> keys(Map<K, ?> a, Map<K, ?> b) {
        TreeSet<K> all = new TreeSet<>(a.keySet());
        all.addAll(b.keySet());
        return all;
    }

    private record At(LocalDate day, String what, String more) implements Comparable<At> {
        @Override
        public int compareTo(At o) {
            int c = day.compareTo(o.day);
            c = c != 0 ? c : what.compareTo(o.what);
            return c != 0 ? c : more.compareTo(o.more);
        }
    }

    private static List<OrderDiffers> orders(WeekPlan before, WeekPlan after, long shift) {
        SortedMap<At, WeekPlan.Order> was = orders(before, shift);
        SortedMap<At, WeekPlan.Order> is = orders(after, 0);
        List<OrderDiffers> all = new ArrayList<>();
        for (At at : keys(was, is)) {
            Optional<WeekPlan.Order> a = Optional.ofNullable(was.get(at));
            Optional<WeekPlan.Order> b = Optional.ofNullable(is.get(at));
            List<LineDiffers> lines = lines(a, b);
            long paidBefore = a.map(WeekPlan.Order::total).orElse(0L);
            long paidAfter = b.map(WeekPlan.Order::total).orElse(0L);
            if (!lines.isEmpty() || paidBefore != paidAfter) {
                Act act = a.isEmpty() ? Act.SEND : b.isEmpty() ? Act.CANCEL : Act.SEND_AGAIN;
                all.add(new OrderDiffers(act, at.what, at.day, paidBefore, paidAfter, lines));
            }
        }
        return List.copyOf(all);
    }

    private static SortedMap<At, WeekPlan.Order> orders(WeekPlan plan, long shift) {
        SortedMap<At, WeekPlan.Order> all = new TreeMap<>();
        plan.orders().forEach(o -> all.put(new At(o.delivery().plusDays(shift), o.vendor(), ""), o));
        return all;
    }

    private static List<LineDiffers> lines(Optional<WeekPlan.Order> a, Optional<WeekPlan.Order> b) {
        SortedMap<String, Integer> was = packs(a);
        SortedMap<String, Integer> is = packs(b);
        return keys(was, is).stream().filter(k -> !Objects.equals(was.get(k), is.get(k)))
                .map(k -> new LineDiffers(k.substring(0, k.indexOf('\n')), k.substring(k.indexOf('\n') + 1),
                        was.getOrDefault(k, 0), is.getOrDefault(k, 0))).toList();
    }

    private static SortedMap<String, Integer> packs(Optional<WeekPlan.Order> order) {
        SortedMap<String, Integer> packs = new TreeMap<>();
        order.ifPresent(o -> o.lines().forEach(l -> packs.merge(l.item() + "\n" + l.pack(), l.packs(), Integer::sum)));
        return packs;
    }

    private static List<DishDiffers> dishes(WeekPlan before, WeekPlan after) {
        Map<String, WeekPlan.Served> was = rows(before);
        Map<String, WeekPlan.Served> is = rows(after);
        TreeSet<String> slots = new TreeSet<>(was.keySet());
        slots.addAll(is.keySet());
        List<String> order = new ArrayList<>(is.keySet());
        was.keySet().stream().filter(s -> !is.containsKey(s)).forEach(order::add);
        List<DishDiffers> all = new ArrayList<>();
        for (String slot : order) {
            DishDiffers d = new DishDiffers(slot, dish(was, slot), portions(was, slot), dish(is, slot), portions(is, slot));
            if (!d.before.equals(d.after) || d.portionsBefore != d.portionsAfter) {
                all.add(d);
            }
        }
        return List.copyOf(all);
    }

    private static Map<String, WeekPlan.Served> rows(WeekPlan plan) {
        Map<String, WeekPlan.Served> rows = new LinkedHashMap<>();
        plan.menu().forEach(r -> rows.put(r.slot(), r));
        return rows;
    }

    private static Optional<String> dish(Map<String, WeekPlan.Served> rows, String slot) {
        return Optional.ofNullable(rows.get(slot)).flatMap(WeekPlan.Served::recipe);
    }

    private static int portions(Map<String, WeekPlan.Served> rows, String slot) {
        return Optional.ofNullable(rows.get(slot)).map(WeekPlan.Served::portions).orElse(0);
    }

    private static List<PrepDiffers> prep(WeekPlan before, WeekPlan after, long shift) {
        SortedMap<At, Ratio> was = made(before, shift);
        SortedMap<At, Ratio> is = made(after, 0);
        return keys(was, is).stream().filter(k -> !Objects.equals(was.get(k), is.get(k))).map(k -> new PrepDiffers(k.day,
                k.what, was.getOrDefault(k, Ratio.ZERO), is.getOrDefault(k, Ratio.ZERO))).toList();
    }

    private static SortedMap<At, Ratio> made(WeekPlan plan, long shift) {
        SortedMap<At, Ratio> made = new TreeMap<>();
        plan.batches().forEach(b -> made.merge(new At(b.made().plusDays(shift), b.recipe(), ""), b.batches(), Ratio::plus));
        plan.menu().forEach(r -> r.recipe().ifPresent(dish -> r.productions().forEach(p -> made.merge(
                new At(p.made().plusDays(shift), dish, ""), p.batches(), Ratio::plus))));
        return made;
    }

    private static List<PromiseDiffers> promises(WeekPlan before, WeekPlan after, long shift) {
        SortedMap<At, Long> was = broken(before, shift);
        SortedMap<At, Long> is = broken(after, 0);
        return keys(was, is).stream().filter(k -> !Objects.equals(was.get(k), is.get(k))).map(k -> new PromiseDiffers(
                k.more, k.day.equals(LocalDate.MAX) ? Optional.empty() : Optional.of(k.day), was.getOrDefault(k, 0L),
                is.getOrDefault(k, 0L))).toList();
    }

    private static SortedMap<At, Long> broken(WeekPlan plan, long shift) {
        SortedMap<At, Long> broken = new TreeMap<>();
        plan.promises().stream().filter(p -> p.cents() != 0).forEach(p -> broken.merge(new At(p.day()
                .map(d -> d.plusDays(shift)).orElse(LocalDate.MAX), p.id(), p.say()), p.cents(), Long::sum));
        return broken;
    }

    private static List<MoneyDiffers> money(Account a, Account b) {
        Map<String, Long> was = lines(a);
        Map<String, Long> is = lines(b);
        return was.keySet().stream().filter(k -> !was.get(k).equals(is.get(k)))
                .map(k -> new MoneyDiffers(k, was.get(k), is.get(k))).toList();
    }

    private static Map<String, Long> lines(Account a) {
        Map<String, Long> lines = new LinkedHashMap<>();
        lines.put("sales", a.sales() + a.eventSales());
        lines.put("what left portions still bring", a.left());
        lines.put("orders", -a.purchases());
        lines.put("worth of surplus that keeps", a.kept());
        lines.put("staples used", -a.staples());
        lines.put("waste thrown away", -a.waste());
        lines.put("delivery fees", -a.fees());
        lines.put("overtime", -a.overtime());
        lines.put("price of broken promises", -a.brokenCents());
        lines.put("value of the plan", a.value());
        return lines;
    }
}
