/**
 * An arrangement to print: a booklet in PDF, and the chart as a picture of dots. Whatever shows the
 * blanket is the chart's own SVG, drawn by a library.
 *
 * <p>{@link lozengy.report.print.Booklet} and {@link lozengy.report.print.Picture} are the ways in.
 */
package lozengy.report.print;
