package croftboard.menu;

import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;

/** Prints search figures on random weeks: {@code MenuFigures MEMORY MILLIS LOCAL_WORTH SEED...}. */
public final class MenuFigures {
    private MenuFigures() { }

    public static void main(String[] args) {
        int memory = Integer.parseInt(args[0]);
        long millis = Long.parseLong(args[1]);
        double worth = Double.parseDouble(args[2]);
        for (int a = 3; a < args.length; a++) {
            WeekProblem week = RandomWeek.week(Long.parseLong(args[a]));
            MenuSearch search = new MenuSearch(week, worth);
            long t0 = System.nanoTime();
            MenuSearch.Found greedy = search.greedy();
            long t1 = System.nanoTime();
            MenuSearch.Found found = search.search(greedy.choice(), 1, new MenuSearch.Effort(0, millis, memory), () -> false);
            long t2 = System.nanoTime();
            System.out.printf("seed %s offers %d deliveries %d greedy %d in %d ms -> %d (%b) in %d ms, %d tries%n", args[a],
                    week.offers().size(), week.deliveries().size(), greedy.worthCents() / 100, (t1 - t0) / 1000000,
                    found.worthCents() / 100, found.keepsMusts(), (t2 - t1) / 1000000, found.tries());
        }
    }
}
