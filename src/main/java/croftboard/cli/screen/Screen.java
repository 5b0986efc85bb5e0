package croftboard.cli.screen;

/** One part of what is shown, as text and as columns. */
public interface Screen {
    /** The word by which the part is asked for. */
    String name();

    void print(Page page);

    Rows rows();
}
