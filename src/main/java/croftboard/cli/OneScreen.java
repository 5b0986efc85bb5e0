package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.cli.screen.Screen;

/** One screen in the format that was asked for. */
final class OneScreen {
    private OneScreen() { }

    static String text(Screen screen, Format format, Page page) {
        return switch (format) {
            case TEXT -> PlanPrint.text(screen, page);
            case CSV -> PlanPrint.csv(screen.rows());
            case JSON -> JsonText.of(JsonText.objects(screen.rows()));
        };
    }
}
