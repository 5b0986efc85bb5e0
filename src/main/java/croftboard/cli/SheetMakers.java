package croftboard.cli;

import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.paper.SheetMaker;
import croftboard.paper.cook.BatchSheets;
import croftboard.paper.cook.FunctionSheets;
import croftboard.paper.cook.PrepSheets;
import croftboard.paper.cook.ProductionSheets;
import croftboard.paper.cook.PullSheets;
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
import java.util.stream.Stream;

/** Every maker of sheets, in the packet's working order. */
final class SheetMakers {
    private static final List<SheetMaker> ALL = List.of(
            new OrderSheets(),
            new CalendarSheet(),
            new PrepSheets(),
            new PullSheets(),
            new BatchSheets(),
            new ProductionSheets(),
            new FunctionSheets(),
            new Labels(),
            new CaseCards(),
            new CoverageGrid(),
            new MembersSheets(),
            new Logs());

    private SheetMakers() { }

    static List<Sheet> make(PaperContext context, Set<SheetKind> kinds) {
        return make(context, kinds, new HomeCards());
    }

    /** @param home for how many and which dishes home cards are */
    static List<Sheet> make(PaperContext context, Set<SheetKind> kinds, HomeCards home) {
        List<Sheet> sheets = new ArrayList<>();
        Stream.concat(ALL.stream(), Stream.of(home)).filter(m -> kinds.contains(m.kind()))
                .sorted(Comparator.comparing(SheetMaker::kind)).forEach(m -> sheets.addAll(m.make(context)));
        return sheets;
    }
}
