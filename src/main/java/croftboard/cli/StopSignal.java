package croftboard.cli;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Whether a person has asked to end a search. While one is open, Ctrl-C does not end the program at once: the search
 * ends, the command prints and writes what it has, and then the program ends with the command's code.
 */
interface StopSignal extends AutoCloseable {
    boolean asked();

    /** All is printed and written: the program may end. @param code with which it ends if it was asked to */
    void finished(int code);

    @Override
    void close();

    /** Starts to watch. */
    interface Watching {
        StopSignal start();
    }

    /** Ctrl-C and a polite kill, by a hook of the running program. */
    final class CtrlC implements StopSignal {
        private static final long PATIENCE_SECONDS = 20;
        private final CountDownLatch done = new CountDownLatch(1);
        private final Thread hook = new Thread(this::ending, "stop");
        private volatile boolean asked;
        private volatile int code = Exit.STOPPED;

        CtrlC() {
            Runtime.getRuntime().addShutdownHook(hook);
        }

        private void ending() {
            asked = true;
            try {
                if (!done.await(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                    code = Exit.STOPPED;
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            Runtime.getRuntime().halt(code);
        }

        @Override
        public boolean asked() {
            return asked;
        }

        @Override
        public void finished(int endCode) {
            code = endCode;
        }

        /** Lets the program end; when nothing was asked, Ctrl-C is again what it always is. */
        @Override
        public void close() {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                asked = true;
            }
            done.countDown();
        }
    }
}
