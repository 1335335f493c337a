/** Colours of yarns: sRGB, CIE L*a*b* under D65, the CIEDE2000 difference, and tones. */
package lozengy.model.colour;
