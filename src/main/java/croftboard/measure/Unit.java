package croftboard.measure;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A unit of a kitchen quantity. Exact sizes are those of UCUM 2.2 and NIST Handbook 44 Appendix C
 * (pound = 453.59237 g, US gallon = 231 cubic inches, bushel = 2150.42 cubic inches).
 *
 * @param name singular name as written in the book
 * @param kind what it measures
 * @param base its exact size in grams, millilitres, minutes or pieces
 */
public record Unit(String name, Kind kind, Ratio base) {
    /** What a unit measures; amounts convert only inside one kind. */
    public enum Kind { MASS, VOLUME, COUNT, TIME }

    private static final Map<String, Unit> BY_NAME = new LinkedHashMap<>();
    private static final Map<String, Unit> SINGULAR = new LinkedHashMap<>();

    public static final Unit GRAM = mass("g", "1", "gram");
    public static final Unit KILOGRAM = mass("kg", "1000");
    public static final Unit OUNCE = mass("oz", "28.349523125", "ounce");
    public static final Unit POUND = mass("lb", "453.59237", "lbs", "pound");
    public static final Unit MILLILITRE = volume("ml", "1", "mL");
    public static final Unit LITRE = volume("L", "1000", "l", "litre", "liter");
    public static final Unit TEASPOON = volume("tsp", "4.92892159375");
    public static final Unit TABLESPOON = volume("tbsp", "14.78676478125");
    public static final Unit FLUID_OUNCE = volume("fl-oz", "29.5735295625");
    public static final Unit CUP = volume("cup", "236.5882365");
    public static final Unit PINT = volume("pt", "473.176473", "pint");
    public static final Unit QUART = volume("qt", "946.352946", "quart");
    public static final Unit GALLON = volume("gal", "3785.411784", "gallon");
    public static final Unit DRY_PINT = volume("dry-pt", "550.6104713575");
    public static final Unit DRY_QUART = volume("dry-qt", "1101.220942715");
    public static final Unit PECK = volume("peck", "8809.76754172");
    public static final Unit BUSHEL = volume("bushel", "35239.07016688");
    public static final Unit SECOND = register(new Unit("s", Kind.TIME, Ratio.of(1, 60)));
    public static final Unit MINUTE = register(new Unit("min", Kind.TIME, Ratio.ONE), "minute");
    public static final Unit HOUR = register(new Unit("h", Kind.TIME, Ratio.of(60)), "hour");
    public static final Unit DAY = register(new Unit("day", Kind.TIME, Ratio.of(1440)));
    public static final Unit EACH = count("each");

    static {
        for (String word : new String[] {"clove", "bunch", "head", "ear", "can", "jar", "slice", "loaf",
            "sprig", "stalk", "sheet", "bag", "piece", "bottle"}) {
            count(word);
        }
    }

    private static Unit mass(String name, String grams, String... aliases) {
        return register(new Unit(name, Kind.MASS, Ratio.decimal(grams)), aliases);
    }

    private static Unit volume(String name, String millilitres, String... aliases) {
        return register(new Unit(name, Kind.VOLUME, Ratio.decimal(millilitres)), aliases);
    }

    private static Unit count(String name) {
        return register(new Unit(name, Kind.COUNT, Ratio.ONE));
    }

    private static Unit register(Unit unit, String... aliases) {
        SINGULAR.put(unit.name, unit);
        BY_NAME.put(unit.name, unit);
        BY_NAME.put(unit.plural(), unit);
        for (String alias : aliases) {
            BY_NAME.put(alias, unit);
            BY_NAME.put(alias.endsWith("s") || alias.length() < 3 ? alias : alias + "s", unit);
        }
        return unit;
    }

    /** The unit of that name, singular or plural; empty when there is none. */
    public static Optional<Unit> named(String text) {
        Unit unit = BY_NAME.get(text);
        return Optional.ofNullable(unit != null ? unit : BY_NAME.get(text.toLowerCase(Locale.ROOT)));
    }

    /** Singular names of all units, in the order of the format's documentation. */
    public static Set<String> names() {
        return SINGULAR.keySet();
    }

    /** Whether amounts of the two units convert: one kind, and for counts the same word. */
    public boolean converts(Unit other) {
        return kind == other.kind && (kind != Kind.COUNT || name.equals(other.name));
    }

    /** {@code cups}, {@code cloves}, {@code lb}; abbreviations have no plural. */
    public String plural() {
        return switch (name) {
            case "cup", "clove", "head", "ear", "can", "jar", "slice", "sprig", "stalk", "sheet", "bag",
                "piece", "bottle", "bushel", "peck", "day" -> name + "s";
            case "bunch" -> "bunches";
            case "loaf" -> "loaves";
            default -> name;
        };
    }

    @Override
    public String toString() {
        return name;
    }
}
