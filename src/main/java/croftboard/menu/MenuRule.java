package croftboard.menu;

import croftboard.need.WeekProblem;

/** One rule of the menu, kept up to date while dishes are put on slots and taken away. */
interface MenuRule {
    /** The dish now stands on the slot. */
    void put(int slot, WeekProblem.Candidate dish);

    /** The dish no longer stands on the slot. */
    void take(int slot, WeekProblem.Candidate dish);

    /** What the rule brings in cents; what it costs is negative. */
    long cents();

    /** How many units of a must are broken; 0 for promises. */
    default long mustsBroken() {
        return 0;
    }

    /** What is broken, in words for the manager; empty when nothing is. */
    String sentence();
}
