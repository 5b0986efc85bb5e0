package croftboard.plan.change;

import croftboard.measure.Amount;
import croftboard.measure.Cents;
import java.time.DayOfWeek;
import java.util.Optional;

/**
 * One fact that differs from what a plan was made with. Days are days of the plan's week; a delivery of the week before is
 * named by its weekday as well, as far as only one delivery of the order fits.
 */
public sealed interface Change {
    <T> T to(Listener<T> listener);

    /** The change as a line of the grammar: reading it again gives an equal change. */
    default String sentence() {
        return to(new ChangeSentence());
    }

    /** A vendor brings so many packs of what was ordered, in place of the number ordered. @param day empty: the one order that holds it */
    record Got(String vendor, String item, Optional<DayOfWeek> day, int packs) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.got(this);
        }
    }

    /** A delivery comes later in the week. */
    record Late(String vendor, DayOfWeek day, DayOfWeek until) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.late(this);
        }
    }

    /** A vendor brings nothing. @param day empty: on no day that is still to come */
    record VendorOut(String vendor, Optional<DayOfWeek> day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.vendorOut(this);
        }
    }

    /** An item cannot be had from anyone on deliveries still to come: a crop has failed. */
    record ItemOut(String item) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.itemOut(this);
        }
    }

    /** A pack has another price. @param price cents a pack */
    record Price(String vendor, String item, Cents price) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.price(this);
        }
    }

    /** An order was never sent: past its cut-off nothing comes of it. */
    record NotSent(String vendor, DayOfWeek day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.notSent(this);
        }
    }

    /** More packs of an item than the vendor had announced. @param price cents a pack. @param day delivered on */
    record More(String vendor, String item, int packs, Cents price, DayOfWeek day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.more(this);
        }
    }

    /** Packs beyond what a vendor had announced, and all of them are taken. @param price cents a pack. @param day delivered on */
    record Take(String vendor, String item, int packs, Cents price, DayOfWeek day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.take(this);
        }
    }

    /** Part of what is in the house is lost: spoiled, dropped, miscounted. @param day empty: today */
    record Lost(String item, Amount amount, Optional<DayOfWeek> day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.lost(this);
        }
    }

    /** A batch is lost whole: a failed cooling log, a burnt pot. @param day it was made or is being made */
    record BatchLost(String recipe, DayOfWeek day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.batchLost(this);
        }
    }

    /** The store does not open. Nothing is sold; the kitchen may still work. */
    record DayClosed(DayOfWeek day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.dayClosed(this);
        }
    }

    record CookOut(String cook, DayOfWeek day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.cookOut(this);
        }
    }

    record EquipmentOut(String equipment, DayOfWeek day) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.equipmentOut(this);
        }
    }

    /** A dish is wanted in a slot. @param slot {@code mon/hot-main-1} */
    record Wanted(String slot, String dish) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.wanted(this);
        }
    }

    /** A dish is not wanted in a slot. */
    record Unwanted(String slot, String dish) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.unwanted(this);
        }
    }

    /** At least so many packs are to be bought: "why not this vendor", "why not local carrots". */
    record Buy(String vendor, String item, int packs) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.buy(this);
        }
    }

    /** More hands at a station, for asking what they would be worth. @param minutes may be negative */
    record Hands(String station, DayOfWeek day, int minutes) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.hands(this);
        }
    }

    /** More of an equipment's units, for asking what they would be worth. @param units may be negative */
    record Units(String equipment, DayOfWeek day, int units) implements Change {
        @Override
        public <T> T to(Listener<T> listener) {
            return listener.units(this);
        }
    }

    /** Hears one kind of change each. */
    interface Listener<T> {
        T got(Got c);

        T late(Late c);

        T vendorOut(VendorOut c);

        T itemOut(ItemOut c);

        T price(Price c);

        T notSent(NotSent c);

        T more(More c);

        T take(Take c);

        T lost(Lost c);

        T batchLost(BatchLost c);

        T dayClosed(DayClosed c);

        T cookOut(CookOut c);

        T equipmentOut(EquipmentOut c);

        T wanted(Wanted c);

        T unwanted(Unwanted c);

        T buy(Buy c);

        T hands(Hands c);

        T units(Units c);
    }
}
