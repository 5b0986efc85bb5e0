package croftboard.paper.served;

import croftboard.book.Recipe;
import croftboard.measure.CookAmounts;
import croftboard.measure.Ratio;
import croftboard.paper.PaperContext;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** What of the plan a day's logs are about. */
record LogDay(LocalDate date, List<WeekPlan.Order> orders, List<Made> made, List<OnOffer.Slot> served) {
    /** Words of heat and of cooling: where one stands, something was warm. */
    private static final Pattern WARM = Pattern.compile("(?i)\\b(cool\\w*|chill\\w*|ice bath|ice water|simmer\\w*|boil\\w*|bak(e|ed|ing)"
            + "|roast\\w*|fr(y|ies|ied|ying)|sweat\\w*|saut\\w*|sear\\w*|brown(s|ed|ing)?|blanch\\w*|steam\\w*|poach\\w*|brais\\w*"
            + "|stew\\w*|scald\\w*|cook\\w*|griddl\\w*|grill\\w*|char(s|red|ring)?|melt\\w*|toast\\w*|hot|warm\\w*|oven|kettle)\\b");

    /**
     * A making of the day.
     *
     * @param kept cold or for a later day, so that it must get cold
     * @param warm its steps speak of heat or of cooling
     */
    record Made(String id, String name, String amount, LocalDate useBy, boolean kept, boolean warm) { }

    static List<LogDay> of(PaperContext context) {
        WeekPlan plan = context.plan();
        SortedSet<LocalDate> dates = new TreeSet<>();
        plan.orders().forEach(o -> dates.add(o.delivery()));
        plan.batches().forEach(b -> dates.add(b.made()));
        plan.menu().forEach(s -> s.productions().forEach(p -> dates.add(p.made())));
        OnOffer offer = new OnOffer(context);
        offer.slots().forEach(s -> dates.addAll(s.served().days()));
        List<LogDay> days = new ArrayList<>();
        for (LocalDate date : dates) {
            if (context.filters().wants(date)) {
                days.add(new LogDay(date, plan.orders().stream().filter(o -> o.delivery().equals(date)).toList(),
                        made(context, date), offer.slots().stream().filter(s -> s.served().days().contains(date)).toList()));
            }
        }
        return days;
    }

    private static List<Made> made(PaperContext context, LocalDate date) {
        List<Made> made = new ArrayList<>();
        for (WeekPlan.Batch b : context.plan().batches()) {
            if (b.made().equals(date)) {
                made.add(made(context, b.recipe(), CookAmounts.mass(Ratio.of(b.mg(), 1000)), b.useBy(),
                        b.lastServed().isAfter(date)));
            }
        }
        for (WeekPlan.Served s : context.plan().menu()) {
            for (WeekPlan.Production p : s.productions()) {
                if (p.made().equals(date) && s.recipe().isPresent()) {
                    made.add(made(context, s.recipe().get(), p.portions() + " portions", p.useBy(),
                            p.lastServed().isAfter(date)));
                }
            }
        }
        return made;
    }

    private static Made made(PaperContext context, String id, String amount, LocalDate useBy, boolean later) {
        Optional<Recipe> recipe = Optional.ofNullable(context.book().recipes().get(id));
        boolean cold = recipe.map(r -> r.hold() == Recipe.Hold.COLD).orElse(true);
        return new Made(id, context.called().recipe(id), amount, useBy, cold || later, recipe.map(LogDay::warm).orElse(true));
    }

    private static boolean warm(Recipe recipe) {
        return recipe.steps().stream().anyMatch(s -> WARM.matcher(s.text()).find()
                || s.uses().keySet().stream().anyMatch(e -> e.contains("chill") || e.contains("oven") || e.contains("kettle")));
    }

    boolean hot(PaperContext context, OnOffer.Slot slot) {
        Recipe recipe = context.book().recipes().get(slot.dish());
        return recipe == null || recipe.hold() == Recipe.Hold.HOT;
    }
}
