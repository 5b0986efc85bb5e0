package croftboard.book.file;

import croftboard.book.Fault;
import croftboard.book.Reply;
import java.util.List;
import java.util.function.Function;

/** What came of reading a grower's answer: all of it, or all of its faults. */
public sealed interface ReplyReading {
    record Read(Reply reply) implements ReplyReading { }

    /** @param faults at least one, by line */
    record Faulty(List<Fault> faults) implements ReplyReading { }

    /** The one answer of the two functions that fits. */
    default <T> T fold(Function<Reply, T> whenRead, Function<List<Fault>, T> whenFaulty) {
        return this instanceof Read read ? whenRead.apply(read.reply) : whenFaulty.apply(((Faulty) this).faults);
    }
}
