/**
 * Many briefs in a row: JSON Lines in, JSON Lines out in the same order, several solved at once.
 * Memory depends on how many are under way, not on how many there are.
 */
package lozengy.cli.batch;
