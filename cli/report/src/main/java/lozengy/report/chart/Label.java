package lozengy.report.chart;

/**
 * A line of text on a piece.
 *
 * @param text the text
 * @param centre where its middle lies, in cm of the blanket
 * @param sizeCm font size in cm of the blanket
 * @param degrees angle, clockwise on the drawing, above -90 and up to 90
 */
record Label(String text, Point centre, double sizeCm, double degrees) {

  /** Height of a capital letter as a part of the font size, of common sans-serif fonts. */
  static final double CAP_HEIGHT = 0.72;
}
