/** Units of length and weight, exact, and lengths in a maker's words. */
package lozengy.model.unit;
