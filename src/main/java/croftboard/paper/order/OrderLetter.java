package croftboard.paper.order;

import croftboard.book.Vendor;
import croftboard.paper.When;
import java.util.ArrayList;
import java.util.List;

/** An order in plain sentences: the body of an e-mail, or what is read aloud on the telephone. */
public final class OrderLetter {
    private OrderLetter() { }

    public static String of(PurchaseOrder order) {
        List<String> lines = new ArrayList<>();
        lines.add("Subject: Order " + order.number() + " from " + order.buyer().name() + " for "
                + When.day(order.delivery()));
        lines.add("");
        if (!order.posted()) {
            lines.add("DRAFT, do not send: the plan " + order.version() + " is not posted.");
            lines.add("");
        }
        lines.add("Hello " + order.seller().contact().person().map(p -> p + " of ").orElse("") + order.seller().name() + ",");
        lines.add("");
        lines.add("this is " + order.buyer().name() + ". Please bring us on " + When.full(order.delivery())
                + order.window().map(w -> ", between " + When.clock(w.from()) + " and " + When.clock(w.to())).orElse("") + ":");
        lines.add("");
        order.lines().forEach(l -> goods(l, lines));
        lines.add("");
        int count = order.lines().size();
        lines.add("That is " + count + (count == 1 ? " line, " : " lines, ") + OrderSheets.packs(order)
                + (OrderSheets.packs(order) == 1 ? " pack" : " packs") + " in all, for " + OrderSheets.money(order.total())
                + (order.fee() > 0 ? ", and " + OrderSheets.money(order.fee()) + " delivery fee: "
                        + OrderSheets.money(order.payable()) + " together" : "") + ".");
        lines.add(OrderSheets.minimum(order));
        lines.add("Your cut-off for this order is " + When.full(order.cutOff().toLocalDate()) + ", "
                + When.clock(order.cutOff().toLocalTime()) + ".");
        lines.add("");
        instead(order, lines);
        order.notes().forEach(lines::add);
        lines.add("");
        lines.add("Our number: " + order.number() + order.customer().map(n -> ". Our number with you: " + n).orElse("") + ".");
        lines.add("Please answer with what you can bring and what you cannot.");
        lines.add("");
        sender(order, lines);
        return String.join("\n", lines) + "\n";
    }

    private static void goods(PurchaseOrder.Line l, List<String> lines) {
        lines.add("- " + l.packs() + " x " + l.pack() + ": " + OrderSheets.article(l) + ", at " + OrderSheets.money(l.price())
                + " a pack, " + OrderSheets.money(l.cost()));
    }

    private static void instead(PurchaseOrder order, List<String> lines) {
        boolean any = false;
        for (PurchaseOrder.Line l : order.lines()) {
            for (Vendor.Accepted a : l.accept()) {
                lines.add("If you are out of " + l.article() + " we take " + a.say() + ": " + PurchaseOrder.limits(a, l) + ".");
                any = true;
            }
        }
        lines.add((any ? "Nothing else" : "Nothing") + " in place of what is ordered, please: call first.");
    }

    private static void sender(PurchaseOrder order, List<String> lines) {
        lines.add(order.buyer().name());
        order.buyer().contact().person().ifPresent(lines::add);
        order.buyer().contact().address().stream().filter(l -> !l.equals(order.buyer().name())).forEach(lines::add);
        order.buyer().contact().phone().ifPresent(lines::add);
        order.buyer().contact().email().ifPresent(lines::add);
    }
}
