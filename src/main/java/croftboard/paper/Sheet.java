package croftboard.paper;

import java.util.List;
import java.util.Set;

/**
 * One sheet: it begins on a page of its own.
 *
 * @param id the same in every version of the week's plan, and unlike any other sheet's; fit for a file name:
 *     {@code order-hollow-brook-2027-08-17}
 * @param under lines below the title
 * @param data the sheet as a table for machines
 * @param behind the orders that must come for the sheet to be true: if one was not sent, the page says so first
 */
public record Sheet(SheetKind kind, String id, String title, List<String> under, List<Block> blocks, Data data,
        Look look, Set<OrderKey> behind) {

    /** @throws IllegalArgumentException when the id is not fit for a file name */
    public Sheet {
        if (!id.matches("[a-z0-9][a-z0-9.-]{0,119}")) {
            throw new IllegalArgumentException("no name for a file: [" + id + "]");
        }
        under = List.copyOf(under);
        blocks = List.copyOf(blocks);
        behind = Set.copyOf(behind);
    }

    /** A sheet that no order stands behind. */
    public Sheet(SheetKind kind, String id, String title, List<String> under, List<Block> blocks, Data data, Look look) {
        this(kind, id, title, under, blocks, data, look, Set.of());
    }

    /**
     * How a sheet is to look; the size of the paper is the kitchen's.
     *
     * @param type points of running text, 11 at least (7 on the wall sheet); 14 where it is read from a bench
     * @param onePage the trade expects one page; a test says for which weeks it is one
     * @param bare no title, no head and no foot: the whole sheet belongs to its blocks (label stock)
     */
    public record Look(boolean landscape, int type, boolean onePage, boolean bare) {
        public static final int LEAST_TYPE = 11;
        /** One page for the wall that must hold many weeks: smaller type rather than a second page. */
        public static final int LEAST_ON_WALL = 7;
        public static final Look PLAIN = new Look(false, LEAST_TYPE, false, false);
        public static final Look BIG = new Look(false, 14, false, false);
        /** Label stock: every millimetre is spoken for. */
        public static final Look BARE = new Look(false, LEAST_TYPE, false, true);

        /** @throws IllegalArgumentException when the type is too small to be read at arm's length */
        public Look {
            if (type < (onePage ? LEAST_ON_WALL : LEAST_TYPE)) {
                throw new IllegalArgumentException("type of " + type + " points");
            }
        }

        public Look wide() {
            return new Look(true, type, onePage, bare);
        }

        public Look onOnePage() {
            return new Look(landscape, type, true, bare);
        }
    }
}
