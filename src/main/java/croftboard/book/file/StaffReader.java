package croftboard.book.file;

import croftboard.book.Kitchen.Cook;
import croftboard.book.Kitchen.Receiving;
import croftboard.book.Kitchen.Station;
import croftboard.measure.Cents;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Stations, cooks with their hours, and who receives deliveries. */
final class StaffReader {
    private final Values values;
    private final Quantities quantities;
    private final Notebook notebook;

    StaffReader(Values values, Quantities quantities) {
        this.values = values;
        this.quantities = quantities;
        this.notebook = values.notebook();
    }

    /** The id of a thing in a list of the kitchen; a fault when an earlier one has it. */
    String id(Fields f, String what, Set<String> seen) {
        String id = f.get("id", values::id);
        if (!id.equals(Values.NOTHING) && !seen.add(id)) {
            notebook.fault(f.get("id").spot(), "a second " + what + " " + Notebook.show(id),
                    "give it a name of its own");
        }
        return id;
    }

    List<Station> stations(Fields f) {
        List<Station> stations = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Node node : f.has("stations") ? f.list("stations", values) : List.<Node>of()) {
            Fields s = Fields.of(notebook, Form.STATION, "the station", node.spot(), node);
            String id = id(s, "station", seen);
            String name = s.get("name", values::text);
            Overtime overtime = s.or("overtime", new Overtime(0, Cents.ZERO), this::overtime);
            stations.add(new Station(id, name, overtime.minutes(), overtime.perHour()));
        }
        return List.copyOf(stations);
    }

    private record Overtime(int minutes, Cents perHour) { }

    private Overtime overtime(Node node) {
        Fields o = Fields.of(notebook, Form.OVERTIME, "the overtime", node.spot(), node);
        return new Overtime(o.get("limit", quantities::wholeMinutes),
                o.get("price", n -> quantities.price(n, "per hour")));
    }

    List<Cook> cooks(Fields f) {
        List<Cook> cooks = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Node node : f.has("cooks") ? f.list("cooks", values) : List.<Node>of()) {
            Fields c = Fields.of(notebook, Form.COOK, "the cook", node.spot(), node);
            String id = id(c, "cook", seen);
            cooks.add(new Cook(id, c.get("name", values::text), hours(c.get("hours"))));
        }
        return List.copyOf(cooks);
    }

    private Map<DayOfWeek, Map<String, Integer>> hours(Node node) {
        Map<DayOfWeek, Map<String, Integer>> hours = Values.byDay();
        values.each(node, "the hours", (key, perStation) -> {
            DayOfWeek day = Values.DAYS.get(key.text());
            if (day == null) {
                notebook.fault(key.spot(), Notebook.show(key.text()) + " is no day",
                        "write mon tue wed thu fri sat or sun");
                return;
            }
            Map<String, Integer> minutes = new LinkedHashMap<>();
            values.each(perStation, "the hours of " + key.text(), (station, time) -> {
                notebook.points(Pointer.To.STATION, station.text(), station.spot(), "a cook's hours");
                minutes.put(station.text(), quantities.wholeMinutes(time));
            });
            if (minutes.values().stream().mapToLong(Integer::longValue).sum() > 1440) {
                notebook.fault(perStation.spot(), "more than 24 hours on one day", "check the hours of "
                        + key.text());
            }
            hours.put(day, Collections.unmodifiableMap(minutes));
        });
        return Collections.unmodifiableMap(hours);
    }

    Receiving receiving(Node node) {
        Fields r = Fields.of(notebook, Form.RECEIVING, "receiving", node.spot(), node);
        String station = r.get("station", values::id);
        notebook.points(Pointer.To.STATION, station, r.get("station").spot(), "receiving");
        return notebook.wrote(new Receiving(station, r.get("minutes", quantities::wholeMinutes)),
                r.get("station").spot(),
                notebook.faultCount());
    }
}
