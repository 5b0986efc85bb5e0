package croftboard.forecast;

import croftboard.measure.IsoWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Learns demand from what was seen: the values of {@link Unknowns} that make the days as they were, and what is believed
 * beforehand, most likely together. Days that ran out count as "at least", or up to the hour when it is known. The same
 * days give the same figures, in whatever order they come.
 */
public final class Learner {
    private static final int OLDEST_WEEKS = 156;
    private final Prior prior;
    private final DayCurve curve;

    public Learner(Prior prior, DayCurve curve) {
        this.prior = prior;
        this.curve = curve;
    }

    /** @param observations of any weeks. @param next week that is forecast: only earlier days are learned from */
    public Learning learn(List<Observation> observations, IsoWeek next) {
        List<Learning.Passed> passed = new ArrayList<>();
        List<Observation> seen = new ArrayList<>();
        LocalDate oldest = next.plusWeeks(-OLDEST_WEEKS).monday();
        for (Observation o : observations.stream().sorted().toList()) {
            if (o.date().isBefore(next.monday()) && !o.date().isBefore(oldest)) {
                whyNot(o).ifPresentOrElse(why -> passed.add(new Learning.Passed(o, why)), () -> seen.add(o));
            }
        }
        return new Findings(prior, seen, new Fit(prior, curve, seen, next), next).learning(passed);
    }

    Optional<String> whyNot(Observation o) {
        if (!o.teaches()) {
            return Optional.of(o.aside().orElse("nothing was prepared"));
        }
        Prior.Line line = prior.lines().get(o.line());
        if (line == null || !prior.dishes().containsKey(o.dish())) {
            return Optional.of("the book has no such " + (line == null ? "line" : "dish") + " any more");
        }
        return line.mean().containsKey(o.date().getDayOfWeek()) ? Optional.empty()
                : Optional.of("the book expects nothing of that line on that weekday");
    }
}
