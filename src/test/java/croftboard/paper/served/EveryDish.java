package croftboard.paper.served;

import croftboard.book.Book;
import croftboard.book.Contact;
import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.LabelStock;
import croftboard.book.Recipe;
import croftboard.cli.SamplePlan;
import croftboard.measure.Ratio;
import croftboard.paper.Block;
import croftboard.paper.Contexts;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A week in which every dish of a book is served on Monday, all lines packed, on large labels. */
final class EveryDish {
    static final LabelStock LARGE = new LabelStock(2, 1, 10_000, 10_000, 190_000, 125_000, 190_000, 125_000);
    static final LocalDate MONDAY = SamplePlan.WEEK.monday();

    private EveryDish() { }

    static PaperContext of(Book book) {
        Set<String> lines = book.kitchen().lines().stream().map(Kitchen.ServiceLine::id).collect(Collectors.toSet());
        return Contexts.of(packed(book, lines, LARGE), plan(book));
    }

    static Book packed(Book book, Set<String> lines, LabelStock stock) {
        return with(book, kitchen(book.kitchen(), new Kitchen.Paperwork(Contact.NONE, Optional.empty(), Optional.of(stock),
                lines), book.kitchen().healthCodeEdition()));
    }

    static Kitchen kitchen(Kitchen k, Kitchen.Paperwork paperwork, String edition) {
        return new Kitchen(k.name(), k.place(), k.zone(), k.paper(), k.open(), k.prepDays(), k.lines(), k.gapDays(),
                k.stations(), k.cooks(), k.receiving(), k.equipment(), k.surplusWorth(), k.leftWorth(), k.goodwill(),
                k.wastePerPound(), k.promises(), k.local(), edition, k.healthAuthority(), paperwork);
    }

    static Book with(Book b, Kitchen kitchen) {
        return new Book(kitchen, b.ingredients(), b.recipes(), b.vendors(), b.seasons(), b.lists(), b.onHand(),
                b.fingerprint());
    }

    static Book with(Book b, Map<String, Ingredient> ingredients, Map<String, Recipe> recipes) {
        return new Book(b.kitchen(), ingredients, recipes, b.vendors(), b.seasons(), b.lists(), b.onHand(), b.fingerprint());
    }

    static Recipe named(Recipe r, String name, Recipe.Care care) {
        return new Recipe(r.id(), name, r.sale(), r.makes(), r.cup(), r.batchStep(), r.lifeDays(), r.hold(), r.leadDays(),
                r.loss(), r.ingredients(), r.steps(), r.scaling(), r.doneness(), r.holding(), r.caution(), r.worthOnly(), care);
    }

    static Ingredient named(Ingredient i, String name, Ingredient.Statement allergens) {
        return new Ingredient(i.id(), name, name, i.shelf(), i.origins(), allergens, i.glutenGrains(), i.tcs(), i.storage(),
                i.keepsDays(), i.thawDays(), i.keepWorth(), i.par(), i.free(), i.salt(), i.cuts(), i.measures(),
                i.substitutes(), i.madeOf());
    }

    static WeekPlan plan(Book book) {
        List<WeekPlan.Served> menu = new ArrayList<>();
        for (Recipe r : book.recipes().values()) {
            if (r.isDish()) {
                String line = book.kitchen().lines().get(menu.size() % book.kitchen().lines().size()).id();
                menu.add(new WeekPlan.Served("mon" + menu.size() + "/" + line, line, List.of(MONDAY), Optional.of(r.id()), 2, 0,
                        0, 0, List.of(new WeekPlan.Production(MONDAY, MONDAY, MONDAY.plusDays(1), Ratio.ONE, 2)), "", false));
            }
        }
        WeekPlan sample = SamplePlan.complete(SamplePlan.book());
        return new WeekPlan(SamplePlan.WEEK, book.fingerprint(), sample.inputs(), menu, List.of(), List.of(), List.of(),
                List.of(), List.of(), sample.account(), List.of(), sample.share(), sample.proof(), List.of(), new TreeMap<>());
    }

    static WeekPlan flowing(WeekPlan p, List<WeekPlan.Flow> flows) {
        return new WeekPlan(p.week(), p.fingerprint(), p.inputs(), p.menu(), p.batches(), p.orders(), p.needs(), flows,
                p.surplus(), p.account(), p.promises(), p.share(), p.proof(), p.missing(), p.swaps());
    }

    /** Every word of a sheet in reading order, a line a block. */
    static String words(Sheet sheet) {
        List<String> words = new ArrayList<>(List.of(sheet.title()));
        words.addAll(sheet.under());
        collect(sheet.blocks(), words);
        return String.join("\n", words);
    }

    static String words(List<Block> blocks) {
        List<String> words = new ArrayList<>();
        collect(blocks, words);
        return String.join("\n", words);
    }

    private static void collect(List<Block> blocks, List<String> words) {
        for (Block block : blocks) {
            if (block instanceof Block.Heading h) {
                words.add(h.text());
            } else if (block instanceof Block.Text t) {
                words.add(t.text());
            } else if (block instanceof Block.Notice n) {
                words.add(n.text());
            } else if (block instanceof Block.Table t) {
                t.rows().forEach(r -> words.add(String.join(" | ", r.cells())));
            } else if (block instanceof Block.Columns c) {
                c.columns().forEach(x -> collect(x, words));
            } else if (block instanceof Block.LabelPage l) {
                l.cells().forEach(x -> collect(x, words));
            }
        }
    }
}
