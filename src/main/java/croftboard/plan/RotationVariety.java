package croftboard.plan;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Set;

/**
 * How much variety a rotation has, counted. Standing dishes and events take no part.
 *
 * @param servings runs of dishes on lines
 * @param dishes different ones among them
 * @param sameWeekday dishes that start on the same weekday in more than one week
 * @param near main ingredients and methods that come back within days
 * @param members what somebody sees who eats here on the same two days of every week, each pair of open days
 */
public record RotationVariety(int servings, int dishes, List<SameWeekday> sameWeekday, List<Near> near,
        List<Member> members) {

    /** @param times weeks in which it starts on that weekday, 2 or more */
    public record SameWeekday(String recipe, DayOfWeek day, int times) { }

    /**
     * Servings of a course whose main ingredient (or method) the same course has had within so many days before.
     *
     * @param trait {@code main} or {@code method}
     * @param days 1 or more, start to start
     * @param of servings there are
     */
    public record Near(String trait, int days, int count, int of) { }

    /**
     * @param days two days of the week
     * @param seen dishes offered on those days, all lines and weeks; a dish of several days counts once a day
     * @param dishes different ones among them
     * @param mains different hot mains among them; all dishes of the kitchen's first course
     * @param mostOften the dish seen most often, the first by name
     * @param times how often
     */
    public record Member(Set<DayOfWeek> days, int seen, int dishes, int mains, String mostOften, int times) { }
}
