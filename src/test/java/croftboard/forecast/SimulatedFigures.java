package croftboard.forecast;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Error and profit of what is learned in simulated kitchens, against the truth and against means of sales. */
final class SimulatedFigures {
    final List<Double> error = new ArrayList<>();
    final List<Double> signed = new ArrayList<>();
    final List<Double> dishError = new ArrayList<>();
    final List<Double> naive = new ArrayList<>();
    final List<Double> kitchen = new ArrayList<>();
    final List<Double> cv = new ArrayList<>();
    final List<Double> profit = new ArrayList<>();
    final List<Double> naiveProfit = new ArrayList<>();
    double best;
    double learned;
    double byNaive;
    long days;
    long soldOut;

    static SimulatedFigures of(int kitchens, int weeks, double runsOut) {
        SimulatedFigures all = new SimulatedFigures();
        for (int k = 0; k < kitchens; k++) {
            all.add(new SimulatedKitchen(1000 + k, weeks, runsOut), weeks);
        }
        return all;
    }

    private void add(SimulatedKitchen at, int weeks) {
        Learning found = new Learner(at.prior(), at.curve()).learn(at.seen, SimulatedKitchen.FIRST.plusWeeks(weeks));
        days += at.seen.size();
        soldOut += at.seen.stream().filter(Observation::soldOut).count();
        double season = found.season().isEmpty() ? 1 : found.season().get(SimulatedKitchen.FIRST.plusWeeks(weeks).week() - 1);
        double draws = found.dishes().values().stream().mapToDouble(Learning.Dish::draw).average().orElseThrow();
        List<Double> own = new ArrayList<>();
        Random random = new Random(at.seen.size());
        double bestHere = 0;
        double learnedHere = 0;
        double naiveHere = 0;
        for (String line : at.lines()) {
            for (DayOfWeek day : SimulatedKitchen.days()) {
                double truth = at.mean(line, day, weeks) * at.averageDraw();
                double got = found.lines().get(line).days().get(day).mean() * draws * season;
                own.add(Math.abs(got / truth - 1));
                signed.add(got / truth - 1);
                double sales = at.seen.stream().filter(o -> o.line().equals(line) && o.date().getDayOfWeek() == day)
                        .mapToInt(Observation::sold).average().orElseThrow();
                naive.add(sales / truth - 1);
                String dish = at.dish();
                Demand known = at.demand(line, day, weeks, dish);
                dishError.add(Math.abs(season * found.mean(line, day, dish) / known.mean() - 1));
                cv.add(found.lines().get(line).cv() / (known.standardDeviation() / known.mean()) - 1);
                double ratio = 0.45 + 0.4 * random.nextDouble();
                bestHere += profit(known, Newsvendor.quantity(known, ratio), ratio);
                learnedHere += profit(known, Newsvendor.quantity(Demand.ofDay(season * found.mean(line, day, dish),
                        found.lines().get(line).cv()), ratio), ratio);
                naiveHere += profit(known, Newsvendor.quantity(Demand.ofDay(sales, 0.26), ratio), ratio);
            }
        }
        error.addAll(own);
        kitchen.add(median(own));
        best += bestHere;
        learned += learnedHere;
        byNaive += naiveHere;
        profit.add(learnedHere / bestHere);
        naiveProfit.add(naiveHere / bestHere);
    }

    /** A portion sold earns {@code ratio}, one left over costs {@code 1 - ratio}. */
    private static double profit(Demand known, int made, double ratio) {
        double sold = known.expectedSales(made);
        return ratio * sold - (1 - ratio) * (made - sold);
    }

    static double median(List<Double> of) {
        return of.stream().sorted().toList().get(of.size() / 2);
    }

    static double mean(List<Double> of) {
        return of.stream().mapToDouble(d -> d).average().orElseThrow();
    }

    String say() {
        return String.format(java.util.Locale.ROOT, "days %d, ran out %.1f %%%nline means: median error %.2f %%, mean error %.2f %%, bias %.2f %%; "
                + "kitchens' medians within 5 %%: %.0f %%%ndish on line: median error %.2f %%; cv: bias %.1f %%, median %.1f %%%n"
                + "naive mean of sales: bias %.2f %%, median %.2f %%%nprofit %.2f %%, worst kitchen %.2f %%; naive %.2f %%%n",
                days, 100.0 * soldOut / days, 100 * median(error), 100 * mean(error), 100 * mean(signed),
                100.0 * kitchen.stream().filter(k -> k <= 0.05).count() / kitchen.size(), 100 * median(dishError), 100 * mean(cv),
                100 * median(cv), 100 * mean(naive), 100 * median(naive), 100 * learned / best,
                100 * profit.stream().mapToDouble(d -> d).min().orElseThrow(), 100 * byNaive / best);
    }

    public static void main(String[] args) {
        int kitchens = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        int weeks = args.length > 1 ? Integer.parseInt(args[1]) : 12;
        System.out.print(of(kitchens, weeks, 0.3).say());
    }
}
