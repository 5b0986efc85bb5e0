package croftboard.plan.file;

/** Ends the reading of a file; the message is a sentence for a cook, with the place in the file. Never leaves this room. */
final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    /** @param path for example {@code $.menu[3].salesCents} */
    Unreadable(String path, String what) {
        super("at " + path + ": " + what, null, false, false);
    }

    Unreadable(String what) {
        super(what, null, false, false);
    }
}
