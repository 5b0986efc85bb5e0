/**
 * Which packs to buy for a menu, and proofs of how good that is: a search over deliveries that always answers, an exact
 * program that proves, and a relaxation over all menus that bounds. The only room that knows OR-Tools; no solver type
 * leaves it. Money is whole cents, bounds are rounded to the safe side. Imports {@code measure}, {@code book}, {@code need}.
 */
package croftboard.sourcing;
