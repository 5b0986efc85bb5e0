package croftboard.cli;

import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.order.CalendarSheet;
import croftboard.paper.order.OrderSheets;
import croftboard.paper.served.CaseCards;
import croftboard.paper.served.CoverageGrid;
import croftboard.paper.served.HomeCards;
import croftboard.paper.served.Labels;
import croftboard.paper.served.Logs;
import croftboard.paper.served.MembersSheets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;

/** Every maker of sheets, in the packet's working order. */
final class SheetMakers {
    private static final List<SheetMaker> ALL = List.of(
            new OrderSheets(),
            new CalendarSheet(),
            new Labels(),
            new CaseCards(),
            new CoverageGrid(),
            new MembersSheets(),
            new HomeCards(),
            new Logs());

    private SheetMakers() { }

    static List<Sheet> make(PaperContext context, Set<SheetKind> kinds) {
        List<Sheet> sheets = new ArrayList<>();
        ALL.stream().filter(m -> kinds.contains(m.kind())).sorted(Comparator.comparing(SheetMaker::kind))
                .forEach(m -> sheets.addAll(m.make(context)));
        return sheets;
    }
}
