package croftboard.sourcing;

import croftboard.need.WeekProblem;
import java.util.List;

/** The rows of a program that packs fill. */
interface Goods {
    /** One unit of the column is a pack of the offer. */
    void bring(int column, WeekProblem.Offer offer);

    /** Columns of surplus that keeps, in grams. @return cents that a gram of it is worth are the factor of each */
    List<Kept> kept();

    /** @param cents worth of one unit of the column, of which waste saved is no part */
    record Kept(int column, double cents) { }
}
