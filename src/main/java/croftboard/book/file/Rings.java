package croftboard.book.file;

import croftboard.book.Recipe;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** No recipe may be made from itself, however far around. One fault for each line that closes a ring. */
final class Rings {
    private static final int SHOWN = 12;
    private final Notebook notebook;
    private final Map<String, Recipe> recipes;
    private final Map<String, Integer> depthOnPath = new HashMap<>();
    private final Map<String, Boolean> done = new HashMap<>();
    private final List<String> path = new ArrayList<>();
    private final List<Integer> next = new ArrayList<>();

    /** What is also the name of an ingredient, a fault of its own, is taken for the ingredient. */
    Rings(Notebook notebook, Drafts drafts) {
        this.notebook = notebook;
        this.recipes = new TreeMap<>(drafts.recipes);
        recipes.keySet().removeAll(drafts.ingredients.keySet());
    }

    /** Walks without recursion: a chain of recipes may be as long as a file allows. */
    void check() {
        for (String start : recipes.keySet()) {
            if (!done.containsKey(start)) {
                enter(start);
                while (!path.isEmpty()) {
                    step();
                }
            }
        }
    }

    private void enter(String id) {
        depthOnPath.put(id, path.size());
        path.add(id);
        next.add(0);
    }

    private void step() {
        int top = path.size() - 1;
        List<Recipe.Line> lines = recipes.get(path.get(top)).ingredients();
        int at = next.get(top);
        if (at == lines.size()) {
            done.put(path.get(top), true);
            depthOnPath.remove(path.get(top));
            path.remove(top);
            next.remove(top);
            return;
        }
        next.set(top, at + 1);
        Recipe.Line line = lines.get(at);
        Integer ringStart = depthOnPath.get(line.item());
        if (ringStart != null) {
            ring(line, path.subList(ringStart, path.size()));
        } else if (recipes.containsKey(line.item()) && !done.containsKey(line.item())) {
            enter(line.item());
        }
    }

    private void ring(Recipe.Line line, List<String> ring) {
        List<String> shown = new ArrayList<>(ring.subList(0, Math.min(SHOWN, ring.size())));
        if (ring.size() > SHOWN) {
            shown.add("...");
        }
        shown.add(line.item());
        notebook.fault(notebook.spotOf(line, "item"), "[" + line.item() + "] is made from itself: "
                + String.join(" -> ", shown), "take it out of one of these recipes");
    }
}
