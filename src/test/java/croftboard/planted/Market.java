package croftboard.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Vendors, deliveries and offers around what the planted plan buys. Deliveries of the plan cost a fee that its cheap packs
 * just earn, and half of them a minimum that it meets to the cent. On the other deliveries some packs are cheaper by the
 * list than anything the plan buys, and their fee eats what they save.
 */
final class Market {
    private static final int LURES = 2;
    private final Shape shape;
    private final Random g;
    final double[] weight;
    final List<Supply> supplies = new ArrayList<>();
    final List<Offer> offers = new ArrayList<>();
    final TreeMap<Key, Delivery> deliveries = new TreeMap<>();
    private final List<TreeSet<Integer>> days = new ArrayList<>();

    /** @param planned packs that the planted plan buys */
    record Offer(int vendor, int item, int day, long grams, long priceCents, int planned, int most) { }

    record Key(int vendor, int day) implements Comparable<Key> {
        @Override
        public int compareTo(Key o) {
            return vendor != o.vendor ? Integer.compare(vendor, o.vendor) : Integer.compare(day, o.day);
        }
    }

    static final class Delivery {
        long money;
        /** What the cheap packs earn beside the price of a gram. */
        double earned;
        long fee;
        long minimum;
        int lures = LURES;
    }

    /** @param weight of each vendor: what a cent spent there counts for */
    Market(Shape shape, Random g, List<Place> places, double[] weight) {
        this.shape = shape;
        this.g = g;
        this.weight = weight;
        for (int i = 0; i < shape.items(); i++) {
            Supply s = new Supply(i, shape, g);
            s.choosePacks(places);
            s.price(.38 * Math.exp(g.nextGaussian() * .55) + .18, weight);
            supplies.add(s);
        }
        calendar();
        supplies.forEach(this::planned);
        deliveries.values().forEach(this::charge);
        supplies.forEach(this::others);
    }

    static boolean local(int vendor) {
        return vendor % 2 == 0;
    }

    /** Vendors of the plan come when its parts begin, some on one day more; the others when they like. */
    private void calendar() {
        for (int v = 0; v < shape.vendors(); v++) {
            TreeSet<Integer> own = new TreeSet<>();
            int extra = g.nextInt(shape.open());
            for (int week = 0; week < shape.weeks(); week++) {
                for (int run = 0; run < shape.runs() && v < shape.planVendors(); run++) {
                    own.add(7 * week + 3 * run);
                }
                if (v >= shape.planVendors() || shape.open() > 3 && v % 3 == 0) {
                    own.add(7 * week + extra);
                    own.add(7 * week + (v < shape.planVendors() || shape.open() == 3 ? extra : (extra + 3) % 6));
                }
            }
            days.add(own);
            for (int d : own) {
                deliveries.put(new Key(v, d), new Delivery());
            }
        }
    }

    private void planned(Supply s) {
        for (Supply.Part part : s.parts) {
            for (int v = 0; v < s.vendors.length; v++) {
                if (part.packs[v] > 0) {
                    int spare = v > 0 || shape.open() == 3 ? 0 : g.nextInt(5);
                    Offer o = new Offer(s.vendors[v], s.item, part.from, s.packGrams[v], part.priceCents[v],
                            part.packs[v], part.packs[v] + spare);
                    offers.add(o);
                    Delivery d = deliveries.get(new Key(o.vendor, o.day));
                    d.money += o.planned * o.priceCents;
                    double each = part.centsPerGram * o.grams - o.priceCents * weight[o.vendor];
                    d.earned += v == 0 ? 0 : each * o.planned;
                }
            }
        }
    }

    private void charge(Delivery d) {
        if (d.money > 0) {
            d.fee = Math.min(2500, (long) d.earned);
            d.minimum = g.nextBoolean() ? d.money : (long) (d.money * (.3 + .6 * g.nextDouble()));
        } else {
            d.fee = 500 + 100 * g.nextInt(16);
            d.minimum = 3000 + 500 * g.nextInt(11);
        }
    }

    /** Of the item: what the plan leaves alone. */
    private void others(Supply s) {
        for (int v = 0; v < shape.vendors(); v++) {
            int vendor = v;
            int at = IntStream.range(0, s.vendors.length).filter(n -> s.vendors[n] == vendor).findFirst().orElse(-1);
            boolean stranger = v >= shape.planVendors();
            if (at < 0 && !(shape.open() == 3 ? stranger : g.nextInt(100) < (stranger ? 45 : 5))) {
                continue;
            }
            long grams = at >= 0 ? s.packGrams[at]
                    : Math.max(10, Math.round(s.packGrams[0] * (.5 + g.nextDouble()) / 10) * 10);
            for (int day : days.get(v)) {
                if (offers.stream().noneMatch(o -> o.vendor == vendor && o.item == s.item && o.day == day)) {
                    offers.add(other(s, v, day, grams));
                }
            }
        }
    }

    /** Never worth more than it costs; with a delivery that the plan leaves alone never more than with its fee. */
    private Offer other(Supply s, int vendor, int day, long grams) {
        Delivery d = deliveries.get(new Key(vendor, day));
        double worth = s.at(day).centsPerGram * grams;
        int most = 1 + g.nextInt(shape.open() == 3 ? 2 : 6);
        double off = 0;
        if (d.money == 0 && d.lures > 0) {
            d.lures--;
            off = Math.min(.3 * worth, d.fee / (double) LURES / most);
        }
        double times = off > 0 ? 1 : 1 + .25 * g.nextDouble();
        return new Offer(vendor, s.item, day, grams, (long) Math.ceil((worth - off) * times / weight[vendor]), 0, most);
    }
}
