package croftboard.sourcing;

import java.util.Random;

/** Tries at the orders alone: packs against each other, deliveries closed and opened. */
final class PackTurns {
    private final OpenOrders orders;
    private final OfferTable table;
    private final PackRepair repair;

    PackTurns(OpenOrders orders, PackRepair repair) {
        this.orders = orders;
        table = orders.table;
        this.repair = repair;
    }

    void shift(Random g) {
        int a = g.nextInt(table.item.length);
        int b = partner(g, a);
        int size = g.nextInt(4) == 0 ? 2 : 1;
        boolean more = g.nextBoolean();
        orders.put(a, within(a, orders.packs[a] + (more ? size : -size)));
        if (b != a) {
            int other = 1 + g.nextInt(2);
            orders.put(b, within(b, orders.packs[b] + (more ? -other : other)));
            orders.use(table.item[b]);
        }
        orders.use(table.item[a]);
    }

    /** Nothing else, another offer of the item, or another offer of the delivery. */
    private int partner(Random g, int a) {
        int kind = g.nextInt(8);
        int[] among = kind == 0 ? table.offersOfDelivery[table.delivery[a]] : table.offersOfItem[table.item[a]];
        return kind < 6 ? among[g.nextInt(among.length)] : a;
    }

    private int within(int o, int n) {
        return Math.max(table.least[o], Math.min(table.most[o], n));
    }

    void turn(Random g) {
        int v = g.nextInt(table.minimum.length);
        if (table.offersOfDelivery[v].length == 0) {
            return;
        }
        if (orders.bought[v] > 0) {
            close(v);
        } else {
            open(g, v);
        }
    }

    private void close(int v) {
        for (int o : table.offersOfDelivery[v]) {
            orders.put(o, table.least[o]);
        }
        for (int o : table.offersOfDelivery[v]) {
            repair.mend(table.item[o]);
        }
    }

    private void open(Random g, int v) {
        int[] own = table.offersOfDelivery[v];
        for (int n = 2 + g.nextInt(4); n > 0; n--) {
            int o = own[g.nextInt(own.length)];
            orders.put(o, within(o, orders.packs[o] + 1 + g.nextInt(2)));
            orders.use(table.item[o]);
        }
        for (int o : own) {
            if (orders.packs[o] > 0) {
                repair.giveBack(table.item[o], v);
            }
        }
    }
}
