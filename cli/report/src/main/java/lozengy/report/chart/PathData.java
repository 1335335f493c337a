package lozengy.report.chart;

import java.util.List;

/** Writes the {@code d} of an SVG path, in mm to a hundredth; lines are steps from where it is. */
final class PathData {

  private final StringBuilder text = new StringBuilder();
  private long atX;
  private long atY;

  PathData move(double x, double y) {
    at(x, y);
    return add('M', atX, atY);
  }

  /** A line to a point. */
  PathData line(double x, double y) {
    long fromX = atX;
    long fromY = atY;
    at(x, y);
    return add('l', atX - fromX, atY - fromY);
  }

  /** A closed line. */
  PathData ring(List<Point> corners) {
    move(corners.get(0).x(), corners.get(0).y());
    corners.stream().skip(1).forEach(corner -> line(corner.x(), corner.y()));
    return close();
  }

  PathData curve(Point first, Point second, Point end) {
    add('C', hundredths(first.x()), hundredths(first.y()));
    add(' ', hundredths(second.x()), hundredths(second.y()));
    at(end.x(), end.y());
    return add(' ', atX, atY);
  }

  PathData close() {
    text.append('z');
    return this;
  }

  boolean isEmpty() {
    return text.length() == 0;
  }

  private void at(double x, double y) {
    atX = hundredths(x);
    atY = hundredths(y);
  }

  private static long hundredths(double mm) {
    return Math.round(mm * 100);
  }

  private PathData add(char command, long x, long y) {
    text.append(command);
    number(x);
    if (y >= 0) {
      text.append(' ');
    }
    number(y);
    return this;
  }

  /** Without the nought before a point, as SVG allows. */
  private void number(long hundredths) {
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    text.append(hundredths < 0 ? "-" : "");
    if (whole > 0 || rest == 0) {
      text.append(whole);
    }
    if (rest > 0) {
      text.append(rest < 10 ? ".0" : ".").append(rest % 10 == 0 ? rest / 10 : rest);
    }
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
