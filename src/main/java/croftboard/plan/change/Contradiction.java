package croftboard.plan.change;

/** Two changes that speak of the same thing and cannot both be so. */
final class Contradiction {
    private Contradiction() { }

    static boolean between(Change a, Change b) {
        return clash(a, b) || clash(b, a);
    }

    private static boolean clash(Change a, Change b) {
        if (a instanceof Change.Got x && b instanceof Change.Got y) {
            return x.vendor().equals(y.vendor()) && x.item().equals(y.item())
                    && (x.day().equals(y.day()) || x.day().isEmpty() || y.day().isEmpty());
        }
        if (a instanceof Change.Price x && b instanceof Change.Price y) {
            return x.vendor().equals(y.vendor()) && x.item().equals(y.item());
        }
        if (a instanceof Change.Wanted x && b instanceof Change.Wanted y) {
            return x.slot().equals(y.slot());
        }
        if (a instanceof Change.Wanted x && b instanceof Change.Unwanted y) {
            return x.slot().equals(y.slot()) && x.dish().equals(y.dish());
        }
        if (a instanceof Change.Late x && b instanceof Change.Late y) {
            return x.vendor().equals(y.vendor()) && x.day().equals(y.day());
        }
        if (a instanceof Change.VendorOut x) {
            return outAgainst(x, b);
        }
        return a instanceof Change.NotSent x && b instanceof Change.Late y && x.vendor().equals(y.vendor())
                && x.day().equals(y.day());
    }

    /** Who is out brings nothing, neither late nor more. */
    private static boolean outAgainst(Change.VendorOut out, Change other) {
        return out.day().isEmpty() && (other instanceof Change.Got g && g.vendor().equals(out.vendor()) && g.packs() > 0
                || other instanceof Change.Late l && l.vendor().equals(out.vendor())
                || other instanceof Change.More m && m.vendor().equals(out.vendor())
                || other instanceof Change.Take t && t.vendor().equals(out.vendor())
                || other instanceof Change.Buy b && b.vendor().equals(out.vendor()));
    }
}
