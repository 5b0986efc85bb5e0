package croftboard.cli;

/** Exit codes, the same for every command. */
final class Exit {
    static final int DONE = 0;
    static final int OUR_FAULT = 1;
    static final int WRONG_USE = 2;
    static final int INCOMPLETE = 3;
    /** Ended by Ctrl-C before there was a complete plan. */
    static final int STOPPED = 130;

    static final String HEADING = "%nExit codes:%n";
    static final String DONE_SAY = "0:done";
    static final String OUR_FAULT_SAY = "1:a fault of our own (one line; --trace prints where)";
    static final String WRONG_USE_SAY = "2:wrong use, or the book has faults; nothing was written";
    static final String INCOMPLETE_SAY = "3:the plan is not complete: something cannot be had or done, it cannot be posted";
    static final String STOPPED_SAY = "130:ended by Ctrl-C before there was a complete plan";

    private Exit() { }
}
