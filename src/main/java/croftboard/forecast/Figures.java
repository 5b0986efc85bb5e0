package croftboard.forecast;

import croftboard.book.Learned;
import croftboard.book.Seasons.DemandFactor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What was learned, rounded as it is kept in the book: portions to a tenth, draws, spreads and factors to a thousandth. */
public final class Figures {
    private static final Ratio LEAST_DRAW = Ratio.of(1, 2);
    private static final Ratio MOST_DRAW = Ratio.of(8, 5);
    private static final int WEEKS = 53;

    private Figures() { }

    /** Lines and dishes that were seen or have kin that were; the rest stays as the book says. @param version from 1 */
    public static Learned of(Learning learning, List<Observation> observations, int version) {
        Map<String, Learned.Line> lines = new TreeMap<>();
        learning.lines().forEach((id, line) -> {
            if (line.seen() > 0) {
                Map<DayOfWeek, Learned.Day> days = new EnumMap<>(DayOfWeek.class);
                line.days().forEach((day, f) -> days.put(day, new Learned.Day(rounded(f.mean(), 1), f.seen(), f.soldOut())));
                lines.put(id, new Learned.Line(rounded(line.cv(), 3).min(Ratio.of(3)), line.seen(), Collections.unmodifiableMap(days)));
            }
        });
        Map<String, Learned.Dish> dishes = new TreeMap<>();
        learning.dishes().forEach((id, d) -> {
            if (d.seen() > 0 || Math.abs(d.draw() / d.stated() - 1) > 0.0005) {
                dishes.put(id, new Learned.Dish(rounded(d.draw(), 3).max(LEAST_DRAW).min(MOST_DRAW), d.seen(), d.soldOut()));
            }
        });
        List<DemandFactor> weeks = new ArrayList<>();
        for (int w = 1; w <= WEEKS && !learning.season().isEmpty(); w++) {
            weeks.add(new DemandFactor(new WeekRange(w, w), rounded(learning.season().get(w - 1), 3)));
        }
        return new Learned(version, learning.next().plusWeeks(-1), fingerprint(observations, learning.next()), learning.seen(),
                learning.soldOut(), Collections.unmodifiableMap(lines), Collections.unmodifiableMap(dishes), List.copyOf(weeks));
    }

    private static Ratio rounded(double value, int places) {
        return Ratio.of(BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_EVEN));
    }

    /** SHA-256 over all days before that week, in their order. */
    private static String fingerprint(List<Observation> observations, IsoWeek next) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            observations.stream().filter(o -> o.date().isBefore(next.monday())).sorted()
                    .forEach(o -> digest.update((o + "\n").getBytes(StandardCharsets.UTF_8)));
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
