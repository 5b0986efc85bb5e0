package croftboard.book.file;

import croftboard.book.Seasons.Course;
import croftboard.book.Seasons.Event;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** {@code seasons/events.yaml}: a map of id to event. */
final class EventReader {
    private static final int MOST_HEADS = 100_000;
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    EventReader(Values values) {
        this.values = values;
        this.quantities = new Quantities(values);
        this.notebook = values.notebook();
    }

    void read(Node root, Drafts drafts) {
        values.each(root, "the events", (key, node) -> drafts.events.add(event(key, node)));
    }

    private Event event(Node.Scalar key, Node node) {
        int before = notebook.faultCount();
        String id = values.checkedId(key.text(), key.spot());
        Fields f = Fields.of(notebook, Form.EVENT, "the event " + Notebook.show(id), key.spot(), node);
        Event event = new Event(id, f.get("name", values::text), f.get("date", values::date),
                f.maybe("service", values::clock),
                f.get("guarantee", n -> quantities.whole(n, 1, MOST_HEADS)),
                f.get("overage", n -> quantities.share(n, true, 100)),
                f.get("price", n -> quantities.money(n, true)),
                f.or("diets", "", values::text), menu(f));
        return notebook.wrote(event, key.spot(), before);
    }

    private List<Course> menu(Fields f) {
        List<Course> menu = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (Node node : f.list("menu", values)) {
            int before = notebook.faultCount();
            Fields c = Fields.of(notebook, Form.EVENT_COURSE, "the course", node.spot(), node);
            String id = c.get("id", values::id);
            if (!id.equals(Values.NOTHING) && !ids.add(id)) {
                notebook.fault(c.get("id").spot(), "a second course " + Notebook.show(id),
                        "give it a name of its own");
            }
            String course = c.get("course", values::id);
            notebook.points(Pointer.To.COURSE, course, c.get("course").spot(), "an event");
            Optional<String> dish = c.maybe("dish", values::id);
            dish.ifPresent(d -> notebook.points(Pointer.To.DISH, d, c.get("dish").spot(), "an event"));
            menu.add(notebook.wrote(new Course(id, course,
                    c.get("share", n -> quantities.share(n, false, 100)), dish,
                    c.maybe("diet", n -> values.word(n, PromisesReader.DIETS,
                    croftboard.book.Promises.Diet.VEGAN))),
                    c.spot(), before));
        }
        if (f.isEmptyList("menu")) {
            notebook.fault(f.get("menu").spot(), "an event without a menu",
                    "write at least one {id: ..., course: ..., share: 100%}");
        }
        return List.copyOf(menu);
    }
}
