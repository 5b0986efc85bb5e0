package croftboard.book.file;

import croftboard.book.Ingredient;
import croftboard.book.Kitchen;
import croftboard.book.Learned;
import croftboard.book.ListedOffer;
import croftboard.book.ManagersFigure;
import croftboard.book.OnHand;
import croftboard.book.Recipe;
import croftboard.book.Seasons;
import croftboard.book.Vendor;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.WeekRange;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What the files have given so far, faulty records included; the checks across files read it. */
final class Drafts {
    final Map<String, Ingredient> ingredients = new TreeMap<>();
    final Map<String, Recipe> recipes = new TreeMap<>();
    final Map<String, Vendor> vendors = new TreeMap<>();
    final Map<IsoWeek, List<ListedOffer>> lists = new TreeMap<>();
    final List<OnHand> onHand = new ArrayList<>();
    final Map<String, WeekRange> seasons = new TreeMap<>();
    final List<Seasons.Target> targets = new ArrayList<>();
    final Map<String, DemandDraft> demand = new TreeMap<>();
    final List<Seasons.DemandFactor> demandFactors = new ArrayList<>();
    final Map<LocalDate, String> closures = new TreeMap<>();
    final List<Seasons.Event> events = new ArrayList<>();
    final List<Seasons.Crop> crops = new ArrayList<>();
    final List<ManagersFigure> overrides = new ArrayList<>();
    Optional<Learned> learned = Optional.empty();
    Optional<Kitchen> kitchen = Optional.empty();

    /** @param mean portions by weekday. @param written days that the file names, faulty ones included */
    record DemandDraft(Spot spot, Ratio cv, Map<DayOfWeek, Ratio> mean, Set<DayOfWeek> written) { }

    /** Whether the book is one of the kind "worth only": every dish states its worth. */
    boolean isWorthOnly() {
        boolean any = false;
        for (Recipe recipe : recipes.values()) {
            if (recipe.worthOnly().isEmpty()) {
                return false;
            }
            any = true;
        }
        return any;
    }
}
