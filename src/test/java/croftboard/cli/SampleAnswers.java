package croftboard.cli;

import croftboard.book.Book;
import croftboard.measure.Ratio;
import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Another plan of the small kitchen and answers to questions about it, made by hand. Figures are invented. */
public final class SampleAnswers {
    private SampleAnswers() { }

    /** The sample plan with another dish on Tuesday, an order gone, one new and one changed. */
    public static WeekPlan other(Book book) {
        WeekPlan p = SamplePlan.complete(book);
        List<WeekPlan.Served> menu = new ArrayList<>(p.menu());
        WeekPlan.Served tue = menu.get(1);
        menu.set(1, new WeekPlan.Served(tue.slot(), tue.line(), tue.days(), Optional.of("lentil-bake"), 44, 36_900, 700, 130,
                List.of(new WeekPlan.Production(tue.days().get(0), tue.days().get(0), tue.days().get(0).plusDays(2),
                        Ratio.of(3, 2), 44)), "", false));
        List<WeekPlan.Order> orders = new ArrayList<>(p.orders());
        WeekPlan.Order farm = orders.get(1);
        orders.set(1, new WeekPlan.Order(farm.vendor(), farm.delivery().plusDays(2), farm.cutOff().plusDays(2), farm.lines(),
                farm.total(), farm.minimum(), farm.toMinimum(), farm.fee()));
        WeekPlan.Order depot = orders.get(0);
        List<WeekPlan.OrderLine> lines = new ArrayList<>(depot.lines());
        WeekPlan.OrderLine lentil = lines.remove(3);
        lines.add(new WeekPlan.OrderLine(lentil.item(), lentil.pack(), 3, lentil.packMg(), lentil.price(), 9_600,
                lentil.locality(), lentil.whyLocal(), lentil.onList(), false));
        orders.set(0, new WeekPlan.Order(depot.vendor(), depot.delivery(), depot.cutOff(), lines, 28_100, depot.minimum(),
                depot.toMinimum(), depot.fee()));
        Account a = p.account();
        Account account = new Account(299_500, a.eventSales(), 7_900, 2_650, 48_700, a.localPurchases(), a.unclassified(),
                a.kept(), a.waste(), a.fees(), a.overtime(), a.broken().subList(0, 1));
        List<WeekPlan.Promise> promises = new ArrayList<>(p.promises());
        promises.set(1, new WeekPlan.Promise(promises.get(1).id(), promises.get(1).say(), promises.get(1).day(), true, 0, 0));
        WeekPlan.Share s = p.share();
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), menu, p.batches(), orders, p.needs(), p.flows(),
                p.surplus(), account, promises, new WeekPlan.Share(s.definition(), s.target(), s.local(), s.notLocal() + 3_200,
                s.unclassified()), p.proof(), p.missing(), p.swaps());
    }
}
