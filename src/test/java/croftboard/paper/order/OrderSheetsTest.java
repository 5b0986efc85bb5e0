package croftboard.paper.order;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.book.Book;
import croftboard.book.Vendor;
import croftboard.cli.SamplePlan;
import croftboard.measure.Cents;
import croftboard.paper.Contexts;
import croftboard.paper.Golden;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.file.PdfText;
import croftboard.plan.WeekPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class OrderSheetsTest {
    private static final Pattern MONEY = Pattern.compile("\\$[0-9,]+\\.[0-9]{2}");

    private static List<Sheet> sheets(PaperContext context) {
        return new OrderSheets().make(context);
    }

    @Test
    void golden() {
        PaperContext context = Contexts.sample();
        StringBuilder all = new StringBuilder();
        sheets(context).forEach(s -> all.append(PdfText.text(s)).append("\n\n"));
        Golden.same("order.txt", all.toString());
    }

    @Test
    void goldenLetters() {
        StringBuilder all = new StringBuilder();
        PurchaseOrder.all(Contexts.sample()).forEach(o -> all.append(OrderLetter.of(o)).append("\n=====\n\n"));
        Golden.same("order-letter.txt", all.toString());
    }

    @Test
    void everyFigureOnPaper_isThePlans_andEveryOneOfThePlansIsOnPaper() {
        PaperContext context = Contexts.sample();
        List<Sheet> sheets = sheets(context);
        for (int i = 0; i < sheets.size(); i++) {
            String text = String.join(" ", PdfText.pages(context, List.of(sheets.get(i))));
            WeekPlan.Order order = context.plan().orders().stream()
                    .filter(o -> sheets.stream().anyMatch(s -> s.behind().contains(OrderKey.of(o))) && text.contains(
                            o.vendor() + "/" + o.delivery().toString().substring(5).replace("-", ""))).findFirst().orElseThrow();
            List<String> wanted = new ArrayList<>();
            for (WeekPlan.OrderLine l : order.lines()) {
                assertThat(text).contains(l.packs() + " " + new Cents(l.price()) + " " + new Cents(l.cost()));
                wanted.addAll(List.of(new Cents(l.price()).toString(), new Cents(l.cost()).toString()));
            }
            wanted.add(new Cents(order.total()).toString());
            if (order.fee() > 0) {
                wanted.addAll(List.of(new Cents(order.fee()).toString(), new Cents(order.total() + order.fee()).toString()));
            }
            if (order.minimum() > 0) {
                wanted.add(new Cents(order.minimum()).toString());
            }
            if (order.total() < order.toMinimum()) {
                wanted.add(new Cents(order.toMinimum() - order.total()).toString());
            }
            Vendor vendor = context.book().vendor(order.vendor());
            vendor.offers().stream().flatMap(o -> o.accept().stream()).forEach(a -> {
                if (text.contains(a.say())) {
                    wanted.add(a.price().map(Cents::toString).orElse(new Cents(order.lines().get(0).price()).toString()));
                }
            });
            assertThat(all(text)).containsExactlyInAnyOrderElementsOf(wanted);
        }
    }

    private static List<String> all(String text) {
        List<String> found = new ArrayList<>();
        Matcher m = MONEY.matcher(text);
        while (m.find()) {
            found.add(m.group());
        }
        return found;
    }

    @Test
    void hostileWords_areAllThere_asWords() {
        PaperContext context = Contexts.hostile();
        List<Sheet> sheets = sheets(context);
        String text = String.join(" ", PdfText.pages(context, sheets));
        String close = text.replace(" ", "");
        assertThat(close).contains("=<b>&amp;\"x'gnp</td><script>alert(1)</script>]]>{{x}}" + "long".repeat(75) + "end");
        assertThat(text.split("note line", -1)).hasSize(1 + 41 * sheets.size());
    }

    @Test
    void anOrderOfTwentyPages_losesNoLine_andRepeatsItsHead() {
        PaperContext small = Contexts.sample();
        WeekPlan.Order one = small.plan().orders().get(0);
        List<WeekPlan.OrderLine> lines = new ArrayList<>();
        for (int i = 0; i < 620; i++) {
            WeekPlan.OrderLine l = one.lines().get(i % one.lines().size());
            lines.add(new WeekPlan.OrderLine(l.item(), l.pack(), i + 1, l.packMg(), 100, 100L * (i + 1), l.locality(),
                    l.whyLocal(), l.onList(), l.promised()));
        }
        long total = lines.stream().mapToLong(WeekPlan.OrderLine::cost).sum();
        PurchaseOrder order = PurchaseOrder.of(small, new WeekPlan.Order(one.vendor(), one.delivery(), one.cutOff(), lines,
                total, 0, 0, 0));
        List<String> pages = PdfText.pages(small, List.of(OrderSheets.sheet(order)));
        assertThat(pages).hasSizeGreaterThanOrEqualTo(20);
        String text = String.join(" ", pages);
        for (int i = 1; i <= 620; i++) {
            assertThat(text).contains(" " + i + " $1.00 " + new Cents(100L * i) + " ");
        }
        int withGoods = 0;
        for (int i = 0; i < pages.size(); i++) {
            assertThat(pages.get(i)).contains("page " + (i + 1) + " of " + pages.size());
            if (pages.get(i).contains("$1.00")) {
                withGoods++;
                assertThat(pages.get(i)).contains("Item Pack Packs A pack Amount Came Short Price");
            }
        }
        assertThat(withGoods).isGreaterThanOrEqualTo(19);
    }

    @Test
    void number_staysInEveryVersion_andDraftsSayThatTheyAreNone() {
        Book book = SamplePlan.book();
        PaperContext draft = Contexts.draft(Contexts.of(book, SamplePlan.complete(book)));
        assertThat(PurchaseOrder.all(draft)).extracting(PurchaseOrder::number)
                .isEqualTo(PurchaseOrder.all(Contexts.sample()).stream().map(PurchaseOrder::number).toList());
        sheets(draft).forEach(s -> assertThat(PdfText.text(s)).contains("Draft: No order until the plan is posted."));
        PurchaseOrder.all(draft).forEach(o -> assertThat(OrderLetter.of(o)).contains("DRAFT, do not send"));
        PurchaseOrder.all(Contexts.sample()).forEach(o -> assertThat(OrderLetter.of(o)).doesNotContain("DRAFT"));
    }

    @Test
    void filters_leaveOneVendorOrOneDay() {
        PaperContext all = Contexts.sample();
        OrderKey first = OrderKey.of(all.plan().orders().get(0));
        assertThat(sheets(Contexts.only(all, null, first.vendor()))).extracting(Sheet::behind)
                .containsExactly(Set.of(first));
        assertThat(sheets(Contexts.only(all, first.delivery(), null))).extracting(Sheet::behind).containsExactly(Set.of(first));
        assertThat(sheets(Contexts.only(all, first.delivery().minusDays(30), null))).isEmpty();
    }

    @Test
    void substitutions_neverExceedWhatIsOrdered() {
        PaperContext context = Contexts.sample();
        PurchaseOrder creamery = PurchaseOrder.all(context).stream().filter(o -> o.key().vendor().equals("stone-creamery"))
                .findFirst().orElseThrow();
        PurchaseOrder.Line cheddar = creamery.lines().get(0);
        assertThat(cheddar.accept()).hasSize(2);
        assertThat(PurchaseOrder.limits(cheddar.accept().get(0), cheddar)).isEqualTo("at most 2 packs, each $30.00 or less");
        assertThat(PurchaseOrder.limits(cheddar.accept().get(1), cheddar)).isEqualTo("at most 3 packs, each $31.00 or less");
    }
}
