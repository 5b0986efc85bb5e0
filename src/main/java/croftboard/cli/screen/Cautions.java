package croftboard.cli.screen;

import croftboard.book.Kitchen;

/** What must be said wherever people could rely on a statement. The local health authority always decides. */
final class Cautions {
    private Cautions() { }

    /** Beside every allergen or diet statement. */
    static String allergens(Kitchen kitchen) {
        return "Allergens and diets are computed from this book's recipes and supplier statements only. Check the label"
                + " of this delivery, above all after a substitution. Shared tools, oil, slicers and surfaces can carry"
                + " allergens. Not stated is never free of. " + decides(kitchen);
    }

    /** Beside garlic kept in oil; the four days are those of the National Center for Home Food Preservation (2015). */
    static String garlicInOil(Kitchen kitchen) {
        return "Garlic in oil can grow the botulism toxin without smell or taste: make it fresh, keep it at 40 F or below,"
                + " use it within 4 days or freeze it, never leave it at room temperature. " + decides(kitchen);
    }

    static String cooling(Kitchen kitchen) {
        return "A hot batch that is to be kept cold: from 135 F to 70 F within 2 hours and to 41 F within 6 hours in all;"
                + " split large batches. " + decides(kitchen);
    }

    /** Under every sheet that prints a date or a temperature. */
    static String decides(Kitchen kitchen) {
        return "Limits after " + kitchen.healthCodeEdition() + "; " + kitchen.healthAuthority() + " decides.";
    }
}
