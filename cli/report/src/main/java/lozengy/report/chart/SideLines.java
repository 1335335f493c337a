package lozengy.report.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiPredicate;

/** The sides of the pieces: the seams, where two pieces share one, and the outline of all. */
final class SideLines {

  /** A side of one piece, clockwise, and the piece that has it too, if any. */
  private static final class Side {
    final PieceDrawing piece;
    final Point from;
    final Point to;
    PieceDrawing other;

    Side(PieceDrawing piece, Point from, Point to) {
      this.piece = piece;
      this.from = from;
      this.to = to;
    }
  }

  private final List<Side> sides;

  private SideLines(List<Side> sides) {
    this.sides = sides;
  }

  static SideLines of(List<PieceDrawing> pieces) {
    Map<String, Side> bySide = new LinkedHashMap<>();
    for (PieceDrawing piece : pieces) {
      Polygon outline = piece.outline();
      for (int i = 0; i < outline.corners().size(); i++) {
        Side side = new Side(piece, outline.corner(i), outline.corner(i + 1));
        // the neighbour runs along the same side the other way
        Side met = bySide.get(key(side.to) + key(side.from));
        if (met == null) {
          bySide.put(key(side.from) + key(side.to), side);
        } else {
          met.other = piece;
        }
      }
    }
    return new SideLines(List.copyOf(bySide.values()));
  }

  /** Rounded, so that corners which are equal but for the last bits stay equal. */
  private static String key(Point point) {
    return Math.round(point.x() * 1e5) + " " + Math.round(point.y() * 1e5) + ";";
  }

  /** The seams between pieces that a test takes, each run of them in one line as one. */
  List<List<Point>> seams(BiPredicate<PieceDrawing, PieceDrawing> test) {
    Map<String, List<Point>> byEnd = new HashMap<>();
    List<List<Point>> lines = new ArrayList<>();
    for (Side side : sides) {
      if (side.other == null || !test.test(side.piece, side.other)) {
        continue;
      }
      boolean forwards = order(side.from, side.to) < 0;
      List<Point> line = new ArrayList<>();
      line.add(forwards ? side.from : side.to);
      line.add(forwards ? side.to : side.from);
      String heading = heading(line.get(0), line.get(1));
      List<Point> before = byEnd.remove(heading + "to" + key(line.get(0)));
      if (before != null) {
        lines.remove(before);
        line.set(0, before.get(0));
        byEnd.remove(heading + "from" + key(line.get(0)));
      }
      List<Point> after = byEnd.remove(heading + "from" + key(line.get(1)));
      if (after != null) {
        lines.remove(after);
        line.set(1, after.get(1));
        byEnd.remove(heading + "to" + key(line.get(1)));
      }
      lines.add(line);
      byEnd.put(heading + "from" + key(line.get(0)), line);
      byEnd.put(heading + "to" + key(line.get(1)), line);
    }
    return lines;
  }

  private static int order(Point one, Point other) {
    int byX = Long.compare(Math.round(one.x() * 1e5), Math.round(other.x() * 1e5));
    return byX != 0 ? byX : Long.compare(Math.round(one.y() * 1e5), Math.round(other.y() * 1e5));
  }

  private static String heading(Point from, Point to) {
    return Math.round(1e3 * Math.atan2(to.y() - from.y(), to.x() - from.x())) + " ";
  }

  /** What goes around all pieces, clockwise, without corners that are none; the rings apart. */
  List<Polyline> outline() {
    Map<String, List<Side>> byStart = new LinkedHashMap<>();
    for (Side side : sides) {
      if (side.other == null) {
        byStart.computeIfAbsent(key(side.from), each -> new ArrayList<>()).add(side);
      }
    }
    List<Polyline> rings = new ArrayList<>();
    while (!byStart.isEmpty()) {
      List<Point> ring = new ArrayList<>();
      String first = byStart.keySet().iterator().next();
      String at = first;
      do {
        List<Side> leaving = byStart.get(at);
        // where two rings touch in a point the sharpest turn to the right stays on this one
        Side next = leaving.size() == 1 || ring.isEmpty() ? leaving.get(0) : right(ring, leaving);
        leaving.remove(next);
        if (leaving.isEmpty()) {
          byStart.remove(at);
        }
        ring.add(next.from);
        at = key(next.to);
      } while (!at.equals(first));
      rings.add(Polyline.withoutStraightCorners(ring));
    }
    return rings;
  }

  private static Side right(List<Point> ring, List<Side> leaving) {
    Point last = ring.get(ring.size() - 1);
    Side best = leaving.get(0);
    for (Side side : leaving) {
      best = turn(last, side) > turn(last, best) ? side : best;
    }
    return best;
  }

  private static double turn(Point before, Side side) {
    return Polyline.turn(before, side.from, side.to);
  }
}
