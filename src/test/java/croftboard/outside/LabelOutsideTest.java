package croftboard.outside;

import static croftboard.book.FoodBook.food;
import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.FoodBook;
import croftboard.measure.Cents;
import croftboard.paper.served.IngredientList;
import croftboard.paper.served.PriceBars;
import croftboard.paper.served.PriceNumber;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.LuminanceSource;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import java.util.Arrays;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Labels and price numbers against published rules and examples, each with its source. */
class LabelOutsideTest {
    private static Book pasta() {
        return new FoodBook().food(food("pasta")).food(food("tomato")).food(food("oil")).food(food("basil"))
                .food(food("salt")).food(food("pepper"))
                .recipe("dish", "1000 g", "8 g pepper", "12 g salt", "30 g basil", "150 g oil", "300 g tomato", "500 g pasta")
                .build();
    }

    /** 21 CFR 101.4(a)(1): descending weight, whatever the order of addition. (a)(2): 2 % or less may stand at the end. */
    @Test
    void ingredients_standInDescendingWeight_saltAndPepperInTheTail() {
        IngredientList list = IngredientList.of(pasta(), pasta().recipe("dish"), Map.of());
        assertThat(list.entries()).extracting(IngredientList.Entry::name)
                .containsExactly("pasta", "tomato", "oil", "basil", "salt", "pepper");
        assertThat(list.tail()).extracting(IngredientList.Entry::name).containsExactly("salt", "pepper");
        assertThat(list.sentence())
                .isEqualTo("Ingredients: pasta, tomato, oil, basil, contains 2% or less of: salt, pepper.");
    }

    /** 101.4(a)(2): nothing in the tail may exceed the threshold, which is 2 %: exactly 2 % may stand there. */
    @ParameterizedTest(name = "{0} g of 1000: in the tail {1}")
    @CsvSource({"20, true", "21, false", "1, true"})
    void tail_holdsWhatIsAtMostTwoPercent(int grams, boolean tail) {
        Book book = new FoodBook().food(food("flour")).food(food("salt"))
                .recipe("dish", "1000 g", (1000 - grams) + " g flour", grams + " g salt").build();
        assertThat(IngredientList.of(book, book.recipe("dish"), Map.of()).tail()).hasSize(tail ? 1 : 0);
    }

    /**
     * 101.4(b)(2), from memory, and WAC 16-149-110: the name of a compound ingredient may be left out and its parts merged
     * into the list by weight.
     */
    @Test
    void partsOfParts_areMergedByWeight() {
        Book book = new FoodBook().food(food("kale")).food(food("oil")).food(food("tahini")).food(food("lemon"))
                .recipe("paste", "200 g", "150 g tahini", "50 g oil")
                .recipe("dressing", "300 g", "200 g paste", "100 g lemon")
                .recipe("salad", "1000 g", "300 g dressing", "650 g kale", "50 g oil").build();
        assertThat(IngredientList.of(book, book.recipe("salad"), Map.of()).sentence())
                .isEqualTo("Ingredients: kale, tahini, lemon, oil.");
    }

    /** GS1, how to calculate a check digit; gs1.se; gs1india.org. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({"629104150021, 3", "730001100001, 7", "890400021003, 7"})
    void checkDigit_isThePublishedOne(String digits, int check) {
        assertThat(PriceNumber.checkDigit(digits)).isEqualTo(check);
    }

    /** Variable price check digit (errorhandle.ai) for 2875; aidc-toolkit, check.ts, for five digits: 14685 -> 6. */
    @Test
    void verifier_isThePublishedOne() {
        assertThat(PriceNumber.verifier4("2875")).isEqualTo(9);
        assertThat(PriceNumber.verifier5("14685")).isEqualTo(6);
    }

    /** The same, item 12345: 2 12345 9 2875 and the check digit (computed). */
    @Test
    void wholeNumber_isTheWorkedOne() {
        assertThat(PriceNumber.of("12345", new Cents(2875)).orElseThrow().digits()).isEqualTo("212345928752");
    }

    /** GS1: a price above 99.99 does not fit four digits; nothing is printed then. */
    @ParameterizedTest(name = "{0} cents")
    @ValueSource(longs = {10_000, 0, -1, 99_999})
    void priceThatDoesNotFit_hasNoNumber(long cents) {
        assertThat(PriceNumber.of("12345", new Cents(cents))).isEmpty();
    }

    /** What the bars say is read back by another program. */
    @ParameterizedTest(name = "{0} at {1} cents")
    @CsvSource({"12345, 2875", "00001, 1", "99999, 9999", "40712, 875"})
    void bars_areReadBack(String item, long cents) throws NotFoundException {
        PriceNumber number = PriceNumber.of(item, new Cents(cents)).orElseThrow();
        LuminanceSource picture = picture(PriceBars.svg(number));
        String read = new MultiFormatReader().decode(new BinaryBitmap(new HybridBinarizer(picture)),
                Map.of(com.google.zxing.DecodeHintType.POSSIBLE_FORMATS, java.util.List.of(BarcodeFormat.UPC_A))).getText();
        assertThat(read).isEqualTo(number.digits());
    }

    /** The rectangles of the drawing, four pixels a module. */
    private static LuminanceSource picture(String svg) {
        int scale = 4;
        Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"").matcher(svg);
        assertThat(box.find()).isTrue();
        int wide = Integer.parseInt(box.group(1)) * scale;
        int high = Integer.parseInt(box.group(2)) * scale;
        int[] pixels = new int[wide * high];
        Arrays.fill(pixels, 0xFFFFFF);
        Matcher bar = Pattern.compile("<rect x=\"(\\d+)\" y=\"0\" width=\"(\\d+)\" height=\"(\\d+)\"/>").matcher(svg);
        while (bar.find()) {
            for (int y = 0; y < Integer.parseInt(bar.group(3)) * scale; y++) {
                int from = Integer.parseInt(bar.group(1)) * scale;
                Arrays.fill(pixels, y * wide + from, y * wide + from + Integer.parseInt(bar.group(2)) * scale, 0);
            }
        }
        return new RGBLuminanceSource(wide, high, pixels);
    }
}
