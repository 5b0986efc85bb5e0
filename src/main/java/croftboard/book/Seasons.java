package croftboard.book;

import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The year: named seasons, local targets, demand, closures, events, crop calendar.
 *
 * @param named season name to weeks
 * @param demand by line id
 * @param demandFactors weeks and the factor on every line's mean; 1 where none holds
 * @param closures by date, with the reason
 * @param learned figures that hold instead of the manager's demand and the recipes' draws, where there are any
 * @param overrides the manager's own figures, which hold instead of both
 */
public record Seasons(Map<String, WeekRange> named, List<Target> targets, Map<String, LineDemand> demand,
        List<DemandFactor> demandFactors, Map<LocalDate, String> closures, List<Event> events, List<Crop> crops,
        Optional<Learned> learned, List<ManagersFigure> overrides) {

    /** A year of which nothing was learned. */
    public Seasons(Map<String, WeekRange> named, List<Target> targets, Map<String, LineDemand> demand,
            List<DemandFactor> demandFactors, Map<LocalDate, String> closures, List<Event> events, List<Crop> crops) {
        this(named, targets, demand, demandFactors, closures, events, crops, Optional.empty(), List.of());
    }

    /** @param local promised share of food money, 0 to 1 */
    public record Target(WeekRange weeks, Ratio local) { }

    /** @param cv coefficient of variation of one day. @param mean portions by weekday, before the dish's draw */
    public record LineDemand(Ratio cv, Map<DayOfWeek, Ratio> mean) { }

    public record DemandFactor(WeekRange weeks, Ratio times) { }

    /**
     * A meal beside the case.
     *
     * @param overage share made above the guarantee
     * @param price cents a head
     */
    public record Event(String id, String name, LocalDate date, Optional<LocalTime> service, int guarantee,
            Ratio overage, Cents price, String diets, List<Course> menu) {

        /** The guarantee and what is made above it; exact. */
        public Ratio heads() {
            return Ratio.ONE.plus(overage).times(guarantee);
        }

        /** Portions of a course: its share of the heads, rounded up. What is made of it may be more, by the batch step. */
        public int portions(Course course) {
            return Math.toIntExact(course.share().times(heads()).ceil());
        }
    }

    /**
     * @param share of the heads that eat it
     * @param dish fixed dish; empty: the plan chooses
     * @param diet needed when the plan chooses
     */
    public record Course(String id, String course, Ratio share, Optional<String> dish,
            Optional<Promises.Diet> diet) { }

    public record Crop(String crop, String item, WeekRange weeks, String region, String source) { }

    /** The promised local share of that week; zero when no target holds. */
    public Ratio targetFor(IsoWeek week) {
        return targets.stream().filter(t -> t.weeks().holds(week)).map(Target::local).findFirst().orElse(Ratio.ZERO);
    }

    public Ratio demandFactorFor(IsoWeek week) {
        return demandFactors.stream().filter(f -> f.weeks().holds(week)).map(DemandFactor::times)
                .findFirst().orElse(Ratio.ONE);
    }

    /** Portions that are expected of a dish of average draw: the manager's own figure, else the forecast. */
    public Ratio expected(String line, DayOfWeek day, IsoWeek week) {
        return override(line, day, week).map(ManagersFigure::portions).orElseGet(() -> forecast(line, day, week));
    }

    public Optional<ManagersFigure> override(String line, DayOfWeek day, IsoWeek week) {
        return overrides.stream().filter(o -> o.line().equals(line) && o.day() == day && o.week().equals(week)).findFirst();
    }

    /** The learned figure, else that of the book, times the week's factor; the manager's own figures aside. */
    public Ratio forecast(String line, DayOfWeek day, IsoWeek week) {
        return learnedLine(line).flatMap(l -> Optional.ofNullable(l.days().get(day))).map(Learned.Day::portions)
                .orElseGet(() -> demand.containsKey(line) ? demand.get(line).mean().getOrDefault(day, Ratio.ZERO) : Ratio.ZERO)
                .times(factor(week));
    }

    private Ratio factor(IsoWeek week) {
        return learned.stream().flatMap(l -> l.weeks().stream()).filter(f -> f.weeks().holds(week)).map(DemandFactor::times)
                .findFirst().orElseGet(() -> demandFactorFor(week));
    }

    private Optional<Learned.Line> learnedLine(String line) {
        return learned.flatMap(l -> Optional.ofNullable(l.lines().get(line)));
    }

    /** Coefficient of variation of one day of the line, learned or of the book. */
    public Ratio variation(String line) {
        return learnedLine(line).map(Learned.Line::cv).orElseGet(() -> demand.get(line).cv());
    }

    /** How well a dish sells against the line's mean, learned or as its recipe states. */
    public Ratio draw(Recipe dish) {
        return learned.flatMap(l -> Optional.ofNullable(l.dishes().get(dish.id()))).map(Learned.Dish::draw)
                .orElseGet(() -> dish.sale().orElseThrow().draw());
    }
}
