package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;

import croftboard.paper.Contexts;
import croftboard.paper.PaperContext;
import croftboard.paper.file.OrderFiles;
import croftboard.paper.order.PurchaseOrder;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The calendar file read by the library ical4j 4.4.0 and validated by it; and the rules of RFC 5545
 * (www.rfc-editor.org/rfc/rfc5545) that no reader forgives: section 3.1 lines, 3.6 PRODID and VERSION, 3.6.1 UID, DTSTAMP
 * and DTSTART, 3.8.4.7 UID.
 */
class CalendarOutsideTest {
    static Stream<PaperContext> calendar_isValidAndFolded() {
        return Stream.of(Contexts.sample(), Contexts.draft(Contexts.sample()), Contexts.hostile());
    }

    @ParameterizedTest
    @MethodSource
    void calendar_isValidAndFolded(PaperContext context) throws IOException, ParserException {
        String text = OrderFiles.calendar(context);
        assertThat(text).endsWith("\r\n").doesNotContain("\n\n");
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        for (String line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
        }
        Calendar calendar = read(text);
        assertThat(calendar.validate().getEntries()).isEmpty();
        Set<String> uids = new HashSet<>();
        for (VEvent event : events(calendar)) {
            assertThat(uids.add(event.getUid().orElseThrow().getValue())).isTrue();
            assertThat(event.getDateTimeStamp()).isNotNull();
        }
        assertThat(uids).hasSize(2 * context.plan().orders().size() + 1);
    }

    @Test
    void cutOff_isTheKitchensOwnHour_withAnAlarm() throws IOException, ParserException {
        PaperContext context = Contexts.sample();
        List<VEvent> events = events(read(OrderFiles.calendar(context)));
        for (PurchaseOrder order : PurchaseOrder.all(context)) {
            VEvent event = events.stream().filter(e -> e.getUid().orElseThrow().getValue()
                    .startsWith("cutoff-" + order.key().vendor() + "-" + order.delivery() + "@")).findFirst().orElseThrow();
            DtStart<Instant> start = event.getDateTimeStart();
            assertThat(Instant.from(start.getDate()).atZone(ZoneId.of("America/New_York")).toLocalDateTime())
                    .isEqualTo(order.cutOff());
            assertThat(event.getAlarms()).hasSize(1);
        }
    }

    /** RFC 5545 section 3.6.1: an all-day event ends on the day after its last one. */
    @Test
    void deliveryWithoutHours_isOneWholeDay() {
        assertThat(OrderFiles.calendar(Contexts.sample())).contains("DTSTART;VALUE=DATE:20270816\r\nDTEND;VALUE=DATE:20270817");
    }

    @Test
    void anotherVersion_keepsTheUids() throws IOException, ParserException {
        PaperContext c = Contexts.sample();
        PaperContext later = new PaperContext(c.book(), c.plan(), 2, true, c.printed().plusDays(1), c.filters(), Set.of());
        assertThat(uids(later)).isEqualTo(uids(c));
        assertThat(OrderFiles.calendar(later)).contains("SEQUENCE:2");
    }

    private static List<String> uids(PaperContext context) throws IOException, ParserException {
        return events(read(OrderFiles.calendar(context))).stream().map(e -> e.getUid().orElseThrow().getValue()).toList();
    }

    private static List<VEvent> events(Calendar calendar) {
        return calendar.getComponents("VEVENT");
    }

    private static Calendar read(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }
}
