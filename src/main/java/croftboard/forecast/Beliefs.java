package croftboard.forecast;

/**
 * What is believed before anything was seen, as standard deviations of logarithms (0.10 is about 10 %). They decide how fast
 * figures follow what was seen: three days of a dish move its draw by about half of what they show. Chosen by judgement,
 * then tried on simulated kitchens (docs/forecast.md); no source.
 */
final class Beliefs {
    /** How far the whole shop stands from the manager's figures at the start, and how its course bends in a week. */
    static final double WEEK_LEVEL = 0.05;
    static final double WEEK_STEP = 0.01;
    /** How much of a week's rise or fall goes on into the next. */
    static final double MOMENTUM = 0.8;
    /** How far the manager's figure of a line may be off, and how far a line goes its own way in four weeks. */
    static final double LINE_LEVEL = 0.5;
    static final double LINE_STEP = 0.015;
    static final double WEEKDAY = 0.15;
    static final double LINE_WEEKDAY = 0.06;
    /** Main ingredient, method and cuisine, each. */
    static final double KIN = 0.04;
    /** A dish beyond its kin; corrected by what dishes show, as if so many had shown it before. */
    static final double DISH = 0.08;
    static final double DISHES_BEFORE = 20;
    static final double SEASON = 0.10;
    /** The manager's spread of a line: logarithm of what it has above the Poisson's. */
    static final double SPREAD = 0.6;

    private Beliefs() { }
}
