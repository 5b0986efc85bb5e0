package croftboard.plan.ask;

import croftboard.need.Account;

/** What food costs in an account. */
final class Food {
    private Food() { }

    /** Orders, staples, waste and fees, less surplus that keeps: cents. */
    static long cost(Account a) {
        return a.purchases() + a.staples() + a.waste() + a.fees() - a.kept();
    }
}
