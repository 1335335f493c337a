/**
 * Units of length and weight, exact, and lengths in a maker's words. An amount is a decimal number,
 * or a {@link lozengy.model.unit.Ratio} of two where a put-up comes in; it is rounded once, at the
 * last step, to whole millimetres of yarn: down where yarn is used, up where it is at hand, so that
 * what fits as written fits.
 */
package lozengy.model.unit;
