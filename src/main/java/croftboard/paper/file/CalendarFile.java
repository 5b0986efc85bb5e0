package croftboard.paper.file;

import croftboard.book.Seasons;
import croftboard.measure.Cents;
import croftboard.paper.PaperContext;
import croftboard.paper.order.PurchaseOrder;
import croftboard.paper.order.WeekCalendar;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/**
 * The week's cut-offs, deliveries and events as a calendar by RFC 5545: lines end in CRLF and are folded at 75 octets
 * (section 3.1), text is escaped (3.3.11), times stand in UTC (3.3.5 form 2), which no reader can get wrong. A UID names
 * the vendor and day, or the event, and nothing that changes, so that reading the file again updates what is there.
 */
final class CalendarFile {
    private static final int FOLD = 75;
    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT);
    private static final DateTimeFormatter DATE = DateTimeFormatter.BASIC_ISO_DATE;
    private final StringBuilder out = new StringBuilder();
    private final PaperContext context;
    private final ZoneId zone;
    private final String place;

    private CalendarFile(PaperContext context) {
        this.context = context;
        this.zone = context.book().kitchen().zone();
        this.place = WeekCalendar.domain(context.book().kitchen().name());
    }

    static String of(PaperContext context) {
        return new CalendarFile(context).write();
    }

    private String write() {
        line("BEGIN:VCALENDAR");
        line("VERSION:2.0");
        line("PRODID:-//Croftboard//Order calendar//EN");
        line("CALSCALE:GREGORIAN");
        text("X-WR-CALNAME", "Orders of " + context.book().kitchen().name());
        List<PurchaseOrder> orders = PurchaseOrder.all(context);
        orders.forEach(this::cutOff);
        orders.forEach(this::delivery);
        WeekCalendar.events(context).forEach(this::event);
        line("END:VCALENDAR");
        return out.toString();
    }

    private void begin(String uid) {
        line("BEGIN:VEVENT");
        line("UID:" + uid + "@" + place);
        line("DTSTAMP:" + utc(context.printed()));
        line("SEQUENCE:" + context.version());
    }

    private void cutOff(PurchaseOrder order) {
        begin("cutoff-" + order.key().vendor() + "-" + order.delivery());
        line("DTSTART:" + utc(order.cutOff()));
        text("SUMMARY", "Order by now: " + order.seller().name());
        text("DESCRIPTION", "Cut-off for the delivery of " + order.delivery() + ". " + goods(order)
                + order.seller().contact().phone().map(p -> "\nTelephone " + p).orElse(""));
        line("TRANSP:TRANSPARENT");
        line("BEGIN:VALARM");
        line("ACTION:DISPLAY");
        line("TRIGGER:-PT2H");
        text("DESCRIPTION", "Two hours to the cut-off of " + order.seller().name());
        line("END:VALARM");
        line("END:VEVENT");
    }

    private void delivery(PurchaseOrder order) {
        begin("delivery-" + order.key().vendor() + "-" + order.delivery());
        if (order.window().isPresent()) {
            line("DTSTART:" + utc(order.delivery().atTime(order.window().get().from())));
            line("DTEND:" + utc(order.delivery().atTime(order.window().get().to())));
        } else {
            line("DTSTART;VALUE=DATE:" + DATE.format(order.delivery()));
            line("DTEND;VALUE=DATE:" + DATE.format(order.delivery().plusDays(1)));
        }
        text("SUMMARY", "Delivery: " + order.seller().name());
        text("DESCRIPTION", goods(order));
        line("TRANSP:TRANSPARENT");
        line("END:VEVENT");
    }

    private void event(Seasons.Event event) {
        begin("event-" + event.id());
        if (event.service().isPresent()) {
            line("DTSTART:" + utc(event.date().atTime(event.service().get())));
            line("DURATION:PT2H");
        } else {
            line("DTSTART;VALUE=DATE:" + DATE.format(event.date()));
            line("DTEND;VALUE=DATE:" + DATE.format(event.date().plusDays(1)));
        }
        text("SUMMARY", event.name());
        text("DESCRIPTION", event.guarantee() + " guaranteed." + (event.diets().isBlank() ? "" : " " + event.diets()));
        line("END:VEVENT");
    }

    private static String goods(PurchaseOrder order) {
        return "Order " + order.number() + ", " + new Cents(order.payable()) + " with fees, version " + order.version()
                + (order.posted() ? "." : ", a draft.");
    }

    private String utc(LocalDateTime local) {
        return UTC.format(local.atZone(zone).withZoneSameInstant(ZoneOffset.UTC));
    }

    private void text(String name, String value) {
        line(name + ":" + escaped(value));
    }

    static String escaped(String text) {
        return Visible.of(text).replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n");
    }

    /** A content line, folded so that no part of it is longer than 75 octets and no character is cut. */
    private void line(String content) {
        int octets = 0;
        for (int c : content.codePoints().toArray()) {
            String character = Character.toString(c);
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > FOLD) {
                out.append("\r\n ");
                octets = 1;
            }
            out.append(character);
            octets += size;
        }
        out.append("\r\n");
    }
}
