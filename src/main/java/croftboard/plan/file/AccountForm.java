package croftboard.plan.file;

import croftboard.need.Account;

/** The value of a plan, line by line. */
final class AccountForm {
    private AccountForm() { }

    static Out write(Account account) {
        return new Out().whole("salesCents", account.sales()).whole("eventSalesCents", account.eventSales())
                .whole("leftCents", account.left()).whole("staplesCents", account.staples())
                .whole("purchasesCents", account.purchases()).whole("localPurchasesCents", account.localPurchases())
                .whole("unclassifiedCents", account.unclassified()).whole("keptCents", account.kept())
                .whole("wasteCents", account.waste()).whole("feesCents", account.fees())
                .whole("overtimeCents", account.overtime()).rows("broken", account.broken(), AccountForm::write);
    }

    static Account read(In in) throws Unreadable {
        return new Account(in.number("salesCents"), in.number("eventSalesCents"), in.number("leftCents"),
                in.number("staplesCents"), in.number("purchasesCents"), in.number("localPurchasesCents"),
                in.number("unclassifiedCents"), in.number("keptCents"), in.number("wasteCents"), in.number("feesCents"),
                in.number("overtimeCents"), in.rows("broken", AccountForm::broken));
    }

    private static Out write(Account.Broken row) {
        return new Out().name("promise", row.promise()).whole("rule", row.rule()).whole("day", row.day())
                .whole("amount", row.amount()).whole("costCents", row.cents());
    }

    private static Account.Broken broken(In in) throws Unreadable {
        return new Account.Broken(in.name("promise", Account.Promise.class), in.small("rule"), in.small("day"),
                in.number("amount"), in.number("costCents"));
    }
}
