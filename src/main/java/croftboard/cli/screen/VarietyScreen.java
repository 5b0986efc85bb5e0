package croftboard.cli.screen;

import croftboard.plan.Rotation;
import croftboard.plan.RotationVariety;
import java.time.DayOfWeek;
import java.time.format.TextStyle;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Variety, counted: dishes that come back on their weekday, main ingredients and methods within days, what a member sees. */
public final class VarietyScreen implements Screen {
    private static final int MOST_DISHES = 8;
    private final RotationShown shown;
    private final RotationVariety variety;

    public VarietyScreen(RotationShown shown) {
        this.shown = shown;
        variety = shown.rotation().variety();
    }

    @Override
    public String name() {
        return "variety";
    }

    @Override
    public void print(Page page) {
        page.heading("Variety");
        page.say(variety.dishes() + " different dishes in " + variety.servings() + " places of the offer.");
        members(page);
        sameWeekday(page);
        near(page);
        fresh(page);
        swaps(page);
    }

    private void members(Page page) {
        variety.members().stream().filter(m -> m.days().equals(Rotation.MEMBER_DAYS)).findFirst().ifPresent(m -> page.say(
                "Somebody who eats here every " + pair(m) + " sees " + m.dishes() + " different dishes, " + m.mains()
                        + " of them " + course() + "; most often " + name(m.mostOften()) + ", on "
                        + RotationHeadline.count(m.times(), "day") + "."));
        variety.members().stream().min(Comparator.comparingInt(RotationVariety.Member::dishes))
                .filter(m -> !m.days().equals(Rotation.MEMBER_DAYS)).ifPresent(m -> page.say("The fewest are seen every "
                        + pair(m) + ": " + m.dishes() + ", " + m.mains() + " of them " + course() + "."));
    }

    private String course() {
        return "from the course \"" + shown.book().kitchen().lines().get(0).course() + "\"";
    }

    private static String pair(RotationVariety.Member m) {
        return m.days().stream().sorted().map(VarietyScreen::day).collect(Collectors.joining(" and "));
    }

    private static String day(DayOfWeek day) {
        return day.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    private String name(String recipe) {
        return shown.names().recipe(recipe);
    }

    private void sameWeekday(Page page) {
        List<RotationVariety.SameWeekday> rows = variety.sameWeekday();
        if (rows.isEmpty()) {
            page.say("No dish comes back on the weekday that it had before.");
            return;
        }
        String some = rows.stream().sorted(Comparator.comparingInt(RotationVariety.SameWeekday::times).reversed()
                .thenComparing(RotationVariety.SameWeekday::day).thenComparing(RotationVariety.SameWeekday::recipe))
                .limit(MOST_DISHES).map(r -> name(r.recipe()) + " (" + day(r.day()) + ", " + r.times() + " weeks)")
                .collect(Collectors.joining("; "));
        page.say("On the same weekday in more than one week: " + RotationHeadline.count(rows.size(), "dish").replace("dishs",
                "dishes") + ": " + some + (rows.size() > MOST_DISHES ? "; and " + (rows.size() - MOST_DISHES) + " more" : "")
                + ".");
    }

    private void near(Page page) {
        TextTable table = new TextTable(TextTable.Column.words("in the same course, within"),
                TextTable.Column.figure("same main ingredient"), TextTable.Column.figure("same method"),
                TextTable.Column.figure("of dishes"));
        for (RotationVariety.Near main : variety.near()) {
            if (main.trait().equals("main")) {
                int method = variety.near().stream().filter(n -> n.trait().equals("method") && n.days() == main.days())
                        .mapToInt(RotationVariety.Near::count).findFirst().orElse(0);
                table.row(RotationHeadline.count(main.days(), "day"), Integer.toString(main.count()), Integer.toString(method),
                        Integer.toString(main.of()));
            }
        }
        page.gap();
        page.table(table);
    }

    private void fresh(Page page) {
        List<Rotation.NewDish> dishes = shown.rotation().newDishes();
        page.gap();
        if (!dishes.isEmpty()) {
            page.say("New to the cooks: " + dishes.stream().map(d -> name(d.recipe()) + " (from " + d.first() + ")")
                    .collect(Collectors.joining("; ")) + "." + shown.rotation().inputs().newAMonth()
                            .map(n -> " The kitchen file allows " + n + " a calendar month.").orElse(""));
        } else if (shown.book().kitchen().newDishesPerMonth().isPresent() && shown.rotation().inputs().newAMonth().isEmpty()) {
            page.say("No week has been posted yet, so nobody knows which dishes are new to the cooks: new_dishes_per_month is "
                    + "not looked at.");
        }
    }

    private void swaps(Page page) {
        if (shown.rotation().inputs().cycle().isEmpty()) {
            return;
        }
        List<Rotation.Swap> swaps = shown.rotation().swaps();
        page.subheading("What the calendar forces out of the cycle: " + (swaps.isEmpty() ? "nothing" : swaps.size()));
        if (!swaps.isEmpty()) {
            TextTable table = new TextTable(TextTable.Column.mark("week"), TextTable.Column.words("place"),
                    TextTable.Column.words("in place of"), TextTable.Column.words("stands"), TextTable.Column.words("because"));
            swaps.forEach(s -> table.row(s.week().toString(), s.slot(), name(s.was()), s.is().map(this::name)
                    .orElse("(nothing)"), s.why()));
            page.table(table);
        }
    }

    @Override
    public Rows rows() {
        Rows rows = new Rows("what", "dish_or_days", "count", "of");
        rows.add("different dishes", "", variety.dishes(), variety.servings());
        variety.members().forEach(m -> rows.add("dishes seen by a member", pair(m), m.dishes(), m.seen()));
        variety.sameWeekday().forEach(s -> rows.add("weeks on the same weekday", s.recipe() + ", " + day(s.day()), s.times(),
                shown.rotation().weeks().size()));
        variety.near().forEach(n -> rows.add("same " + n.trait() + " in the course within days", Integer.toString(n.days()),
                n.count(), n.of()));
        shown.rotation().newDishes().forEach(d -> rows.add("new dish from week", d.recipe() + ", " + d.first(), 1, 1));
        shown.rotation().swaps().forEach(s -> rows.add("swapped out of the cycle: " + s.why(), s.week() + " " + s.slot() + ", "
                + s.was(), 1, 1));
        return rows;
    }
}
