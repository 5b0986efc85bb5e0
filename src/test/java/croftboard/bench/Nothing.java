package croftboard.bench;

/** Does nothing: what the Java machine alone needs to start and end. */
public final class Nothing {
    private Nothing() { }

    public static void main(String[] args) { }
}
