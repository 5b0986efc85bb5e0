package croftboard.book.file;

import croftboard.book.Nearest;
import java.util.List;
import java.util.Optional;

/** The kinds of files of a book, told by their paths. */
enum FileKind {
    KITCHEN, INGREDIENTS, ON_HAND, RECIPES, VENDOR, LIST, SEASONS, TARGETS, DEMAND, CLOSURES, EVENTS, CROPS;

    static final String KITCHEN_PATH = "kitchen/kitchen.yaml";
    static final String ON_HAND_PATH = "kitchen/on-hand.csv";
    private static final List<String> FIXED = List.of(KITCHEN_PATH, ON_HAND_PATH, "seasons/seasons.yaml",
            "seasons/targets.yaml", "seasons/demand.yaml", "seasons/closures.yaml", "seasons/events.yaml",
            "seasons/crops.yaml");

    /** The kind of a path; empty when the book has no such file. */
    static Optional<FileKind> of(String path) {
        if (path.equals(KITCHEN_PATH)) {
            return Optional.of(KITCHEN);
        }
        if (path.equals(ON_HAND_PATH)) {
            return Optional.of(ON_HAND);
        }
        int slash = path.lastIndexOf('/');
        String folder = slash < 0 ? "" : path.substring(0, slash);
        String name = path.substring(slash + 1);
        if (folder.equals("farms/lists")) {
            return name.endsWith(".csv") ? Optional.of(LIST) : Optional.empty();
        }
        if (!name.endsWith(".yaml")) {
            return Optional.empty();
        }
        return switch (folder) {
            case "kitchen/ingredients" -> Optional.of(INGREDIENTS);
            case "recipes" -> Optional.of(RECIPES);
            case "farms" -> Optional.of(VENDOR);
            case "seasons" -> season(name);
            default -> Optional.empty();
        };
    }

    private static Optional<FileKind> season(String name) {
        return switch (name) {
            case "seasons.yaml" -> Optional.of(SEASONS);
            case "targets.yaml" -> Optional.of(TARGETS);
            case "demand.yaml" -> Optional.of(DEMAND);
            case "closures.yaml" -> Optional.of(CLOSURES);
            case "events.yaml" -> Optional.of(EVENTS);
            case "crops.yaml" -> Optional.of(CROPS);
            default -> Optional.empty();
        };
    }

    /** Whether the path is read, or is so near to one that leaving it aside in silence would be a trap. */
    static boolean isOfBook(String path) {
        return of(path).isPresent() || path.endsWith(".yaml") || path.endsWith(".yml")
                || path.endsWith(".csv");
    }

    /** The kinds that a path, or the files of a folder of that path, are of. */
    static List<FileKind> under(String path) {
        Optional<FileKind> kind = of(path);
        if (kind.isPresent()) {
            return List.of(kind.get());
        }
        return switch (path) {
            case "kitchen" -> List.of(KITCHEN, INGREDIENTS, ON_HAND);
            case "kitchen/ingredients" -> List.of(INGREDIENTS);
            case "recipes" -> List.of(RECIPES);
            case "farms" -> List.of(VENDOR, LIST);
            case "farms/lists" -> List.of(LIST);
            case "seasons" -> List.of(SEASONS, TARGETS, DEMAND, CLOSURES, EVENTS, CROPS);
            default -> List.of();
        };
    }

    /** What to do about a path of which the book has no kind; empty when it may lie there unread. */
    static Optional<String> strange(String path, Nearest nearest) {
        boolean own = BookFolder.FOLDERS.contains(path.substring(0, Math.max(0, path.indexOf('/'))));
        if (path.startsWith("/") || path.contains("\\") || List.of(path.split("/")).contains("..")) {
            return Optional.of("name files inside the book only");
        }
        if (!own || !isOfBook(path) || path.startsWith("seasons/") && path.endsWith(".csv")) {
            return Optional.empty();
        }
        if (path.endsWith(".yml")) {
            return Optional.of("rename it to " + baseName(path) + ".yaml");
        }
        return Optional.of(nearest.of(path, FIXED).map(p -> "did you mean " + p + "?").orElse(
                "move it into kitchen/ingredients/, recipes/, farms/ or farms/lists/, or out of the book"));
    }

    /** {@code hollow-brook} of {@code farms/hollow-brook.yaml}. */
    static String baseName(String path) {
        String name = path.substring(path.lastIndexOf('/') + 1);
        int dot = name.lastIndexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }
}
