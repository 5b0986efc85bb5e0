package croftboard.cli.screen;

import croftboard.plan.Rotation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** One part of a plan, for each week of a rotation. */
public final class EachWeekScreen implements Screen {
    private final RotationShown shown;
    private final Function<Shown, Screen> part;

    public EachWeekScreen(RotationShown shown, Function<Shown, Screen> part) {
        this.shown = shown;
        this.part = part;
    }

    @Override
    public String name() {
        return part.apply(shown.week(shown.rotation().weeks().get(0))).name();
    }

    @Override
    public void print(Page page) {
        for (Rotation.Week week : shown.rotation().weeks()) {
            page.subheading("Week " + week.week() + ", from " + Dates.full(week.week().monday()));
            part.apply(shown.week(week)).print(page);
        }
    }

    @Override
    public Rows rows() {
        Rows all = null;
        for (Rotation.Week week : shown.rotation().weeks()) {
            Rows own = part.apply(shown.week(week)).rows();
            if (all == null) {
                List<String> columns = new ArrayList<>(List.of("week"));
                columns.addAll(own.columns());
                all = new Rows(columns.toArray(String[]::new));
            }
            for (List<Object> row : own.rows()) {
                List<Object> cells = new ArrayList<>(List.of(week.week().toString()));
                cells.addAll(row);
                all.add(cells.toArray());
            }
        }
        return all;
    }
}
