/**
 * Which dish stands where: OptaPlanner searches, small rules judge. Each rule is one class that opens with the rule as
 * a sentence and keeps its own sum while dishes are put and taken; {@link croftboard.menu.MenuState} holds them together.
 * The annotated planning classes never leave this room. Money is whole cents, bought food an estimate at prices
 * that carry the worth of local money. Imports {@code measure}, {@code book}, {@code need}.
 */
package croftboard.menu;
