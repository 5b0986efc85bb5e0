package croftboard.paper.file;

import croftboard.book.Contact;
import croftboard.paper.order.PurchaseOrder;
import java.math.BigDecimal;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * An order as UBL 2.1 (OASIS Universal Business Language, schema {@code UBL-Order-2.1}): line amount = packs x price, total
 * = lines + delivery fee. A pack is counted by {@code C62} (one) of UN/ECE Recommendation 20; its weight is a property.
 */
final class OrderXml {
    private static final String UBL = "urn:oasis:names:specification:ubl:schema:xsd:";
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final String CURRENCY = "USD";
    private final Markup out = new Markup();
    private final PurchaseOrder order;

    private OrderXml(PurchaseOrder order) {
        this.order = order;
    }

    static String of(PurchaseOrder order) {
        return new OrderXml(order).write();
    }

    private String write() {
        out.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n").open("Order", "xmlns", UBL + "Order-2", "xmlns:cac",
                UBL + "CommonAggregateComponents-2", "xmlns:cbc", UBL + "CommonBasicComponents-2");
        basic("UBLVersionID", "2.1").basic("ID", order.number());
        basic("IssueDate", order.printed().toLocalDate().toString()).basic("IssueTime", TIME.format(order.printed()));
        basic("Note", order.version() + (order.posted() ? "" : " draft: not an order until the plan is posted"));
        basic("Note", "Order by " + order.cutOff() + " " + zone(order.zone()));
        order.notes().forEach(n -> basic("Note", n));
        basic("DocumentCurrencyCode", CURRENCY);
        order.customer().ifPresent(c -> basic("CustomerReference", c));
        line().open("cac:ValidityPeriod");
        basic("EndDate", order.cutOff().toLocalDate().toString()).basic("EndTime", TIME.format(order.cutOff()));
        out.close("cac:ValidityPeriod");
        party("cac:BuyerCustomerParty", order.buyer());
        party("cac:SellerSupplierParty", order.seller());
        delivery();
        if (order.fee() > 0) {
            line().open("cac:AllowanceCharge");
            basic("ChargeIndicator", "true").basic("AllowanceChargeReason", "Delivery fee");
            amount("Amount", order.fee());
            out.close("cac:AllowanceCharge");
        }
        totals();
        for (int i = 0; i < order.lines().size(); i++) {
            goods(i + 1, order.lines().get(i));
        }
        return line().close("Order").raw("\n").toString();
    }

    private Markup line() {
        return out.raw("\n");
    }

    private OrderXml basic(String name, String text) {
        line().element("cbc:" + name, text);
        return this;
    }

    private void amount(String name, long cents) {
        line().element("cbc:" + name, BigDecimal.valueOf(cents, 2).toPlainString(), "currencyID", CURRENCY);
    }

    private static String zone(ZoneId zone) {
        return "(" + zone.getId() + ")";
    }

    private void party(String role, PurchaseOrder.Party party) {
        line().open(role).open("cac:Party");
        line().open("cac:PartyIdentification").element("cbc:ID", party.id()).close("cac:PartyIdentification");
        line().open("cac:PartyName").element("cbc:Name", party.name()).close("cac:PartyName");
        address("cac:PostalAddress", party);
        Contact c = party.contact();
        if (c.person().isPresent() || c.phone().isPresent() || c.email().isPresent()) {
            line().open("cac:Contact");
            c.person().ifPresent(p -> basic("Name", p));
            c.phone().ifPresent(p -> basic("Telephone", p));
            c.email().ifPresent(e -> basic("ElectronicMail", e));
            out.close("cac:Contact");
        }
        out.close("cac:Party").close(role);
    }

    private void address(String name, PurchaseOrder.Party party) {
        if (party.place().town().isEmpty() && party.contact().address().isEmpty()) {
            return;
        }
        line().open(name);
        if (!party.place().town().isEmpty()) {
            basic("CityName", party.place().town()).basic("CountrySubentityCode", party.place().state());
        }
        party.contact().address().forEach(l -> line().open("cac:AddressLine").element("cbc:Line", l).close("cac:AddressLine"));
        out.close(name);
    }

    private void delivery() {
        line().open("cac:Delivery");
        address("cac:DeliveryAddress", order.buyer());
        line().open("cac:RequestedDeliveryPeriod");
        String date = order.delivery().toString();
        basic("StartDate", date);
        order.window().ifPresent(w -> basic("StartTime", TIME.format(w.from())));
        basic("EndDate", date);
        order.window().ifPresent(w -> basic("EndTime", TIME.format(w.to())));
        out.close("cac:RequestedDeliveryPeriod").close("cac:Delivery");
    }

    private void totals() {
        line().open("cac:AnticipatedMonetaryTotal");
        amount("LineExtensionAmount", order.total());
        if (order.fee() > 0) {
            amount("ChargeTotalAmount", order.fee());
        }
        amount("PayableAmount", order.payable());
        out.close("cac:AnticipatedMonetaryTotal");
    }

    private void goods(int number, PurchaseOrder.Line goods) {
        line().open("cac:OrderLine");
        goods.accept().forEach(a -> basic("Note", "Instead: " + a.say() + ". " + PurchaseOrder.limits(a, goods) + "."));
        line().open("cac:LineItem");
        basic("ID", Integer.toString(number));
        line().element("cbc:Quantity", Integer.toString(goods.packs()), "unitCode", "C62");
        amount("LineExtensionAmount", goods.cost());
        line().open("cac:Price");
        amount("PriceAmount", goods.price());
        line().element("cbc:BaseQuantity", "1", "unitCode", "C62").close("cac:Price");
        line().open("cac:Item");
        basic("Description", goods.article() + ", " + goods.pack()).basic("Name", goods.article());
        line().open("cac:BuyersItemIdentification").element("cbc:ID", goods.item()).close("cac:BuyersItemIdentification");
        goods.number().ifPresent(n -> line().open("cac:SellersItemIdentification").element("cbc:ID", n)
                .close("cac:SellersItemIdentification"));
        property("Pack", goods.pack());
        property("Grams a pack", BigDecimal.valueOf(goods.packMg(), 3).stripTrailingZeros().toPlainString());
        out.close("cac:Item").close("cac:LineItem").close("cac:OrderLine");
    }

    private void property(String name, String value) {
        line().open("cac:AdditionalItemProperty");
        basic("Name", name).basic("Value", value);
        out.close("cac:AdditionalItemProperty");
    }
}
