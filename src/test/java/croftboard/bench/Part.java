package croftboard.bench;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** A section of the figures; each can be measured alone. */
enum Part {
    DEMO(Demo::measure), QUALITY(Quality::measure), BASELINES(Baselines::measure), PLANTED(Planted::measure),
    SIZE(Sizes::measure), MONTH(Months::measure), WEEKS(Seasons::measure), MISJUDGED(Misjudged::measure), START(Starts::measure),
    PAPER(Papers::measure), SHORT(Shorts::measure), EXPOSURE(Exposures::measure),
    CLASH(Clashes::measure), LEDGER(Ledgers::measure);

    private final Measure measure;

    private interface Measure {
        String figures(Request request) throws IOException, InterruptedException;
    }

    Part(Measure measure) {
        this.measure = measure;
    }

    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Part named(String word) {
        return Arrays.stream(values()).filter(p -> p.word().equals(word)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(word + " -> all, "
                        + Arrays.stream(values()).map(Part::word).collect(Collectors.joining(", "))
                        + ", --seconds 5,20, --seeds 1-20, --quick or --print"));
    }

    String figures(Request request) throws IOException, InterruptedException {
        return measure.figures(request);
    }
}
