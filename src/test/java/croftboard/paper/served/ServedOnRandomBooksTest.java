package croftboard.paper.served;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Ingredient;
import croftboard.book.Ingredient.Origin;
import croftboard.book.RandomBook;
import croftboard.book.Recipe;
import croftboard.paper.Block;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Labels, cards, lists and grids of a thousand random books: nothing known is missing, nothing unknown is called absent. */
class ServedOnRandomBooksTest {
    private static final int BOOKS = 1_000;
    private static final Pattern CONTAINS = Pattern.compile("Contains ([a-z ,]+)\\.");
    private static final Set<Origin> VEGAN = EnumSet.of(Origin.PLANT, Origin.FUNGUS, Origin.MINERAL, Origin.MICROBE);
    private static final String NONE = "lists none";
    private static final String OPEN = "not stated";

    /** What a plain walk through the tree finds. */
    private record Truth(Set<String> known, Set<String> open, boolean vegan) {
        static Truth of(Book book, Recipe dish) {
            Truth truth = new Truth(new TreeSet<>(), new TreeSet<>(), true);
            boolean vegan = walk(book, dish, truth);
            return new Truth(truth.known, truth.open, vegan && truth.open.isEmpty());
        }

        private static boolean walk(Book book, Recipe recipe, Truth into) {
            boolean vegan = true;
            for (Recipe.Line line : recipe.ingredients()) {
                Ingredient i = book.ingredients().get(line.item());
                if (i == null) {
                    vegan &= walk(book, book.recipe(line.item()), into);
                    continue;
                }
                i.allergens().contains().forEach(w -> into.known.add(w.replace("fish-", "")));
                if (!i.allergens().othersKnown()) {
                    into.open.add(i.name());
                }
                vegan &= VEGAN.containsAll(i.origins());
            }
            return vegan;
        }
    }

    private static void eachBook(BiConsumer<PaperContext, Integer> check) {
        for (int seed = 1; seed <= BOOKS; seed++) {
            check.accept(EveryDish.of(RandomBook.of(seed)), seed);
        }
    }

    private static void holds(String words, Truth truth, String where) {
        Set<String> said = new TreeSet<>();
        Matcher m = CONTAINS.matcher(words);
        if (m.find()) {
            said.addAll(List.of(m.group(1).split(", ")));
        }
        assertThat(said).as(where).isEqualTo(truth.known());
        if (truth.open().isEmpty()) {
            assertThat(words).as(where).doesNotContain(OPEN);
            assertThat(words.contains(NONE)).as(where).isEqualTo(truth.known().isEmpty());
        } else {
            assertThat(words).as(where).contains(OPEN, String.join(", ", truth.open())).doesNotContain(NONE);
        }
        assertThat(words.toLowerCase(java.util.Locale.ROOT).contains("vegan by recipe")).as(where).isEqualTo(truth.vegan());
    }

    @Test
    void cards_sayAllThatIsKnown_andNothingMore() {
        int[] cards = new int[2];
        eachBook((context, seed) -> {
            List<Recipe> dishes = context.book().recipes().values().stream().filter(Recipe::isDish).toList();
            List<String> words = new ArrayList<>();
            for (Sheet sheet : new CaseCards().make(context)) {
                sheet.blocks().forEach(b -> ((Block.LabelPage) b).cells().forEach(c -> words.add(EveryDish.words(c))));
            }
            assertThat(words).hasSize(dishes.size());
            for (Recipe dish : dishes) {
                Truth truth = Truth.of(context.book(), dish);
                String card = words.stream().filter(w -> w.startsWith(dish.name() + "\n")).findFirst().orElseThrow();
                holds(card, truth, "card of " + dish.id() + " in book " + seed);
                cards[truth.open().isEmpty() ? 0 : 1]++;
            }
        });
        assertThat(cards[0]).isGreaterThan(2_000);
        assertThat(cards[1]).isGreaterThan(2_000);
    }

    @Test
    void labels_arePrintedOnlyWhenComplete_andTheListSaysTheRest() {
        int[] printed = new int[1];
        eachBook((context, seed) -> {
            for (PackLabel label : Labels.labels(context, EveryDish.LARGE)) {
                Truth truth = Truth.of(context.book(), context.book().recipe(label.dish().id()));
                String where = "label of " + label.dish().id() + " in book " + seed;
                assertThat(label.printed()).as(where).isEqualTo(truth.open().isEmpty());
                if (label.printed()) {
                    holds(EveryDish.words(label.words()), truth, where);
                    printed[0]++;
                } else {
                    assertThat(String.join("; ", label.why())).contains(String.join(", ", truth.open()));
                }
            }
        });
        assertThat(printed[0]).isGreaterThan(2_000);
    }

    @Test
    void lists_holdEveryDish_andNoLabelOfAnOpenOne() {
        eachBook((context, seed) -> {
            List<Sheet> sheets = new Labels().make(context);
            String list = EveryDish.words(sheets.get(0));
            String pages = sheets.subList(1, sheets.size()).stream().map(EveryDish::words).collect(Collectors.joining("\n"));
            for (Recipe dish : context.book().recipes().values().stream().filter(Recipe::isDish).toList()) {
                Truth truth = Truth.of(context.book(), dish);
                assertThat(list).contains(dish.name());
                assertThat(("\n" + pages).contains("\n" + dish.name() + "\n")).isEqualTo(truth.open().isEmpty());
            }
            assertThat(pages).doesNotContain(OPEN);
        });
    }

    @Test
    void grid_neverSaysNoOfWhatIsOpen() {
        eachBook((context, seed) -> {
            Sheet grid = new CoverageGrid().make(context).get(0);
            for (List<String> row : grid.data().rows()) {
                Truth truth = Truth.of(context.book(), context.book().recipe(row.get(1)));
                List<String> nine = row.subList(3, 12);
                String where = row + " in book " + seed;
                if (!truth.open().isEmpty()) {
                    assertThat(nine).as(where).doesNotContain("no");
                }
                assertThat(nine.get(0).equals("yes")).as(where).isEqualTo(truth.known().contains("milk"));
                assertThat(nine.get(4).equals("yes")).as(where).isEqualTo(truth.known().contains("walnut"));
                assertThat(nine.get(2).equals("yes")).as(where).isEqualTo(truth.known().contains("cod"));
                assertThat(row.get(13).equals("yes")).as(where).isEqualTo(truth.vegan());
            }
        });
    }

    @Test
    void membersSheet_saysOfEachDishWhatItsCardSays() {
        eachBook((context, seed) -> {
            String letter = EveryDish.words(new MembersSheets().make(context).get(0));
            for (Recipe dish : context.book().recipes().values().stream().filter(Recipe::isDish).toList()) {
                String after = letter.substring(letter.indexOf("\n" + dish.name() + ", $") + 1);
                String words = after.substring(after.indexOf('\n') + 1).split("\n")[0];
                holds(words, Truth.of(context.book(), dish), dish.id() + " in book " + seed);
            }
        });
    }
}
