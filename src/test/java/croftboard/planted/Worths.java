package croftboard.planted;

import java.util.List;
import java.util.Random;

/**
 * What dishes bring. Food has its price a gram, hands and equipment of some days a price a unit, and some dishes a price for
 * standing anywhere in a week; the planted dish of each slot brings what it likes, and no other dish there more
 * than would make the slot as good. Those that use much of what is scarce look better by themselves.
 */
final class Worths {
    /** A slot is worth so much a day at least, or it would rather be empty. */
    private static final double LEAST = 3_000;
    private final Shape shape;
    private final Random g;
    private final List<Supply> supplies;
    /** Price of a unit by resource and day; where it is not 0 the planted menu uses all there is. */
    final double[][] unitCents;
    final long[][] regular;
    /** By dish and week of the planted menu: what it costs to take the dish from there. */
    private final double[][] dishCents;
    /** What each slot is worth beside all that; the dual value of the planted plan is the sum of all. */
    final double[] slotCents;

    Worths(Shape shape, Random g, List<Place> places, List<Supply> supplies) {
        this.shape = shape;
        this.g = g;
        this.supplies = supplies;
        unitCents = new double[Dish.RESOURCES][shape.days()];
        regular = new long[Dish.RESOURCES][shape.days()];
        int dishes = 1 + places.stream().flatMap(p -> p.drafts.stream()).mapToInt(d -> d.number).max().orElse(0);
        dishCents = new double[dishes][shape.weeks()];
        slotCents = new double[places.size()];
        limits(places);
        places.forEach(p -> dishCents[p.plantedDraft().number][p.week] =
                g.nextBoolean() ? 0 : 2_000 + 6_000 * g.nextDouble());
        for (int s = 0; s < slotCents.length; s++) {
            worth(s, places.get(s));
        }
    }

    private void limits(List<Place> places) {
        for (Place p : places) {
            for (int day : p.days) {
                for (int x = 0; x < Dish.RESOURCES; x++) {
                    regular[x][day] += units(p, p.plantedDraft(), x);
                }
            }
        }
        for (int x = 0; x < Dish.RESOURCES; x++) {
            for (int d = 0; d < shape.days(); d++) {
                if (g.nextInt(10) < 6) {
                    unitCents[x][d] = x < 3 ? 10 + 80 * g.nextDouble() : 300 + 1_500 * g.nextDouble();
                } else {
                    regular[x][d] += 1 + regular[x][d] * g.nextInt(20) / 100;
                }
            }
        }
    }

    /** On each service day. */
    static int units(Place p, Place.Draft d, int resource) {
        double part = resource < 3 && p.days.length > 1 ? .45 : 1;
        return (int) Math.ceil(d.dish.use()[resource] * part);
    }

    private void worth(int s, Place place) {
        Place.Draft planted = place.plantedDraft();
        double labour = (planted.dish.use()[0] + planted.dish.use()[1] + planted.dish.use()[2]) * 45;
        double sold = (planted.portions * planted.dish.price() * .92 - labour) * place.days.length;
        planted.cents = Math.round(Math.max(sold, shared(place, planted) + LEAST * place.days.length));
        slotCents[s] = planted.cents - shared(place, planted);
        for (Place.Draft d : place.drafts) {
            if (d != planted) {
                double u = g.nextDouble();
                double less = g.nextInt(7) > 0 ? .02 + .3 * u : shape.tied() ? 0 : .01 * u;
                d.cents = (long) Math.floor(slotCents[s] + shared(place, d) - less * slotCents[s]);
            }
        }
    }

    /** What the dish takes from others: food, units, itself. */
    private double shared(Place place, Place.Draft d) {
        double cents = 0;
        for (int k = 0; k < place.days.length; k++) {
            for (int j = 0; j < d.grams.length; j++) {
                cents += d.grams[j][k] * supplies.get(d.dish.item()[j]).at(place.days[k]).centsPerGram;
            }
            for (int x = 0; x < Dish.RESOURCES; x++) {
                cents += units(place, d, x) * unitCents[x][place.days[k]];
            }
        }
        for (int week = 0; week < shape.weeks(); week++) {
            boolean near = 7 * week <= place.days[0] && place.days[0] < 7 * week + shape.gapDays();
            cents += near ? dishCents[d.number][week] : 0;
        }
        return cents;
    }

    /** By weak duality no plan is worth more: slots, dishes, units; food pays for itself. */
    double dualCents() {
        double sum = 0;
        for (double c : slotCents) {
            sum += c;
        }
        for (double[] dish : dishCents) {
            for (double c : dish) {
                sum += c;
            }
        }
        for (int x = 0; x < Dish.RESOURCES; x++) {
            for (int d = 0; d < shape.days(); d++) {
                sum += unitCents[x][d] * regular[x][d];
            }
        }
        return sum;
    }
}
