package croftboard.paper.order;

import croftboard.book.Seasons;
import croftboard.measure.Cents;
import croftboard.paper.Block;
import croftboard.paper.Block.Column;
import croftboard.paper.Block.Row;
import croftboard.paper.Data;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.When;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** Sheet 2: the week's orders on one page, in the order of their cut-offs, with boxes for sent, confirmed and came. */
public final class CalendarSheet implements SheetMaker {
    private static final String BOX = "\u2610";

    @Override
    public SheetKind kind() {
        return SheetKind.ORDER_CALENDAR;
    }

    @Override
    public List<Sheet> make(PaperContext context) {
        List<PurchaseOrder> orders = PurchaseOrder.all(context);
        List<Seasons.Event> events = events(context);
        List<Block> blocks = new ArrayList<>();
        blocks.add(orders.isEmpty() ? new Block.Text("Nothing is ordered for these days.") : table(orders));
        events.forEach(e -> blocks.add(new Block.Text("Event: " + e.name() + ", " + When.day(e.date())
                + e.service().map(t -> ", " + When.clock(t)).orElse("") + ", " + e.guarantee() + " guaranteed.")));
        blocks.add(new Block.Text("A line without a cross under Sent when its time has come: nothing comes of it. "
                + "A price or a number that is not as listed: write it on the order."));
        var keys = new TreeSet<OrderKey>();
        orders.forEach(o -> keys.add(o.key()));
        return List.of(new Sheet(kind(), "order-calendar-" + context.plan().week().toString().toLowerCase(java.util.Locale.ROOT)
                + context.filters().vendor().map(v -> "-" + v).orElse("") + context.filters().day().map(d -> "-" + d).orElse(""),
                "Order calendar " + context.plan().week(), List.of(under(context)), blocks, data(orders, events),
                Sheet.Look.PLAIN.wide().onOnePage(), keys));
    }

    static List<Seasons.Event> events(PaperContext context) {
        LocalDate monday = context.plan().week().monday();
        return context.book().seasons().events().stream()
                .filter(e -> !e.date().isBefore(monday) && e.date().isBefore(monday.plusDays(7)))
                .filter(e -> context.filters().wants(e.date()) && context.filters().vendor().isEmpty()).toList();
    }

    private static String under(PaperContext context) {
        LocalDate monday = context.plan().week().monday();
        return "For the week of " + When.full(monday) + " to " + When.full(monday.plusDays(6));
    }

    private static Block table(List<PurchaseOrder> orders) {
        List<Row> rows = new ArrayList<>();
        for (PurchaseOrder o : orders) {
            rows.add(Row.of(When.day(o.cutOff().toLocalDate()), When.clock(o.cutOff().toLocalTime()), o.seller().name(),
                    o.seller().contact().phone().orElse(""), When.day(o.delivery()),
                    o.window().map(CalendarSheet::hours).orElse(""), new Cents(o.payable()).toString(), BOX, BOX, BOX));
        }
        long all = orders.stream().mapToLong(PurchaseOrder::payable).sum();
        rows.add(Row.total("", "", "All orders, with fees", "", "", "", new Cents(all).toString(), "", "", ""));
        return new Block.Table(List.of(Column.words("Order by", 10), Column.words("at", 6), Column.words("Vendor", 40),
                Column.words("Telephone", 10), Column.words("Comes", 10), Column.words("between", 10),
                Column.figure("To pay", 9), Column.mark("Sent", 5), Column.mark("Confirmed", 5), Column.mark("Came", 5)), rows);
    }

    /** {@code 7:00-10:30}. */
    private static String hours(croftboard.book.Vendor.Window w) {
        return String.format(java.util.Locale.ROOT, "%d:%02d-%d:%02d", w.from().getHour(), w.from().getMinute(),
                w.to().getHour(), w.to().getMinute());
    }

    private static Data data(List<PurchaseOrder> orders, List<Seasons.Event> events) {
        Data.Building data = Data.of("what", "order", "name", "order_by", "date", "from", "to", "telephone", "packs",
                "to_pay_usd", "sent", "confirmed", "came");
        orders.forEach(o -> data.row("order", o.number(), o.seller().name(), o.cutOff(), o.delivery(),
                o.window().map(w -> w.from().toString()).orElse(""), o.window().map(w -> w.to().toString()).orElse(""),
                o.seller().contact().phone().orElse(""), OrderSheets.packs(o), OrderSheets.dollars(o.payable()), "", "", ""));
        events.forEach(e -> data.row("event", "", e.name(), "", e.date(), e.service().map(Object::toString).orElse(""), "",
                "", "", "", "", "", ""));
        return data.done();
    }
}
