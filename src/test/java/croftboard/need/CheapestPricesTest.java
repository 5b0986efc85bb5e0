package croftboard.need;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.file.BookReader;
import croftboard.measure.IsoWeek;
import croftboard.measure.Ratio;
import croftboard.measure.Unit;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class CheapestPricesTest {
    private static final Book BOOK = BookReader.read(Path.of("src/test/resources/kitchens/small")).orElseThrow();

    private static CheapestPrices.Price price(String item, int week) {
        return new CheapestPrices(BOOK, new IsoWeek(2027, week)).of(item).orElseThrow();
    }

    private static Ratio perPound(String item, int week) {
        return price(item, week).centsPerGram().times(Unit.POUND.base());
    }

    @Test
    void calendarPrice_ofTheCheaperVendor() {
        // 50 lb for $41.00 is less a pound than 25 lb for $24.00
        assertThat(perPound("carrot", 30)).isEqualTo(Ratio.of(4100, 50));
        assertThat(price("carrot", 30).vendor()).isEqualTo("mill-run-depot");
    }

    @Test
    void listOfTheWeek_overridesTheCalendarPrice() {
        // W33's list: 10 lb for $9.50, calendar $9.00; the depot's 50 lb for $33.00 stays cheaper
        assertThat(perPound("onion-yellow", 33)).isEqualTo(Ratio.of(3300, 50));
        // thyme is absent from the grower's list of W33, but the calendar of other weeks offers it
        assertThat(price("thyme", 33).vendor()).isEqualTo("mill-run-depot");
        assertThat(price("thyme", 33).ofWeek()).isTrue();
    }

    @Test
    void itemOutOfSeason_hasThePriceOfTheYear() {
        Book farmOnly = new Book(BOOK.kitchen(), BOOK.ingredients(), BOOK.recipes(),
                java.util.Map.of("hollow-brook", BOOK.vendor("hollow-brook")), BOOK.seasons(), BOOK.lists(), BOOK.onHand(),
                BOOK.fingerprint());
        CheapestPrices.Price winter = new CheapestPrices(farmOnly, new IsoWeek(2027, 2)).of("thyme").orElseThrow();
        assertThat(winter.ofWeek()).isFalse();
        CheapestPrices.Price summer = new CheapestPrices(farmOnly, new IsoWeek(2027, 28)).of("thyme").orElseThrow();
        assertThat(summer.ofWeek()).isTrue();
        assertThat(new CheapestPrices(farmOnly, new IsoWeek(2027, 33)).of("thyme").orElseThrow().ofWeek()).isFalse();
    }

    @Test
    void whatNobodySells_hasNoPriceAndCostsNothing() {
        CheapestPrices prices = new CheapestPrices(BOOK, new IsoWeek(2027, 33));
        assertThat(prices.of("water")).isEmpty();
        assertThat(prices.cents("water", Ratio.of(1000))).isEqualTo(Ratio.ZERO);
    }
}
