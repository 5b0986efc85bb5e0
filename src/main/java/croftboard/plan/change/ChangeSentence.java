package croftboard.plan.change;

import croftboard.measure.Cents;
import java.time.DayOfWeek;
import java.util.Locale;

/** Writes a change as the sentence that {@link ChangeGrammar} reads. */
final class ChangeSentence implements Change.Listener<String> {
    static String day(DayOfWeek day) {
        return day.name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    private static String money(Cents cents) {
        return String.format(Locale.ROOT, "$%d.%02d", cents.value() / 100, cents.value() % 100);
    }

    private static String signed(int units) {
        return (units < 0 ? "" : "+") + units;
    }

    @Override
    public String got(Change.Got c) {
        return c.vendor() + "/" + c.item() + " got " + c.packs() + c.day().map(d -> " " + day(d)).orElse("");
    }

    @Override
    public String late(Change.Late c) {
        return c.vendor() + " late " + day(c.day()) + " until " + day(c.until());
    }

    @Override
    public String vendorOut(Change.VendorOut c) {
        return c.vendor() + " out" + c.day().map(d -> " " + day(d)).orElse("");
    }

    @Override
    public String itemOut(Change.ItemOut c) {
        return "item " + c.item() + " out";
    }

    @Override
    public String price(Change.Price c) {
        return c.vendor() + "/" + c.item() + " price " + money(c.price());
    }

    @Override
    public String notSent(Change.NotSent c) {
        return c.vendor() + " not sent " + day(c.day());
    }

    @Override
    public String more(Change.More c) {
        return c.vendor() + "/" + c.item() + " more " + c.packs() + " at " + money(c.price()) + " " + day(c.day());
    }

    @Override
    public String take(Change.Take c) {
        return c.vendor() + "/" + c.item() + " take " + c.packs() + " at " + money(c.price()) + " " + day(c.day());
    }

    @Override
    public String lost(Change.Lost c) {
        return c.item() + " lost " + c.amount().value() + " " + c.amount().unit().name()
                + c.day().map(d -> " " + day(d)).orElse("");
    }

    @Override
    public String batchLost(Change.BatchLost c) {
        return "batch " + c.recipe() + " " + day(c.day()) + " lost";
    }

    @Override
    public String dayClosed(Change.DayClosed c) {
        return "closed " + day(c.day());
    }

    @Override
    public String cookOut(Change.CookOut c) {
        return "cook " + c.cook() + " out " + day(c.day());
    }

    @Override
    public String equipmentOut(Change.EquipmentOut c) {
        return "equipment " + c.equipment() + " out " + day(c.day());
    }

    @Override
    public String wanted(Change.Wanted c) {
        return "want " + c.slot() + " " + c.dish();
    }

    @Override
    public String unwanted(Change.Unwanted c) {
        return "not " + c.slot() + " " + c.dish();
    }

    @Override
    public String buy(Change.Buy c) {
        return "buy " + c.vendor() + "/" + c.item() + " " + c.packs();
    }

    @Override
    public String hands(Change.Hands c) {
        return "hands " + c.station() + " " + day(c.day()) + " " + signed(c.minutes()) + " min";
    }

    @Override
    public String units(Change.Units c) {
        return "equipment " + c.equipment() + " " + day(c.day()) + " " + signed(c.units());
    }
}
