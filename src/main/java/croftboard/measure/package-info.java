/**
 * Exact quantities, units, money, shares and ISO weeks. Nothing here rounds unless its name says so; nothing is null.
 * Imports only the JDK; every other room may import it.
 */
package croftboard.measure;
