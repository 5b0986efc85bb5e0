package croftboard.ledger.file;

import croftboard.ledger.Entry;
import java.util.List;
import java.util.Map;

/** What reading other people's file as entries came to. */
public sealed interface Intake {
    /**
     * @param entries not booked yet, in the order of the file
     * @param guesses sentences on what was guessed or left out
     * @param columns which column was what, to be remembered
     */
    record Read(List<Entry> entries, List<String> guesses, Map<String, String> columns) implements Intake { }

    /** @param faults all of them, each with its line where it has one */
    record Faulty(List<String> faults) implements Intake { }
}
