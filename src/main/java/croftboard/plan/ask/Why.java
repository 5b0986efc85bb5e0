package croftboard.plan.ask;

import croftboard.need.Account;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Why a plan is as it is. */
public sealed interface Why {
    /**
     * Why a dish stands where it stands.
     *
     * @param made past: nothing else can stand there any more
     * @param kept a manager has kept it there
     * @param with the account of the plan. @param without the same with nothing in that place and the orders made anew
     * @param minutes by station name, batches of components counted: what goes with the dish
     * @param promises broken without it and kept with it
     * @param usesUp packs bought anyway of which more would be left over without it
     * @param others what else could stand there, best first; empty when nothing can
     * @param looked how many other dishes were tried
     * @param tooNear how many of them stand too near elsewhere in the week
     */
    record Dish(WeekPlan.Served row, boolean made, boolean kept, Account with, Account without, List<Minutes> minutes,
            List<WeekPlan.Promise> promises, List<UsedUp> usesUp, List<Other> others, int looked,
            int tooNear) implements Why { }

    record Minutes(String station, long minutes) { }

    /** @param mg that would be left over more */
    record UsedUp(String item, long mg) { }

    /**
     * Another dish in the same place, all other dishes as they are, with the best orders found for it.
     *
     * @param lose cents that the plan would be worth less; below 0: more
     * @param money by which the account changes: sales, food, promises and the rest, cents
     * @param proved the orders are within a cent of the best that any orders can do
     */
    record Other(String recipe, long lose, long sales, long food, long promises, long rest, boolean proved) { }

    /**
     * Why an item is ordered from a vendor.
     *
     * @param lines ordered there
     * @param uses which dishes take it, most first
     * @param without what the plan would lose with the best orders that take nothing of it there, cents; empty: then
     *     something cannot be bought
     * @param instead packs that would be ordered more, or less, in its place
     * @param missing what could not be had without it, in words
     * @param offers of the item in the week, cheapest by weight first
     */
    record Order(String vendor, String item, List<WeekPlan.OrderLine> lines, List<Use> uses, Optional<Account> without,
            Account with, List<Instead> instead, List<String> missing, List<Choice> offers) implements Why { }

    record Use(String recipe, String slot, long mg) { }

    record Instead(String vendor, LocalDate delivery, String item, String pack, int before, int after) { }

    /** @param bought packs in the plan */
    record Choice(String vendor, LocalDate delivery, String pack, long priceCents, long packMg, int most, int bought, boolean local) { }

    /**
     * What the promises of the week cost.
     *
     * @param promises dearest first
     */
    record Week(long value, List<Promise> promises) implements Why { }

    /**
     * @param costs what the week could be worth more if nobody had promised it, promises apart, as far as a short search
     *     finds; cents
     * @param broken price of where it is broken all the same, cents
     * @param carriedBy dishes or vendors that keep it, with on how many days or with how much money
     */
    record Promise(String say, long costs, long broken, List<String> carriedBy, Carried how) { }

    /** What {@code carriedBy} names: recipes, vendors, nothing. */
    enum Carried { DISHES, VENDORS, NOTHING }
}
