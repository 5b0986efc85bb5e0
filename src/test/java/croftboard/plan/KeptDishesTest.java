package croftboard.plan;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.RandomBook;
import croftboard.book.file.BookReader;
import croftboard.book.file.SmallKitchen;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class KeptDishesTest {
    private static List<String> faults(Book book, String slot, String dish) {
        return ProblemBuilder.build(book, RandomBook.WEEK, Map.of(slot, dish), Given.NOTHING, Optional.empty()).keptFaults();
    }

    @Test
    void dishThatCanBeMadeInTime_isKept() {
        assertThat(faults(SmallKitchen.book(), "mon/hot-main-1", "chickpea-salad")).isEmpty();
    }

    @Test
    void dishThatNoPrepDayMakesInTime_isRefused() {
        var files = SmallKitchen.files(SmallKitchen.FOLDER);
        String kitchen = new String(files.get("kitchen/kitchen.yaml"), StandardCharsets.UTF_8)
                .replace("prep_days: [sun, mon", "prep_days: [mon").replace("hours: {sun: {hot: 4 h}, ", "hours: {")
                .replace("hours: {sun: {cold: 4 h}, ", "hours: {");
        files.put("kitchen/kitchen.yaml", kitchen.getBytes(StandardCharsets.UTF_8));
        Book book = BookReader.readFiles(files).orElseThrow();
        assertThat(faults(book, "mon/hot-main-1", "chickpea-salad")).singleElement().asString()
                .startsWith("--keep mon/hot-main-1=chickpea-salad: no prep day");
    }

    @Test
    void componentKeptAtAnEvent_isRefusedInWords() {
        assertThat(faults(SmallKitchen.book(), "harvest-meal/side", "soffritto")).singleElement().asString()
                .contains("no dish soffritto");
    }

    @Test
    void slotThatIsNone_isRefused() {
        assertThat(faults(SmallKitchen.book(), "sun/hot-main-1", "lentil-bake")).singleElement().asString()
                .contains("no slot sun/hot-main-1");
    }
}
