package croftboard.planted;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * What the planted plan buys of one item: whole packs of a vendor that sets the price of a gram, and all packs that one
 * or two cheaper vendors have. The planted dishes' needs are stretched until the packs are used up to the gram. A gram never
 * becomes dearer as the days pass, as food bought early could serve later.
 */
final class Supply {
    private static final int ATTEMPTS = 20;
    final int item;
    final int life;
    final List<Part> parts = new ArrayList<>();
    /** The first sets the price. */
    final int[] vendors;
    final long[] packGrams;
    private final Shape shape;
    private final Random g;

    /** Days that one delivery serves. */
    static final class Part {
        final int from;
        final int to;
        /** Of each vendor of the supply. */
        final int[] packs;
        final long[] priceCents;
        /** What a gram is worth, the worth of local money in it. */
        double centsPerGram;

        Part(int from, int to, int vendors) {
            this.from = from;
            this.to = to;
            packs = new int[vendors];
            priceCents = new long[vendors];
        }
    }

    Supply(int item, Shape shape, Random g) {
        this.item = item;
        this.shape = shape;
        this.g = g;
        double u = g.nextDouble();
        life = u < .2 ? 2 : u < .4 ? 3 : u < .55 ? 4 : u < .65 ? 5 : u < .8 ? 7 : u < .9 ? 10 : 14;
        int cheaper = shape.planVendors() == 2 ? 1 : g.nextInt(10) < 3 ? 2 : g.nextInt(8) < 7 ? 1 : 0;
        vendors = g.ints(0, shape.planVendors()).distinct().limit(1 + cheaper).toArray();
        packGrams = new long[vendors.length];
        boolean oneDelivery = shape.open() == 6 && life >= 5 && g.nextInt(5) < 3;
        for (int week = 0; week < shape.weeks(); week++) {
            for (int run = 0; run < shape.runs(); run += oneDelivery ? 2 : 1) {
                int from = 7 * week + 3 * run;
                parts.add(new Part(from, from + (oneDelivery ? 5 : 2), vendors.length));
            }
        }
    }

    /** The part in which a delivery of that day counts; the last one after all. */
    Part at(int day) {
        return parts.stream().filter(p -> day <= p.to).findFirst().orElse(parts.get(parts.size() - 1));
    }

    void choosePacks(List<Place> places) {
        long[] need = parts.stream().mapToLong(p -> need(places, p)).toArray();
        double mean = java.util.Arrays.stream(need).filter(n -> n > 0).average().orElse(1000);
        double most = 1 + (shape.packs() - 1) * .9 * g.nextDouble();
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            for (int v = 0; v < vendors.length; v++) {
                packGrams[v] = Math.max(10, Math.round(mean / most * (.7 + .6 * g.nextDouble()) / 10) * 10);
            }
            boolean near = true;
            for (int p = 0; p < need.length; p++) {
                near &= near(parts.get(p), need[p]);
            }
            if (near) {
                break;
            }
            most *= 1.25;
        }
        for (Part part : parts) {
            stretch(places, part);
        }
    }

    /** Chooses packs for a part. @return whether they come near its need */
    private boolean near(Part part, long need) {
        long left = need;
        for (int v = 1; v < vendors.length; v++) {
            part.packs[v] = (int) (need * (.2 + .3 * g.nextDouble()) / packGrams[v]);
            left -= part.packs[v] * packGrams[v];
        }
        part.packs[0] = need == 0 ? 0 : (int) Math.max(1, Math.round(left / (double) packGrams[0]));
        return need == 0 || Math.abs(Math.log(bought(part) / (double) need)) < .3;
    }

    private long bought(Part part) {
        long grams = 0;
        for (int v = 0; v < vendors.length; v++) {
            grams += part.packs[v] * packGrams[v];
        }
        return grams;
    }

    /** One need of a planted dish. */
    private record Spot(long[] grams, int day) { }

    private List<Spot> spots(List<Place> places, Part part) {
        List<Spot> spots = new ArrayList<>();
        for (Place place : places) {
            Place.Draft d = place.plantedDraft();
            for (int j = 0; j < d.grams.length; j++) {
                for (int k = 0; k < place.days.length && d.dish.item()[j] == item; k++) {
                    if (part.from <= place.days[k] && place.days[k] <= part.to) {
                        spots.add(new Spot(d.grams[j], k));
                    }
                }
            }
        }
        return spots;
    }

    private long need(List<Place> places, Part part) {
        return spots(places, part).stream().mapToLong(s -> s.grams[s.day]).sum();
    }

    private void stretch(List<Place> places, Part part) {
        List<Spot> spots = spots(places, part);
        double times = bought(part) / (double) Math.max(1, need(places, part));
        long left = bought(part);
        for (int n = 0; n < spots.size(); n++) {
            Spot s = spots.get(n);
            s.grams[s.day] = n == spots.size() - 1 ? left : Math.max(1, (long) (s.grams[s.day] * times));
            left -= s.grams[s.day];
        }
        if (!spots.isEmpty() && spots.get(spots.size() - 1).grams[spots.get(spots.size() - 1).day] < 1) {
            throw new IllegalStateException("item " + item + " cannot be stretched over its packs");
        }
    }

    /**
     * Prices of the packs that the plan buys.
     *
     * @param weight of each vendor: what a cent spent there counts for
     */
    void price(double centsPerGram, double[] weight) {
        long price = Math.max(5, Math.round(centsPerGram * packGrams[0]));
        for (Part part : parts) {
            part.priceCents[0] = price;
            part.centsPerGram = price * weight[vendors[0]] / packGrams[0];
            for (int v = 1; v < vendors.length; v++) {
                double off = .03 + .15 * g.nextDouble();
                part.priceCents[v] = Math.max(1,
                        (long) (part.centsPerGram * packGrams[v] * (1 - off) / weight[vendors[v]]));
            }
            price -= g.nextInt(10) < 3 ? Math.min(price / 10, 1 + (long) (price * .04 * g.nextDouble())) : 0;
        }
    }
}
