package croftboard.cli;

import croftboard.cli.screen.Page;
import croftboard.cli.screen.Screen;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;

/** Prints the answer to a question in the format asked for. */
final class AnswerPrint {
    static final String WRONG_SAY = "2:wrong use, there is no such plan, or the book has faults";

    private AnswerPrint() { }

    static void print(Screen answer, Format format, Setting setting, PrintWriter out) {
        out.print(switch (format) {
            case TEXT -> text(answer, setting.page());
            case CSV -> CsvText.of(answer.rows());
            case JSON -> json(answer);
        });
        out.flush();
    }

    private static String text(Screen answer, Page page) {
        answer.print(page);
        return page.toString();
    }

    private static String json(Screen answer) {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put(answer.name(), JsonText.objects(answer.rows()));
        return JsonText.of(all);
    }
}
