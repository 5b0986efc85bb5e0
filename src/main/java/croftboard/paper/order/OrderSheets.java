package croftboard.paper.order;

import croftboard.book.Contact;
import croftboard.book.Vendor;
import croftboard.measure.Cents;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Data;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Sheet 1: a purchase order for each vendor and delivery, on which the delivery is checked at the door as well. */
public final class OrderSheets implements SheetMaker {
    @Override
    public SheetKind kind() {
        return SheetKind.ORDER;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        return PurchaseOrder.all(context).stream().map(OrderSheets::sheet).toList();
    }

    static Sheet sheet(PurchaseOrder order) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Columns(List.of(party("To", order.seller()), party("From and deliver to", order.buyer()))));
        blocks.add(facts(order));
        blocks.add(goods(order));
        blocks.add(new Block.Text(minimum(order)));
        substitutions(order, blocks);
        if (!order.notes().isEmpty()) {
            blocks.add(new Block.Heading(3, "Notes"));
            order.notes().forEach(n -> blocks.add(new Block.Text(n)));
        }
        blocks.add(new Block.Heading(3, "At the door"));
        blocks.add(Block.Fields.of("Came at", "", "Truck and boxes clean, no ice melted, no pests", "", "Received by", ""));
        return new Sheet(SheetKind.ORDER, order.id(), "Purchase order: " + order.seller().name(),
                List.of("Our number " + order.number()), blocks, data(order), Sheet.Look.PLAIN, Set.of(order.key()));
    }

    private static List<Block> party(String head, PurchaseOrder.Party party) {
        Contact c = party.contact();
        List<String> lines = new ArrayList<>(List.of(party.name()));
        c.person().ifPresent(lines::add);
        c.address().stream().filter(l -> !l.equals(party.name())).forEach(lines::add);
        if (c.address().isEmpty() && !party.place().town().isEmpty()) {
            lines.add(party.place().town() + ", " + party.place().state());
        }
        Stream.concat(c.phone().stream(), c.email().stream()).forEach(lines::add);
        return List.of(new Block.Heading(3, head), new Block.Text(String.join("\n", lines)));
    }

    private static Block facts(PurchaseOrder order) {
        List<Block.Field> facts = new ArrayList<>();
        facts.add(new Block.Field("Order by", When.full(order.cutOff().toLocalDate()) + ", "
                + When.clock(order.cutOff().toLocalTime())));
        facts.add(new Block.Field("Deliver on", When.full(order.delivery())
                + order.window().map(w -> ", " + hours(w)).orElse("")));
        order.customer().ifPresent(n -> facts.add(new Block.Field("Our number with you", n)));
        if (!order.posted()) {
            facts.add(new Block.Field("Draft", "No order until the plan is posted."));
        }
        return new Block.Fields(facts);
    }

    static String hours(Vendor.Window w) {
        return When.clock(w.from()) + " to " + When.clock(w.to());
    }

    private static Block goods(PurchaseOrder order) {
        List<Row> rows = new ArrayList<>();
        for (PurchaseOrder.Line l : order.lines()) {
            rows.add(Row.of(article(l), l.pack(), Integer.toString(l.packs()), money(l.price()), money(l.cost()),
                    "", "", "", ""));
        }
        rows.add(Row.total("Goods", "", Integer.toString(packs(order)), "", money(order.total()), "", "", "", ""));
        if (order.fee() > 0) {
            rows.add(Row.of("Delivery fee", "", "", "", money(order.fee()), "", "", "", ""));
            rows.add(Row.total("To pay", "", "", "", money(order.payable()), "", "", "", ""));
        }
        return new Block.Table(List.of(Column.words("Item", 30), Column.words("Pack", 27), Column.figure("Packs", 1),
                Column.figure("A pack", 1), Column.figure("Amount", 1), Column.blank("Came", 8), Column.blank("Short", 8),
                Column.blank("Price", 9), Column.blank("\u00b0F", 7)), rows);
    }

    static String article(PurchaseOrder.Line l) {
        return l.article() + l.number().map(n -> " (" + n + ")").orElse("");
    }

    static int packs(PurchaseOrder order) {
        return order.lines().stream().mapToInt(PurchaseOrder.Line::packs).sum();
    }

    static String money(long cents) {
        return new Cents(cents).toString();
    }

    static String minimum(PurchaseOrder order) {
        if (order.minimum() == 0) {
            return "No minimum order.";
        }
        String words = "Minimum order " + money(order.minimum()) + ": ";
        if (order.minimumMet()) {
            return words + "met.";
        }
        return words + money(order.toMinimum() - order.total()) + " short. Call before you send this.";
    }

    private static void substitutions(PurchaseOrder order, List<Block> blocks) {
        blocks.add(new Block.Heading(3, "What may come instead"));
        boolean any = false;
        for (PurchaseOrder.Line l : order.lines()) {
            for (Vendor.Accepted a : l.accept()) {
                blocks.add(new Block.Text("For " + l.article() + ": " + a.say() + "; " + PurchaseOrder.limits(a, l) + "."));
                any = true;
            }
        }
        blocks.add(new Block.Text((any ? "Nothing else" : "Nothing") + " in place of what is ordered, please: call first. "
                + "Food labels and allergen statements rest on what is ordered."));
    }

    /** The order as a table, for the vendor too. */
    public static Data data(PurchaseOrder order) {
        Data.Building data = Data.of("order", "version", "vendor", "vendor_name", "order_by", "delivery", "item",
                "item_as_vendor_says", "article_number", "pack", "pack_grams", "packs", "pack_price_usd", "amount_usd",
                "delivered_packs", "short_packs", "price_usd", "temperature_f");
        for (PurchaseOrder.Line l : order.lines()) {
            data.row(order.number(), order.version(), order.key().vendor(), order.seller().name(), order.cutOff(),
                    order.delivery(), l.item(), l.article(), l.number().orElse(""), l.pack(),
                    BigDecimal.valueOf(l.packMg(), 3).stripTrailingZeros().toPlainString(), l.packs(), dollars(l.price()),
                    dollars(l.cost()), "", "", "", "");
        }
        return data.done();
    }

    static String dollars(long cents) {
        return BigDecimal.valueOf(cents, 2).toPlainString();
    }
}
