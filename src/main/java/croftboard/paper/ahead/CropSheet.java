package croftboard.paper.ahead;

import croftboard.measure.IsoWeek;
import croftboard.paper.Block;
import croftboard.paper.Sheet;
import croftboard.paper.SheetKind;
import croftboard.plan.ahead.CropUse;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Crop use by week: what is wanted against what growers expect to have, as pages and as one drawing. */
public final class CropSheet {
    /** Weeks that stand side by side. */
    private static final int ACROSS = 5;
    private static final double WIDE = 700;
    private static final double HIGH = 400;

    private CropSheet() { }

    public static List<Sheet> of(AheadContext context) {
        CropUse use = CropUse.of(context.book(), context.plans());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Text("Pounds as bought. Full bar: wanted by the dishes. Open bar below: what growers count on having. "
                + "! more is wanted than they count on."));
        if (use.crops().isEmpty()) {
            blocks.add(new Block.Text("No dish wants what a grower of the book sells."));
        }
        int rows = CropPicture.rows(HIGH);
        for (int w = 0; w < use.weeks().size(); w += ACROSS) {
            List<IsoWeek> weeks = use.weeks().subList(w, Math.min(use.weeks().size(), w + ACROSS));
            for (int c = 0; c < use.crops().size(); c += rows) {
                List<CropUse.Crop> crops = use.crops().subList(c, Math.min(use.crops().size(), c + rows));
                if (w + c > 0) {
                    blocks.add(new Block.NewPage());
                }
                blocks.add(new Block.Picture(CropPicture.svg(context.called(), weeks, crops, WIDE), words(context, weeks, crops)));
            }
        }
        return List.of(new Sheet(SheetKind.CROPS, "crops", "Crop use by week, " + context.rotation().span(), List.of(), blocks,
                RotationTables.crops(use, context), Sheet.Look.PLAIN.wide()));
    }

    private static String words(AheadContext context, List<IsoWeek> weeks, List<CropUse.Crop> crops) {
        return crops.stream().map(c -> context.called().item(c.item()) + ": " + weeks.stream().map(w -> w + " wanted "
                + CropPicture.pounds(c.by().get(w).wanted()) + " lb, expected " + CropPicture.pounds(c.by().get(w).expected()) + " lb")
                .collect(Collectors.joining("; "))).collect(Collectors.joining("\n"));
    }

    /** All crops and weeks as one drawing. */
    public static String drawing(AheadContext context) {
        CropUse use = CropUse.of(context.book(), context.plans());
        return CropPicture.svg(context.called(), use.weeks(), use.crops(), Math.max(WIDE, 150 + 140.0 * use.weeks().size()));
    }
}
