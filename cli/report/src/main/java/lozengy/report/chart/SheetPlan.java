package lozengy.report.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A drawing too large for one sheet of paper, split over several that overlap, so that they can be
 * laid on each other and glued.
 *
 * @param widthMm width of the drawing
 * @param heightMm height of the drawing
 * @param sheetWidthMm how much of it a sheet holds across
 * @param sheetHeightMm how much of it a sheet holds down
 */
public record SheetPlan(
    double widthMm, double heightMm, double sheetWidthMm, double sheetHeightMm) {

  /** What two neighbours both show, in mm. */
  public static final double OVERLAP = 10;

  /**
   * Part of the drawing on one sheet.
   *
   * @param row its row, from 0 at the top
   * @param column its column, from 0 at the left
   * @param left where it begins on the drawing, in mm
   * @param top where it begins on the drawing, in mm
   */
  public record Tile(int row, int column, double left, double top) {}

  /**
   * Makes a plan.
   *
   * @throws IllegalArgumentException if a sheet holds no more than the overlap
   */
  public SheetPlan {
    if (!(sheetWidthMm > OVERLAP && sheetHeightMm > OVERLAP)) {
      throw new IllegalArgumentException("a sheet must be larger than the overlap");
    }
  }

  /** How many sheets lie side by side. */
  public int columns() {
    return count(widthMm, sheetWidthMm);
  }

  /** How many sheets lie one below the other. */
  public int rows() {
    return count(heightMm, sheetHeightMm);
  }

  private static int count(double whole, double sheet) {
    return (int) Math.max(1, Math.ceil((whole - OVERLAP) / (sheet - OVERLAP) - 1e-9));
  }

  /** The sheets, row by row. */
  public List<Tile> tiles() {
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < rows(); row++) {
      for (int column = 0; column < columns(); column++) {
        tiles.add(
            new Tile(
                row, column, column * (sheetWidthMm - OVERLAP), row * (sheetHeightMm - OVERLAP)));
      }
    }
    return tiles;
  }
}
