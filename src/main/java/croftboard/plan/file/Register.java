package croftboard.plan.file;

import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The file {@code current} of one week: which version is meant by the week's name, which one people work from, and the
 * status of each. A version that it does not name is drafted.
 *
 * @param current empty: no version yet
 * @param posted the one posted last; empty: none
 */
record Register(OptionalInt current, OptionalInt posted, SortedMap<Integer, PlanVersion.Status> versions) {
    static final Register NEW = new Register(OptionalInt.empty(), OptionalInt.empty(), new TreeMap<>());
    private static final int FORMAT = 1;

    Register drafted(int version) {
        return new Register(OptionalInt.of(version), posted, with(version, PlanVersion.Status.DRAFTED));
    }

    Register posted(int version) {
        return new Register(OptionalInt.of(version), OptionalInt.of(version), with(version, PlanVersion.Status.POSTED));
    }

    private SortedMap<Integer, PlanVersion.Status> with(int version, PlanVersion.Status status) {
        SortedMap<Integer, PlanVersion.Status> all = new TreeMap<>(versions);
        all.put(version, status);
        return all;
    }

    PlanVersion.Status statusOf(int version) {
        return versions.getOrDefault(version, PlanVersion.Status.DRAFTED);
    }

    String text() {
        Out status = new Out();
        versions.forEach((number, s) -> status.name(number.toString(), s));
        return Layout.of(number(number(new Out().whole("format", FORMAT), "current", current), "posted", posted)
                .object("versions", status).node());
    }

    private static Out number(Out out, String key, OptionalInt value) {
        return out.maybeWhole(key, value.isPresent() ? java.util.Optional.of((long) value.getAsInt())
                : java.util.Optional.empty());
    }

    static Register of(String text) throws Unreadable {
        In in = Json.object(text);
        Json.checkFormat(in, FORMAT);
        return in.whole(Register::read);
    }

    private static Register read(In in) throws Unreadable {
        OptionalInt current = number(in, "current");
        OptionalInt posted = number(in, "posted");
        SortedMap<Integer, PlanVersion.Status> versions = new TreeMap<>();
        var named = in.object("versions", all -> all.all(key -> all.name(key, PlanVersion.Status.class)));
        for (var e : named.entrySet()) {
            if (!e.getKey().matches("[1-9]\\d{0,8}")) {
                throw new Unreadable("$.versions", "there is \"" + e.getKey() + "\" where a version number belongs");
            }
            versions.put(Integer.valueOf(e.getKey()), e.getValue());
        }
        return new Register(current, posted, versions);
    }

    private static OptionalInt number(In in, String key) throws Unreadable {
        return in.maybeNumber(key).isEmpty() ? OptionalInt.empty() : OptionalInt.of(in.small(key));
    }
}
