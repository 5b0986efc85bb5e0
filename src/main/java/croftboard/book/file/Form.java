package croftboard.book.file;

import java.util.ArrayList;
import java.util.List;

/**
 * The keys of everything in a book that is written as {@code key: value}. One list for reader,
 * messages and schemas: a test holds it against docs/schema.
 */
enum Form {
    INGREDIENT("ingredients#ingredient", "name origin allergens storage keeps",
            "label made_of gluten_grains tcs thaw keep_worth par free salt cuts measures substitutes"),
    CUT("ingredients#cut", "yield source", ""),
    MEASURE("ingredients#measure", "measure weighs source", "cut of"),
    SUBSTITUTE("ingredients#substitute", "use ratio", "cut"),

    DISH("recipes#dish",
            "name kind fits seasons makes portion price main method cuisine batch_step life hold "
            + "ingredients steps", "weeks cup draw lead loss scaling doneness holding caution "
            + "garlic_in_oil served_raw net_weight item_number"),
    COMPONENT("recipes#component", "name kind makes batch_step life hold ingredients steps",
            "cup lead loss scaling doneness holding caution garlic_in_oil served_raw"),
    WORTH_DISH("recipes#worth", "kind fits worth uses", "name seasons weeks"),
    INGREDIENT_LINE("recipes#line", "use", "ahead substitute"),
    STEP("recipes#step", "do", "station active per_portion unattended uses"),

    VENDOR("vendor#vendor", "name kind place deliveries offers",
            "minimum fee may_buy commitments priorities contact customer order_note"),
    CONTACT("vendor#contact", "", "person address phone email"),
    PLACE("vendor#place", "town state latitude longitude", ""),
    DELIVERY("vendor#delivery", "day cut_off", "window"),
    OFFER("vendor#offer", "item pack holds price grown_at weeks", "as breaks on processed_at local_part number accept"),
    ACCEPTED("vendor#accepted", "say", "at_most price"),
    BREAK("vendor#break", "packs price", ""),
    EXPECTED("vendor#expected", "from to packs confidence", ""),
    COMMITMENT("vendor#commitment", "item pack from to packs", ""),

    KITCHEN("kitchen#kitchen", "open lines",
            "name place time_zone paper prep_days gap stations cooks receiving equipment "
            + "surplus_worth portions waste promises local health_code contact order_note labels packed thaw "
            + "new_dishes_per_month"),
    LABELS("kitchen#labels", "rows columns width height top left", "across down"),
    SERVICE_LINE("kitchen#line", "id course", "name run standing"),
    STATION("kitchen#station", "id name", "overtime"),
    OVERTIME("kitchen#overtime", "limit price", ""),
    COOK("kitchen#cook", "id name hours", ""),
    RECEIVING("kitchen#receiving", "station minutes", ""),
    EQUIPMENT("kitchen#equipment", "id unit", "name per_day per_week held at_once"),
    SURPLUS_WORTH("kitchen#surplus_worth", "walk-in dry freezer", ""),
    PORTIONS("kitchen#portions", "left_worth goodwill", ""),
    PROMISES("kitchen#promises", "empty_slot",
    "coverage variety local_share food_cost labour_evenness change"),
    COVERAGE("kitchen#coverage", "id say mark at_least price", "course diet without"),
    VARIETY("kitchen#variety", "of within at_most price", ""),
    FOOD_COST("kitchen#food_cost", "at_most price", ""),
    LOCAL("kitchen#local", "in_force definitions", ""),
    DEFINITION("kitchen#definition", "id say mixed", "states miles"),
    HEALTH_CODE("kitchen#health_code", "edition authority", ""),

    TARGET("targets#target", "weeks local", ""),
    DEMAND("demand#demand", "lines", "cv weeks"),
    DEMAND_LINE("demand#line", "", "cv mon tue wed thu fri sat sun"),
    DEMAND_FACTOR("demand#factor", "weeks times", ""),
    CLOSURE("closures#closure", "date why", ""),
    EVENT("events#event", "name date guarantee overage price menu", "service diets"),
    EVENT_COURSE("events#course", "id course share", "dish diet"),
    CROP("crops#crop", "crop item weeks region source", ""),
    LEARNED("learned#learned", "version through fingerprint days ran_out lines dishes", "weeks"),
    LEARNED_LINE("learned#line", "cv seen days", ""),
    LEARNED_DAY("learned#day", "portions seen ran_out", ""),
    LEARNED_DISH("learned#dish", "draw seen ran_out", ""),
    LEARNED_WEEK("learned#week", "weeks times", ""),
    OVERRIDE("overrides#override", "week line day portions reason", "instead_of");

    private final String schema;
    private final List<String> required;
    private final List<String> known;

    Form(String schema, String required, String optional) {
        this.schema = schema;
        this.required = words(required);
        List<String> all = new ArrayList<>(this.required);
        all.addAll(words(optional));
        this.known = List.copyOf(all);
    }

    private static List<String> words(String text) {
        return text.isEmpty() ? List.of() : List.of(text.split(" "));
    }

    /** {@code FILE#DEFINITION}: where docs/schema describes it. */
    String schema() {
        return schema;
    }

    List<String> required() {
        return required;
    }

    List<String> known() {
        return known;
    }
}
