package croftboard.plan.change;

import croftboard.book.Book;
import croftboard.plan.WeekPlan;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Items that changed facts make scarcer or dearer: only for those a substitute is looked for. */
final class Concerned {
    private Concerned() { }

    static Set<String> items(Book book, WeekPlan plan, List<Change> changes) {
        Set<String> items = new HashSet<>();
        for (Change c : changes) {
            if (c instanceof Change.Got got) {
                items.add(got.item());
            } else if (c instanceof Change.ItemOut out) {
                items.add(out.item());
            } else if (c instanceof Change.Price price) {
                items.add(price.item());
            } else if (c instanceof Change.Lost lost) {
                items.add(lost.item());
            } else if (c instanceof Change.VendorOut out) {
                all(book, plan, out.vendor(), items);
            } else if (c instanceof Change.NotSent not) {
                all(book, plan, not.vendor(), items);
            } else if (c instanceof Change.Late late) {
                all(book, plan, late.vendor(), items);
            }
        }
        return items;
    }

    /** What the plan orders of a vendor; a vendor that is out may be the only one with something else as well. */
    private static void all(Book book, WeekPlan plan, String vendor, Set<String> items) {
        plan.orders().stream().filter(o -> o.vendor().equals(vendor)).forEach(o -> o.lines().stream()
                .filter(l -> book.ingredients().containsKey(l.item())).forEach(l -> items.add(l.item())));
    }
}
