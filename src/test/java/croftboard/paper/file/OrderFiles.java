package croftboard.paper.file;

import croftboard.paper.PaperContext;
import croftboard.paper.order.PurchaseOrder;

/** The files that go out with an order, as texts, for tests of other rooms. */
public final class OrderFiles {
    private OrderFiles() { }

    public static String xml(PurchaseOrder order) {
        return OrderXml.of(order);
    }

    public static String calendar(PaperContext context) {
        return CalendarFile.of(context);
    }
}
