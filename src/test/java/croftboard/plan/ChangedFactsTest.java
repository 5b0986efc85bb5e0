package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.Reply;
import croftboard.book.TinyBook;
import croftboard.measure.Cents;
import croftboard.measure.WeekSpan;
import croftboard.plan.ahead.Notice;
import croftboard.plan.ahead.ReplyBook;
import croftboard.plan.check.PlanChecker;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ChangedFactsTest {
    private static Rotation rotation(Book book) {
        return new Rotator(book, Optional.empty(), new RotationRequest(WeekSpan.of(RandomBook.WEEK, 1), OptionalInt.empty(), 1, Duration.ZERO,
                OptionalLong.of(400), w -> Given.NOTHING, Optional.empty(), new RotationRequest.Progress() {
                    @Override
                    public void doing(String what) { }

                    @Override
                    public void better(long cents, boolean complete) { }
                }, () -> false)).rotate();
    }

    private static Optional<Notice> asked(Book book, Rotation rotation) {
        return Notice.all(book, rotation).stream().filter(n -> n.vendor().equals("grower")).findFirst();
    }

    /** @param part of the packs that were wanted, rounded down. @param more cents on the price */
    private static Reply reply(Notice notice, double part, long more) {
        return new Reply("answer", "x", notice.vendor(), notice.rows().stream().map(r -> new Reply.Row(2, r.item(), r.pack(), r.week(),
                OptionalInt.of((int) (r.packs() * part)), Optional.of(new Cents(r.price() + more)), "")).toList());
    }

    private static RotationChange change(Book book, Rotation rotation, Reply reply) {
        return new ChangedFacts(new ReplyBook(book, rotation, reply).book(), rotation, w -> Given.NOTHING, Optional.empty(), 200, () -> false)
                .change();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void nothing_changesNothing(long seed) {
        Book book = TinyBook.of(seed);
        Rotation rotation = rotation(book);
        RotationChange same = new ChangedFacts(book, rotation, w -> Given.NOTHING, Optional.empty(), 200, () -> false).change();
        assertThat(same.weeks()).isEmpty();
        assertThat(same.after()).isEqualTo(rotation.value());
    }

    /** Nothing is ordered that is not there, and the independent checker confirms each plan in the changed book. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void lessThanWanted_isNeverOrdered_andTheCheckerAgrees(long seed) {
        Book book = TinyBook.of(seed);
        Rotation rotation = rotation(book);
        if (asked(book, rotation).isEmpty()) {
            return;
        }
        for (double part : new double[] {0, 0.5}) {
            Reply reply = reply(asked(book, rotation).get(), part, 0);
            Book now = new ReplyBook(book, rotation, reply).book();
            for (RotationChange.Week week : change(book, rotation, reply).weeks()) {
                for (Reply.Row r : reply.rows()) {
                    int ordered = week.is().orders().stream().filter(o -> o.vendor().equals("grower")).flatMap(o -> o.lines().stream())
                            .filter(l -> l.item().equals(r.item()) && l.pack().equals(r.pack())).mapToInt(WeekPlan.OrderLine::packs).sum();
                    assertThat(ordered).isLessThanOrEqualTo(r.have().getAsInt());
                }
                assertThat(PlanChecker.check(now, week.is(), Given.NOTHING, Optional.empty()).findings()).isEmpty();
                assertThat(week.dishes().isEmpty() && week.packs().isEmpty() && week.is().complete()).isFalse();
            }
        }
    }

    /** Ten dollars more a pack cost money, and not more than ten dollars for each pack that is still bought. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void dearer_isNeverBetterThanBefore(long seed) {
        Book book = TinyBook.of(seed);
        Rotation rotation = rotation(book);
        Optional<Notice> asked = asked(book, rotation);
        if (asked.isPresent()) {
            RotationChange change = change(book, rotation, reply(asked.get(), 1, 1_000));
            assertThat(change.after()).isLessThanOrEqualTo(change.before());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void answer_asLists_holdsThePacksThatWereAnswered(long seed) {
        Book book = TinyBook.of(seed);
        Rotation rotation = rotation(book);
        asked(book, rotation).ifPresent(notice -> {
            Reply reply = reply(notice, 1, 0);
            new ReplyBook(book, rotation, reply).lists().forEach((week, rows) -> reply.rows().stream().filter(r -> r.week().equals(week))
                    .forEach(r -> assertThat(rows.stream().filter(x -> x.item().equals(r.item()) && x.pack().equals(r.pack())
                            && croftboard.measure.IsoWeek.of(x.delivery()).equals(week)).mapToInt(x -> x.packs()).sum())
                            .isEqualTo(r.have().getAsInt())));
            assertThat(List.copyOf(new ReplyBook(book, rotation, reply).lists().keySet())).isNotEmpty();
        });
    }
}
