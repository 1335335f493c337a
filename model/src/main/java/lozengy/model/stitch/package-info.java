/**
 * Stitches: their kinds, their names in both terms, and how much yarn each takes to start with. Not
 * how much it takes in one maker's hand: that her samples tell.
 */
package lozengy.model.stitch;
