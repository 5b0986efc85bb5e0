package croftboard.paper.order;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.measure.Cents;
import croftboard.paper.Contexts;
import croftboard.paper.Golden;
import croftboard.paper.OrderKey;
import croftboard.paper.PaperContext;
import croftboard.paper.Sheet;
import croftboard.paper.file.PdfText;
import croftboard.plan.WeekPlan;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CalendarSheetTest {
    private static Sheet sheet(PaperContext context) {
        return new CalendarSheet().make(context).get(0);
    }

    @Test
    void golden() {
        Golden.same("order-calendar.txt", PdfText.text(sheet(Contexts.sample())));
    }

    @Test
    void onePage_withEveryOrderOfTheWeek() {
        PaperContext context = Contexts.sample();
        List<String> pages = PdfText.pages(context, List.of(sheet(context)));
        assertThat(pages).hasSize(1);
        long all = 0;
        for (WeekPlan.Order o : context.plan().orders()) {
            assertThat(pages.get(0)).contains(context.called().vendor(o.vendor()), new Cents(o.total() + o.fee()).toString());
            all += o.total() + o.fee();
        }
        assertThat(pages.get(0)).contains("All orders, with fees " + new Cents(all));
        assertThat(pages.get(0)).contains("Members' harvest meal");
    }

    @Test
    void anEmptyDay_isStillASheet() {
        PaperContext none = Contexts.only(Contexts.sample(), LocalDate.of(2027, 8, 21), null);
        assertThat(PdfText.text(sheet(none))).contains("Nothing is ordered for these days.");
        assertThat(PdfText.pages(none, List.of(sheet(none)))).hasSize(1);
    }
}
