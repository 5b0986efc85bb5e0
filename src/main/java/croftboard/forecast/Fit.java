package croftboard.forecast;

import croftboard.measure.IsoWeek;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The values of {@link Unknowns} that make the days as they were, and what is believed beforehand, most likely together.
 * Newton's method: the sentences of {@link Balance} are the straight lines that lie closest to the days' likelihoods.
 */
final class Fit {
    private static final int ROUNDS = 30;
    private static final double SETTLED = 1e-6;
    private static final double LONGEST_STEP = 1;
    private static final double FAR = 3.5;
    private final List<Observation> seen;
    private final Prior prior;
    private final Unknowns unknowns;
    private final int[][] parts;
    private final double[][] factors;
    private final double[] base;
    private final Evidence[] evidence;
    private final Map<String, Double> spread = new TreeMap<>();
    private double dishes = Beliefs.DISH;
    private double[] values;
    private Balance balance;

    Fit(Prior prior, DayCurve curve, List<Observation> seen, IsoWeek next) {
        this.prior = prior;
        this.seen = seen;
        IsoWeek first = seen.isEmpty() ? next : IsoWeek.of(seen.get(0).date());
        unknowns = new Unknowns(prior, first, next, seen);
        parts = new int[seen.size()][];
        factors = new double[seen.size()][];
        base = new double[seen.size()];
        evidence = new Evidence[seen.size()];
        for (int i = 0; i < seen.size(); i++) {
            set(i, seen.get(i), curve);
        }
        prior.lines().forEach((id, line) -> spread.put(id, Spread.before(line)));
        values = new double[unknowns.size()];
        balance = new Balance(unknowns.size());
        settle();
    }

    private void set(int i, Observation o, DayCurve curve) {
        IsoWeek week = IsoWeek.of(o.date());
        int[] own = unknowns.parts(o);
        int[] season = unknowns.seasonParts();
        parts[i] = Arrays.copyOf(own, own.length + season.length);
        factors[i] = new double[parts[i].length];
        Arrays.fill(factors[i], 0, own.length, 1);
        System.arraycopy(season, 0, parts[i], own.length, season.length);
        System.arraycopy(Unknowns.waves(week.week()), 0, factors[i], own.length, season.length);
        base[i] = StrictMath.log(prior.lines().get(o.line()).mean().get(o.date().getDayOfWeek())
                * prior.factor().applyAsDouble(week) * prior.dishes().get(o.dish()).draw());
        evidence[i] = Evidence.of(o, curve);
    }

    private void settle() {
        for (int round = 0; round < ROUNDS; round++) {
            double[] was = values;
            step();
            double moved = 0;
            for (int u = 0; u < values.length; u++) {
                moved = Math.max(moved, Math.abs(values[u] - was[u]));
            }
            if (moved < SETTLED) {
                return;
            }
            spreads();
        }
    }

    private double sum(int i) {
        double sum = base[i];
        for (int k = 0; k < parts[i].length; k++) {
            sum += factors[i][k] * values[parts[i][k]];
        }
        return sum;
    }

    double mean(int i) {
        return StrictMath.exp(sum(i));
    }

    private double shape(int i) {
        return 1 / spread.get(seen.get(i).line());
    }

    /** One step of Newton's, by way of the straight lines that lie closest to the curves at the present values. */
    private void step() {
        Balance now = new Balance(unknowns.size());
        unknowns.believe(now, dishes);
        for (int i = 0; i < seen.size(); i++) {
            double m = mean(i);
            double r = shape(i);
            double bend = evidence[i].bend(m, r);
            double way = evidence[i].slope(m, r) / bend;
            double far = Math.abs(evidence[i].far(m, r));
            double trust = far > FAR ? FAR / far : 1;
            now.add(parts[i], factors[i], sum(i) - base[i] + Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, way)),
                    bend * trust);
        }
        values = now.solve();
        balance = now;
    }

    /** How far dishes stand from their kin, and each line's days from their mean, as the present values show it. */
    private void spreads() {
        double sum = Beliefs.DISHES_BEFORE * Beliefs.DISH * Beliefs.DISH;
        double count = Beliefs.DISHES_BEFORE;
        for (String dish : seen.stream().map(Observation::dish).distinct().sorted().toList()) {
            int[] alone = unknowns.dishAlone(dish);
            sum += values[alone[0]] * values[alone[0]] + balance.variance(alone);
            count++;
        }
        dishes = Math.sqrt(sum / count);
        Map<String, List<Integer>> byLine = new TreeMap<>();
        for (int i = 0; i < seen.size(); i++) {
            byLine.computeIfAbsent(seen.get(i).line(), l -> new ArrayList<>()).add(i);
        }
        byLine.forEach((line, days) -> spread.put(line, Spread.of(prior.lines().get(line), days.stream()
                .filter(i -> !isFar(i))
                .map(i -> new Spread.Day(evidence[i], mean(i))).toList())));
    }

    boolean isFar(int i) {
        return Math.abs(evidence[i].far(mean(i), shape(i))) > FAR;
    }

    Unknowns unknowns() {
        return unknowns;
    }

    /** Logarithm by which the prior's figure is changed. */
    double sumOf(int[] of) {
        double sum = 0;
        for (int u : of) {
            sum += values[u];
        }
        return sum;
    }

    double value(int unknown) {
        return values[unknown];
    }

    double variance(int[] of) {
        return balance.variance(of);
    }

    /** How far a dish that was never sold may stand from its kin. */
    double dishes() {
        return dishes;
    }

    double spread(String line) {
        return spread.get(line);
    }
}
