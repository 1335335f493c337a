package lozengy.report.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SheetPlanTest {

  @Test
  void sheetsCoverAllAndOverlap() {
    Random random = new Random(3);
    for (int run = 0; run < 200; run++) {
      double width = 20 + random.nextInt(900);
      double height = 20 + random.nextInt(900);
      SheetPlan plan = new SheetPlan(width, height, 190, 265);
      List<SheetPlan.Tile> tiles = plan.tiles();
      assertEquals(plan.rows() * plan.columns(), tiles.size());
      SheetPlan.Tile last = tiles.get(tiles.size() - 1);
      assertTrue(last.left() + 190 >= width - 1e-9 && last.top() + 265 >= height - 1e-9);
      // no sheet too many: without the last row or column the drawing would not be covered
      assertTrue(plan.columns() == 1 || last.left() + SheetPlan.OVERLAP < width);
      assertTrue(plan.rows() == 1 || last.top() + SheetPlan.OVERLAP < height);
      for (SheetPlan.Tile tile : tiles) {
        if (tile.column() > 0) {
          SheetPlan.Tile before = tiles.get(tiles.indexOf(tile) - 1);
          assertEquals(SheetPlan.OVERLAP, before.left() + 190 - tile.left(), 1e-9);
        }
        if (tile.row() > 0) {
          SheetPlan.Tile above = tiles.get(tiles.indexOf(tile) - plan.columns());
          assertEquals(SheetPlan.OVERLAP, above.top() + 265 - tile.top(), 1e-9);
        }
      }
    }
    assertThrows(IllegalArgumentException.class, () -> new SheetPlan(50, 50, 10, 100));
  }

  @Test
  void everySheetSaysWhichItIsAndMarksItsNeighbours() throws Exception {
    SheetPlan plan = new SheetPlan(500, 700, 190, 265);
    List<SheetPlan.Tile> tiles = plan.tiles();
    for (int i = 0; i < tiles.size(); i++) {
      String svg = SheetMarks.svg(plan, tiles.get(i), "A <title>", 5);
      ChartTest.parse(svg);
      assertTrue(svg.contains("Sheet " + (i + 1) + " of 9. Scale 1:5."), svg);
      // corners have two neighbours, sides three, the middle four
      int neighbours = i == 4 ? 4 : i % 2 == 0 ? 2 : 3;
      assertEquals(neighbours, svg.split("class=\"overlap\"", -1).length - 1);
    }
  }
}
