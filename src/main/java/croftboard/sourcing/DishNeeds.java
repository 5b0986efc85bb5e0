package croftboard.sourcing;

/** The rows of a program that dishes ask of. */
interface DishNeeds {
    /** One unit of the column needs so many grams on any day of the window. */
    void need(Covers.Window window, int column, double grams);
}
