/**
 * Menus of weeks in which nothing is bought and dishes share nothing but equipment: one dish a slot, the most worth,
 * units within what there is. A search of its own for them ({@link croftboard.menu.choice.ChoiceSearch}): late
 * acceptance, which changes a dish or two at a time, is weak where ten limits must be met to the last unit at once.
 * Imports {@code need}.
 */
package croftboard.menu.choice;
