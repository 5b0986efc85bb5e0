package croftboard.cli;

import croftboard.book.Book;
import croftboard.book.Nearest;
import croftboard.cli.screen.Headline;
import croftboard.cli.screen.Page;
import croftboard.measure.Cents;
import croftboard.measure.IsoWeek;
import croftboard.plan.WeekPlan;
import croftboard.plan.file.OrderLife;
import croftboard.plan.file.PlanRef;
import croftboard.plan.file.PlanStore;
import croftboard.plan.file.WeekNotes;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/** An order of the posted plan takes its next step: sent, confirmed. Plans themselves are not touched. */
final class OrderCommand {
    private static final long MOST_BYTES = 256_000;
    private final Setting setting;
    private final BookAt at;
    private final Book book;

    OrderCommand(Setting setting, BookAt at, Book book) {
        this.setting = setting;
        this.at = at;
        this.book = book;
    }

    private record Found(int version, WeekPlan plan, WeekPlan.Order order) { }

    /** @return what to say */
    String sent(IsoWeek week, String vendor, String delivery) {
        Found found = find(week, vendor, delivery);
        LocalDateTime now = now();
        step(week, found, OrderLife.State.SENT, now, Optional.empty());
        return book.vendor(vendor).name() + " for " + day(found) + ", " + new Cents(found.order.total()) + ": sent." + (
                found.order.cutOff().isBefore(now) ? " Its cut-off " + found.order.cutOff() + " was past by then: ask whether it"
                        + " comes; if not, croftboard short " + week + " --change \"" + vendor + " not sent " + day(found) + "\"."
                        : "");
    }

    /** @param reply the vendor's own words; null: none kept */
    String confirmed(IsoWeek week, String vendor, String delivery, Path reply) {
        Found found = find(week, vendor, delivery);
        Optional<String> text = Optional.ofNullable(reply).map(OrderCommand::text);
        Optional<String> kept = text.map(t -> new WeekNotes(at.folder()).keepReply(week, vendor, t));
        step(week, found, OrderLife.State.CONFIRMED, now(), kept);
        return book.vendor(vendor).name() + " for " + day(found) + ", " + new Cents(found.order.total()) + ": confirmed."
                + kept.map(k -> " The reply is kept as plans/" + week + "/" + k + ".").orElse("")
                + " What comes less than ordered is said by croftboard short.";
    }

    private void step(IsoWeek week, Found f, OrderLife.State state, LocalDateTime now, Optional<String> reply) {
        new WeekNotes(at.folder()).add(week, new OrderLife.Step(f.order.vendor(), f.order.delivery(), state, f.version, now,
                f.order.total(), reply));
    }

    private LocalDateTime now() {
        return LocalDateTime.ofInstant(setting.clock().instant(), book.kitchen().zone()).withNano(0);
    }

    private static String day(Found f) {
        return Headline.day(f.plan, f.order);
    }

    private static String weekday(WeekPlan.Order order) {
        return order.delivery().getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
    }

    private Found find(IsoWeek week, String vendor, String delivery) {
        if (!book.vendors().containsKey(vendor)) {
            throw new WrongUse("no vendor " + vendor + " in farms/" + new Nearest().of(vendor, book.vendors().keySet())
                    .map(n -> " -> did you mean " + n + "?").orElse(" -> an id as in the book"));
        }
        PlanStore plans = at.plans();
        int version = plans.postedVersion(week).orElseThrow(() -> new WrongUse("no plan of " + week
                + " is posted: there is nothing to send yet -> croftboard post " + week));
        WeekPlan plan = Kept.plan(plans, new PlanRef(week, OptionalInt.of(version)));
        List<WeekPlan.Order> all = plan.orders().stream().filter(o -> o.vendor().equals(vendor))
                .filter(o -> delivery.isEmpty() || o.delivery().toString().equals(delivery)
                        || weekday(o).equalsIgnoreCase(delivery)).toList();
        if (all.size() != 1) {
            throw new WrongUse(all.isEmpty() ? week + "@" + version + " orders nothing from " + vendor + (delivery.isEmpty() ? ""
                    : " for that day") + " -> croftboard show " + week + " orders" : week + "@" + version + " has " + all.size()
                    + " orders for " + vendor + " -> say which: --delivery " + String.join(" or ", all.stream()
                            .map(o -> Headline.day(plan, o)).toList()));
        }
        return new Found(version, plan, all.get(0));
    }

    private static String text(Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                throw new WrongUse(file + ": no text file of at most 256 kB -> the vendor's reply as text");
            }
            return Files.readString(file);
        } catch (CharacterCodingException e) {
            throw new WrongUse(file + " is no UTF-8 text -> the vendor's reply as text");
        } catch (IOException e) {
            throw new WrongUse(Page.plain(file + " cannot be read -> " + e.getMessage()));
        }
    }
}
