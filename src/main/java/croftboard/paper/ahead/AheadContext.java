package croftboard.paper.ahead;

import croftboard.book.Book;
import croftboard.paper.Called;
import croftboard.paper.Origin;
import croftboard.paper.PaperContext;
import croftboard.plan.Rotation;
import croftboard.plan.WeekPlan;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;

/**
 * What the sheets of a rotation are made from.
 *
 * @param version of the rotation
 * @param inForce it is this version that the weeks are planned from
 * @param printed local time of the kitchen
 */
public record AheadContext(Book book, Rotation rotation, int version, boolean inForce, LocalDateTime printed) {
    /** {@code 2027-W36..2027-W39@1}. */
    public String name() {
        return rotation.span() + "@" + version;
    }

    public List<WeekPlan> plans() {
        return rotation.weeks().stream().map(Rotation.Week::plan).toList();
    }

    public Called called() {
        return new Called(book);
    }

    public Origin origin() {
        int missing = plans().stream().mapToInt(p -> p.missing().size()).sum();
        return new Origin(book, name(), inForce ? "" : " not in force", rotation.fingerprint(), missing, printed, Set.of(),
                PaperContext.Doubtful.NONE);
    }
}
