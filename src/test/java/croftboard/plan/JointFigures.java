package croftboard.plan;

import croftboard.menu.MenuSearch;
import croftboard.need.Account;
import croftboard.need.RandomWeek;
import croftboard.need.WeekProblem;
import croftboard.sourcing.JointRelaxation;
import croftboard.sourcing.Relaxation;
import croftboard.sourcing.Sourcing;
import java.lang.management.ManagementFactory;

public final class JointFigures {
    private JointFigures() { }

    static double cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
    }

    public static void main(String[] args) {
        long tries = Long.parseLong(args[0]);
        int rounds = Integer.parseInt(args[1]);
        long joint = Long.parseLong(args[2]);
        String[] hots = args[3].split(",");
        for (int a = 4; a < args.length; a++) {
            WeekProblem week = RandomWeek.week(Long.parseLong(args[a]));
            double t0 = cpu();
            Relaxation r = JointRelaxation.of(week).orElseThrow();
            double t1 = cpu();
            MenuSearch search = new MenuSearch(week, r.localWorth());
            MenuSearch.Found menu = tries == 0 ? search.greedy() : search.search(search.greedy().choice(), 1,
                    new MenuSearch.Effort(tries, 0, (int) Math.max(4, Math.min(500, tries / 4000))), () -> false);
            double t2 = cpu();
            Sourcing sourcing = new Sourcing(week, r.localWorth());
            Sourcing.Orders orders = sourcing.search(menu.choice(), 1, rounds, () -> false);
            double t3 = cpu();
            System.out.printf("week %s bound %.0f lp %.1f s menu %.1f s %.0f orders %.1f s %.2f %b gap %.2f", args[a],
                    r.boundCents() / 100.0, t1 - t0, t2 - t1, menu.worthCents() / 100.0, t3 - t2,
                    orders.valueCents() / 100.0, orders.complete(), 100.0 * r.boundCents() / orders.valueCents() - 100);
            for (String hot : hots) {
                double t4 = cpu();
                String[] p = hot.split(":");
                long n = Long.parseLong(p[0]) * joint;
                JointSearch.Found s = new JointSearch(week, r.localWorth(), menu.choice(), orders.packs(), 1)
                        .run(n, 0, () -> false);
                double t5 = cpu();
                Sourcing.Orders better = sourcing.better(s.choice(), s.packs(), 1);
                System.out.printf(" | %s -> %.2f %.2f %b gap %.2f %.1f s %.0fk/s%n", hot,
                        Account.of(week, s.choice(), s.packs()).value() / 100.0, better.valueCents() / 100.0,
                        better.complete(), 100.0 * r.boundCents() / better.valueCents() - 100, t5 - t4,
                        s.tries() / (t5 - t4) / 1000);
            }
            System.out.println();
        }
    }
}
