package croftboard.book;

/**
 * Sheets of labels as they are sold, in micrometres: an inch is 25,400, a millimetre 1,000.
 *
 * @param top from the paper's edge to the first row. @param left to the first column
 * @param pitchX from one label's left edge to the next one's. @param pitchY from top edge to top edge
 */
public record LabelStock(int rows, int columns, int top, int left, int width, int height, int pitchX, int pitchY) { }
