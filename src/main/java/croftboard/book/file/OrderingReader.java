package croftboard.book.file;

import croftboard.book.Contact;
import croftboard.book.Vendor.Accepted;
import croftboard.book.Vendor.Ordering;
import croftboard.book.Vendor.Window;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** What an order needs beside its goods: how somebody is reached, when a delivery comes, what may come instead. */
final class OrderingReader {
    private static final Pattern PHONE = Pattern.compile("\\+?[0-9][0-9 ().-]{4,30}(?:ext\\.? [0-9]{1,6})?");
    private static final Pattern EMAIL = Pattern.compile("[^\\s@]{1,64}@[^\\s@.]{1,63}(?:\\.[^\\s@.]{1,63})+");
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    OrderingReader(Values values, Quantities quantities) {
        this.values = values;
        this.quantities = quantities;
        this.notebook = values.notebook();
    }

    Ordering read(Fields vendor) {
        return new Ordering(vendor.or("contact", Contact.NONE, this::contact), vendor.maybe("customer", values::text),
                vendor.maybe("order_note", values::text));
    }

    Contact contact(Node node) {
        Fields c = Fields.of(notebook, Form.CONTACT, "the contact", node.spot(), node);
        List<String> address = new ArrayList<>();
        for (Node line : c.has("address") ? c.list("address", values) : List.<Node>of()) {
            address.add(values.text(line));
        }
        return new Contact(c.maybe("person", values::text), List.copyOf(address), c.maybe("phone", this::phone),
                c.maybe("email", this::email));
    }

    private String phone(Node node) {
        return matching(node, PHONE, "telephone number", "607-555-0142");
    }

    private String email(Node node) {
        return matching(node, EMAIL, "e-mail address", "orders@farm.example");
    }

    private String matching(Node node, Pattern form, String what, String example) {
        return values.value(node, "a " + what + " like " + example, "", s -> {
            if (!form.matcher(s.text().strip()).matches()) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " is no " + what, "write for example " + example);
            }
            return s.text().strip();
        });
    }

    /** {@code 07:00..10:30}. */
    Window window(Node node) {
        String wanted = "two times like 07:00..10:30";
        return values.value(node, wanted, new Window(LocalTime.MIN, LocalTime.NOON), s -> {
            int dots = s.text().indexOf("..");
            if (dots < 0 || s.text().length() > 40) {
                notebook.fault(s.spot(), Notebook.show(s.text()) + " are no hours of a day", "write " + wanted);
                return null;
            }
            int before = notebook.faultCount();
            LocalTime from = values.clock(s.text().substring(0, dots).strip(), s.spot());
            LocalTime to = values.clock(s.text().substring(dots + 2).strip(), s.at(dots + 2));
            if (notebook.faultCount() == before && !from.isBefore(to)) {
                notebook.fault(s.spot(), "the hours end before they begin", "write the earlier time first");
            }
            return new Window(from, to);
        });
    }

    List<Accepted> accepted(Fields offer) {
        List<Accepted> accepted = new ArrayList<>();
        for (Node node : offer.has("accept") ? offer.list("accept", values) : List.<Node>of()) {
            Fields a = Fields.of(notebook, Form.ACCEPTED, "what is accepted instead", node.spot(), node);
            accepted.add(new Accepted(a.get("say", values::text), packs(a),
                    a.maybe("price", n -> quantities.money(n, true))));
        }
        return List.copyOf(accepted);
    }

    private Optional<Integer> packs(Fields accepted) {
        return accepted.maybe("at_most", n -> quantities.whole(n, 1, OfferReader.MOST_PACKS));
    }
}
