/**
 * The score card: every part of the score beside what chance would make of it, join counts, Moran's
 * I of lightness, counts against targets, and the seams that are closest in colour.
 */
package lozengy.model.card;
