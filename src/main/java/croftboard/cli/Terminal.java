package croftboard.cli;

import java.io.Console;
import java.lang.reflect.Method;

/** Whether a person sits in front. */
final class Terminal {
    private Terminal() { }

    /** From Java 22 on there is always a console, and it must be asked what it is. */
    static boolean isThere() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            Method isTerminal = Console.class.getMethod("isTerminal");
            return (Boolean) isTerminal.invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }
}
