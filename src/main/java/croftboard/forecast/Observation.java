package croftboard.forecast;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * What one dish did on one line on one day.
 *
 * @param prepared portions there were to sell that day, those of the day before included; 0 or more
 * @param sold portions sold, 0 or more
 * @param ranOut when the last one went, in the kitchen's own time; empty: it did not run out, or nobody wrote down when
 * @param aside why the day says nothing of an ordinary day (an event, a closure); empty: it does
 */
public record Observation(LocalDate date, String line, String dish, int prepared, int sold, Optional<LocalTime> ranOut,
        Optional<String> aside) implements Comparable<Observation> {

    /** All that was there is gone: at least so many were asked for. */
    public boolean soldOut() {
        return ranOut.isPresent() || sold >= prepared;
    }

    /** A day that can teach: something was there to be sold, and the day was an ordinary one. */
    public boolean teaches() {
        return aside.isEmpty() && (prepared > 0 || sold > 0);
    }

    @Override
    public int compareTo(Observation other) {
        int byDate = date.compareTo(other.date);
        int byLine = byDate != 0 ? byDate : line.compareTo(other.line);
        return byLine != 0 ? byLine : dish.compareTo(other.dish);
    }
}
