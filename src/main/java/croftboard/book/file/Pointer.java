package croftboard.book.file;

/**
 * A word in one file that must name something in another.
 *
 * @param to what it must name
 * @param word the name
 * @param spot where it stands
 * @param from what points, for the message
 */
record Pointer(To to, String word, Spot spot, String from) {
    enum To { INGREDIENT, ITEM, DISH, SEASON, STATION, LINE, COURSE, VENDOR }
}
