/**
 * An arrangement as tables that spreadsheets and other programs read: CSV after RFC 4180, described
 * by a Data Package of the Frictionless standard, version 1.
 *
 * <p>{@link lozengy.report.tables.Tables} is the way in.
 */
package lozengy.report.tables;
