package lozengy.report.chart;

import lozengy.report.Figures;

/** Writes the {@code d} of an SVG path, in mm to a hundredth. */
final class PathData {

  private static final int DECIMALS = 2;

  private final StringBuilder text = new StringBuilder();

  PathData move(double x, double y) {
    return add('M', x, y);
  }

  PathData line(double x, double y) {
    return add('L', x, y);
  }

  PathData curve(Point first, Point second, Point end) {
    add('C', first.x(), first.y());
    text.append(' ').append(number(second.x())).append(' ').append(number(second.y()));
    text.append(' ').append(number(end.x())).append(' ').append(number(end.y()));
    return this;
  }

  PathData close() {
    text.append('z');
    return this;
  }

  boolean isEmpty() {
    return text.length() == 0;
  }

  private PathData add(char command, double x, double y) {
    text.append(command).append(number(x)).append(' ').append(number(y));
    return this;
  }

  private static String number(double value) {
    return Figures.shortest(value, DECIMALS);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
