package croftboard.book.file;

import croftboard.book.Kitchen;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every word that names something elsewhere must find it. What a file that did not parse would have
 * defined is not missed: then no word that may mean it is reported.
 */
final class Links {
    private final Notebook notebook;
    private final Drafts drafts;
    private final Map<Pointer.To, Set<String>> known = new EnumMap<>(Pointer.To.class);

    Links(Notebook notebook, Drafts drafts) {
        this.notebook = notebook;
        this.drafts = drafts;
        Set<String> items = new LinkedHashSet<>(drafts.ingredients.keySet());
        items.addAll(drafts.recipes.keySet());
        know(Pointer.To.INGREDIENT, drafts.ingredients.keySet(), FileKind.INGREDIENTS);
        if (!notebook.isUnread(FileKind.INGREDIENTS)) {
            know(Pointer.To.ITEM, items, FileKind.RECIPES);
        }
        Set<String> dishes = new LinkedHashSet<>();
        drafts.recipes.forEach((id, recipe) -> {
            if (recipe.isDish()) {
                dishes.add(id);
            }
        });
        know(Pointer.To.DISH, dishes, FileKind.RECIPES);
        know(Pointer.To.SEASON, drafts.seasons.keySet(), FileKind.SEASONS);
        know(Pointer.To.VENDOR, drafts.vendors.keySet(), FileKind.VENDOR);
        drafts.kitchen.ifPresent(this::knowKitchen);
    }

    private void know(Pointer.To to, Collection<String> words, FileKind from) {
        if (!notebook.isUnread(from)) {
            known.put(to, new LinkedHashSet<>(words));
        }
    }

    private void knowKitchen(Kitchen kitchen) {
        boolean sound = notebook.isSound(kitchen);
        if (sound || !kitchen.stations().isEmpty()) {
            known.put(Pointer.To.STATION, words(kitchen.stations().stream().map(Kitchen.Station::id)
                    .toList()));
        }
        if (sound || !kitchen.lines().isEmpty()) {
            known.put(Pointer.To.LINE, words(kitchen.lines().stream().map(Kitchen.ServiceLine::id)
                    .toList()));
            known.put(Pointer.To.COURSE, words(kitchen.lines().stream().map(Kitchen.ServiceLine::course)
                    .toList()));
        }
    }

    private static Set<String> words(Collection<String> words) {
        return new LinkedHashSet<>(words);
    }

    void check() {
        for (Pointer pointer : notebook.pointers()) {
            Set<String> words = known.get(pointer.to());
            if (words != null && Values.isId(pointer.word()) && !words.contains(pointer.word())) {
                dangling(pointer, words);
            }
        }
        drafts.recipes.forEach((id, recipe) -> {
            if (drafts.ingredients.containsKey(id)) {
                notebook.fault(notebook.spotOf(recipe), Notebook.show(id)
                        + " is both a recipe and the ingredient in "
                        + notebook.spotOf(drafts.ingredients.get(id)), "rename one of them");
            }
        });
        drafts.kitchen.filter(k -> notebook.isSound(k) || !k.equipment().isEmpty())
                .ifPresent(this::equipment);
    }

    private void dangling(Pointer pointer, Set<String> words) {
        String word = Notebook.show(pointer.word());
        if (pointer.to() == Pointer.To.INGREDIENT && drafts.recipes.containsKey(pointer.word())) {
            notebook.fault(pointer.spot(), word + " is a recipe where " + pointer.from()
                    + " names an ingredient",
                    "name an ingredient");
        } else if (pointer.to() == Pointer.To.DISH && drafts.recipes.containsKey(pointer.word())) {
            notebook.fault(pointer.spot(), word + " is a component, which is not sold",
                    "name a dish, or give it kind: dish");
        } else {
            notebook.fault(pointer.spot(), "no " + noun(pointer.to()) + " is called " + word,
                    remedy(pointer, words));
        }
    }

    private String remedy(Pointer pointer, Set<String> words) {
        return notebook.meant(pointer.word(), words, switch (pointer.to()) {
            case INGREDIENT -> "add it under kitchen/ingredients/";
            case ITEM -> "add it under kitchen/ingredients/ or recipes/";
            case DISH -> "add it under recipes/";
            case SEASON -> few("the seasons are ", words, "add it to seasons/seasons.yaml");
            case STATION -> few("the stations are ", words, "add it to kitchen/kitchen.yaml");
            case LINE -> few("the lines are ", words, "add it to kitchen/kitchen.yaml");
            case COURSE -> few("the lines have the courses ", words, "add a line of that course");
            case VENDOR -> "write here, unknown, or the name of a file under farms/";
        });
    }

    private static String few(String start, Set<String> words, String otherwise) {
        return words.isEmpty() || words.size() > 12 ? otherwise : start + String.join(", ", words);
    }

    private static String noun(Pointer.To to) {
        return switch (to) {
            case INGREDIENT -> "ingredient";
            case ITEM -> "ingredient or recipe";
            case DISH -> "dish";
            case SEASON -> "season";
            case STATION -> "station";
            case LINE -> "line";
            case COURSE -> "course of any line";
            case VENDOR -> "vendor";
        };
    }

    private void equipment(Kitchen kitchen) {
        Map<String, Kitchen.Equipment> byId = new LinkedHashMap<>();
        kitchen.equipment().forEach(e -> byId.put(e.id(), e));
        for (StepReader.EquipmentUse use : notebook.uses()) {
            Optional<Kitchen.Equipment> equipment = Optional.ofNullable(byId.get(use.equipment()));
            if (equipment.isEmpty() && Values.isId(use.equipment())) {
                notebook.fault(use.spot(), "no equipment is called " + Notebook.show(use.equipment()),
                        notebook.meant(use.equipment(), byId.keySet(),
                        few("the equipment is ", byId.keySet(),
                                "add it to kitchen/kitchen.yaml")));
            }
            equipment.filter(e -> use.unit().isPresent() && !use.matches(e.unit())).ifPresent(e ->
                    notebook.fault(use.unitSpot(), "[" + e.id() + "] is counted in " + e.unit()
                    + ", not in "
                            + Notebook.show(use.unit().orElse("")), "write the number and " + e.unit()));
        }
    }
}
