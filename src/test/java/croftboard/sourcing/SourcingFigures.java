package croftboard.sourcing;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;

/** Prints the relaxation of random weeks: {@code SourcingFigures SEED...}. */
public final class SourcingFigures {
    private SourcingFigures() { }

    public static void main(String[] args) {
        for (String seed : args) {
            WeekProblem week = RandomWeek.week(Long.parseLong(seed));
            long t0 = System.nanoTime();
            Natives.available();
            long t1 = System.nanoTime();
            Relaxation r = JointRelaxation.of(week).orElseThrow();
            long t2 = System.nanoTime();
            System.out.printf("seed %s natives %d ms, bound %.2f local worth %.3f in %d ms%n", seed, (t1 - t0) / 1000000,
                    r.boundCents() / 100.0, r.localWorth(), (t2 - t1) / 1000000);
        }
    }
}
