package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.cli.screen.Screen;

/** One screen in the format that is asked for. */
final class ScreenPrint {
    private ScreenPrint() { }

    static String as(Format format, Screen screen, Page page) {
        return switch (format) {
            case TEXT -> PlanPrint.text(screen, page);
            case CSV -> PlanPrint.csv(screen.rows());
            case JSON -> JsonText.of(JsonText.objects(screen.rows()));
        };
    }
}
