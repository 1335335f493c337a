package lozengy.model.colour;

/**
 * A colour in CIE L*a*b* (CIE 15), D65 white.
 *
 * @param lightness L*, 0 to 100
 * @param a a*, green to red
 * @param b b*, blue to yellow
 */
public record Lab(double lightness, double a, double b) {}
