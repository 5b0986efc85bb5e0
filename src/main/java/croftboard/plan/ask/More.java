package croftboard.plan.ask;

import croftboard.need.Account;
import croftboard.need.WeekProblem;
import croftboard.need.Workload;
import croftboard.plan.change.Problems;
import java.util.ArrayList;
import java.util.List;

/** More of a scarce thing, by its number in the problem. */
sealed interface More {
    /** The problem with so many more. */
    WeekProblem in(WeekProblem p, int more);

    record Pack(int offer) implements More {
        @Override
        public WeekProblem in(WeekProblem p, int more) {
            List<WeekProblem.Offer> offers = new ArrayList<>(p.offers());
            WeekProblem.Offer o = offers.get(offer);
            offers.set(offer, Problems.packs(o, o.minPacks(), o.maxPacks() + more));
            return Problems.withSupply(p, offers, p.deliveries());
        }
    }

    /** Hours of a station, or units of equipment, on top of what there is. */
    record Units(int resource, int period) implements More {
        private static final int HOUR = 60;

        @Override
        public WeekProblem in(WeekProblem p, int more) {
            return plus(p, (long) more * (byTheHour(p) ? HOUR : 1));
        }

        boolean byTheHour(WeekProblem p) {
            return p.resources().get(resource).hands() || resource == p.prices().receivingResource();
        }

        WeekProblem plus(WeekProblem p, long units) {
            WeekProblem.Resource r = p.resources().get(resource);
            long[] regular = r.regular().clone();
            regular[period] += units;
            List<WeekProblem.Resource> all = new ArrayList<>(p.resources());
            all.set(resource, new WeekProblem.Resource(r.id(), r.name(), r.hands(), r.period(), regular, r.overtime(),
                    r.overtimeCentsPerHour(), r.held()));
            return Problems.withResources(p, all);
        }
    }

    /** A dish on one more line. @param with the problem in which it may stand there */
    record Dish(WeekProblem with) implements More {
        @Override
        public WeekProblem in(WeekProblem p, int more) {
            return with;
        }
    }

    /** What a plan uses up to its limit, or nearly. */
    static List<More> scarce(WeekProblem p, int[] menu, int[] packs) {
        List<More> all = new ArrayList<>();
        for (int o = 0; o < packs.length; o++) {
            WeekProblem.Offer offer = p.offers().get(o);
            if (packs[o] > 0 && packs[o] >= offer.maxPacks() && offer.minPacks() < offer.maxPacks()) {
                all.add(new Pack(o));
            }
        }
        long[][] used = Account.withReceiving(p, packs, Workload.of(p, menu).used());
        for (int r = 0; r < used.length; r++) {
            for (int t = 0; t < used[r].length; t++) {
                long there = p.resources().get(r).regular()[t];
                if (there > 0 && used[r][t] * 10 >= there * 8) {
                    all.add(new Units(r, t));
                }
            }
        }
        return all;
    }
}
