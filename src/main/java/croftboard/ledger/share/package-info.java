/**
 * What the ledger answers: which share of the money paid for food was paid for local food, by which definition, with every
 * receipt line behind it; what the food that was sold had cost; how a grower's season went. Pure arithmetic over the records
 * of {@code croftboard.ledger}, in whole cents, without a database or a clock.
 */
package croftboard.ledger.share;
