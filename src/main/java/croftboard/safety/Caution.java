package croftboard.safety;

import croftboard.book.Kitchen;

/** What must be said wherever people could rely on a statement. The local health authority always decides. */
public final class Caution {
    private Caution() { }

    /** Beside every statement on contents, short enough for a card or a label. */
    public static String shared() {
        return "Computed from recipes and suppliers' statements. Shared tools, oil, slicers and surfaces can carry"
                + " allergens that are not named here.";
    }

    /** Beside every statement on contents that the staff reads. */
    public static String staff(Kitchen kitchen) {
        return shared() + " Check the label of this delivery, above all after a substitution. Not stated is never free of. "
                + decides(kitchen);
    }

    /** National Center for Home Food Preservation (2015). */
    public static String garlicInOil(FoodCode code) {
        return "Garlic in oil can grow the botulism toxin without smell or taste: make it fresh, keep it at "
                + code.limit(Rule.GARLIC_IN_OIL_COLD).shown() + " or below, use it within "
                + code.limit(Rule.GARLIC_IN_OIL_DAYS).shown() + " or freeze it, never leave it at room temperature.";
    }

    /** For cooking at home: only freezing is ever proposed to keep food. */
    public static String keepingAtHome() {
        return "To keep it longer, freeze it. Do not can, bottle or seal it: that needs a tested process, ask your extension"
                + " office first.";
    }

    public static String decides(Kitchen kitchen) {
        return "Limits after " + kitchen.healthCodeEdition() + "; " + kitchen.healthAuthority() + " decides.";
    }

    /** Under every limit: which edition it is from, and who decides. */
    public static String limits(FoodCode code, Kitchen kitchen) {
        String from = code.onFile() ? "Limits: " + code.name()
                : "The kitchen works by " + kitchen.healthCodeEdition() + ", which has no table here: limits are the "
                        + code.name();
        return from + "; " + kitchen.healthAuthority() + " decides. Where its number is stricter, write it over this one.";
    }
}
