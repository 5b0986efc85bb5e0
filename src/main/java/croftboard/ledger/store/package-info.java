/**
 * The ledger on disk: a SQLite file, or a PostgreSQL server by URL; the only package that knows SQL. One transaction a
 * booking: whole or absent. The same numbered migrations and the same statements on both.
 */
package croftboard.ledger.store;
