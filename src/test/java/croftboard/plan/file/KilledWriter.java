package croftboard.plan.file;

import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import java.nio.file.Path;
import java.util.List;

/** A process that writes and posts plans until somebody ends it, and says on its output what it has finished. */
final class KilledWriter {
    private KilledWriter() { }

    /** @param args the book's folder, first seed, number of plans */
    public static void main(String[] args) {
        PlanStore store = new PlanStore(Path.of(args[0]));
        long seed = Long.parseLong(args[1]);
        long last = seed + Long.parseLong(args[2]);
        System.out.println("begun");
        for (; seed < last; seed++) {
            int version = store.writeDraft(plan(seed));
            System.out.println(version + " " + seed);
            if (seed % 3 == 0) {
                store.post(PlanStoreKillTest.WEEK, version);
                System.out.println("posted " + version);
            }
        }
    }

    static WeekPlan plan(long seed) {
        WeekPlan p = RandomPlan.of(seed, new IsoWeek(2027, 33));
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu(), p.batches(), p.orders(), p.needs(), p.flows(),
                p.surplus(), p.account(), p.promises(), p.share(), p.proof(), List.of(), p.swaps());
    }
}
