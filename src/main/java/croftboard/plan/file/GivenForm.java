package croftboard.plan.file;

import croftboard.plan.Given;

/** What other weeks have decided for one. */
final class GivenForm {
    private GivenForm() { }

    static Out write(Given given) {
        return new Out().rows("orders", given.orders(), GivenForm::write).rows("lots", given.lots(), GivenForm::write)
                .rows("served", given.served(), GivenForm::write);
    }

    static Given read(In in) throws Unreadable {
        return new Given(in.rows("orders", GivenForm::ordered), in.rows("lots", GivenForm::lot),
                in.rows("served", GivenForm::served));
    }

    private static Out write(Given.Ordered row) {
        return new Out().text("vendor", row.vendor()).word("delivery", row.delivery()).text("item", row.item())
                .text("pack", row.pack()).whole("packs", row.packs()).whole("costCents", row.cents());
    }

    private static Given.Ordered ordered(In in) throws Unreadable {
        return new Given.Ordered(in.text("vendor"), in.date("delivery"), in.text("item"), in.text("pack"),
                in.small("packs"), in.number("costCents"));
    }

    private static Out write(Given.Lot row) {
        return new Out().text("item", row.item()).word("from", row.from()).word("until", row.until())
                .whole("leftMg", row.mg());
    }

    private static Given.Lot lot(In in) throws Unreadable {
        return new Given.Lot(in.text("item"), in.date("from"), in.date("until"), in.number("leftMg"));
    }

    private static Out write(Given.Served row) {
        return new Out().text("recipe", row.recipe()).word("start", row.start());
    }

    private static Given.Served served(In in) throws Unreadable {
        return new Given.Served(in.text("recipe"), in.date("start"));
    }
}
