package croftboard.cli;

import croftboard.book.Book;
import croftboard.measure.WeekSpan;
import croftboard.paper.ahead.AheadContext;
import croftboard.plan.Rotation;
import croftboard.plan.file.RotationRef;
import croftboard.plan.file.RotationStore;
import java.time.LocalDateTime;
import java.util.OptionalInt;

/** A rotation that is kept in a book. */
final class KeptRotation {
    private final RotationStore store;
    private final RotationRef ref;

    KeptRotation(BookAt at, RotationRef ref) {
        this.store = new RotationStore(at.folder());
        this.ref = ref;
    }

    /** @throws WrongUse when there is no such rotation or its file is none */
    Rotation rotation() {
        return Kept.rotation(store, ref);
    }

    AheadContext context(Book book, Setting setting) {
        Rotation rotation = rotation();
        WeekSpan span = rotation.span();
        OptionalInt current = store.current(span);
        int version = ref.version().isPresent() ? ref.version().getAsInt() : current.orElse(1);
        boolean inForce = store.inForce().contains(span) && current.isPresent() && current.getAsInt() == version;
        return new AheadContext(book, rotation, version, inForce,
                LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone()));
    }
}
