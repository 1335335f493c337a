package lozengy.solver.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lozengy.model.layout.Place;
import lozengy.solver.problem.Clashes;
import lozengy.solver.problem.PairCosts;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.Slots;

/**
 * The pieces of a board parted into tiles, and the phases in which they change: all tiles of a
 * phase lie so far apart that no piece is within reach of two of them. Two grids, one moved against
 * the other by half a tile, come in turns, so that what lies at an edge of one lies well within the
 * other.
 */
final class Tiles {

  /** Slots of a tile: with their tables they fit a core's cache. */
  private static final int MOST_SLOTS = 3000;

  private static final int LEAST_SLOTS = 600;

  /** So many tiles at least, as far as they are not too small. */
  private static final int WANTED = 48;

  /** Most tiles of a phase: between two phases the clock is looked at. */
  static final int MOST_AT_ONCE = 32;

  /** How many grids there are. */
  static final int GRIDS = 2;

  private final Problem problem;
  private final Slots slots;
  private final List<List<int[]>> phases = new ArrayList<>();

  private Tiles(Problem problem, int slotsOfTile) {
    this.problem = problem;
    this.slots = problem.slots();
    for (int grid = 0; grid < GRIDS; grid++) {
      int[][] tiles = grid(slotsOfTile, 0.5 * grid);
      colour(tiles);
    }
  }

  /** Tiles of a size that suits a board. */
  static Tiles of(Problem problem) {
    int suiting = problem.slots().count() / WANTED;
    return of(problem, Math.max(LEAST_SLOTS, Math.min(MOST_SLOTS, suiting)));
  }

  /** Tiles of about so many slots. */
  static Tiles of(Problem problem, int slotsOfTile) {
    return new Tiles(problem, slotsOfTile);
  }

  /** By phase, the tiles, each a list of pieces. */
  List<List<int[]>> phases() {
    return phases;
  }

  /** Parts the pieces by a grid, moved by a part of a tile. */
  private int[][] grid(int slotsOfTile, double moved) {
    int width = 1;
    int height = 1;
    for (int lead : slots.lead()) {
      Place place = problem.blanket().place(lead);
      width = Math.max(width, place.x() + 1);
      height = Math.max(height, place.y() + 1);
    }
    double wanted = Math.max(1, (double) slots.count() / slotsOfTile);
    double side = Math.sqrt(width * (double) height / wanted);
    int across = (int) Math.max(1, Math.round(width / side));
    int down = (int) Math.max(1, Math.round(height / side));
    if (down == 1) {
      across = (int) Math.max(1, Math.round(wanted));
    } else if (across == 1) {
      down = (int) Math.max(1, Math.round(wanted));
    }
    List<List<Integer>> cells = new ArrayList<>();
    for (int cell = 0; cell < (across + 1) * (down + 1); cell++) {
      cells.add(new ArrayList<>());
    }
    for (int orbit = 0; orbit < slots.orbits(); orbit++) {
      Place place = problem.blanket().place(slots.lead()[orbit]);
      int x = (int) (place.x() * across / (double) width + (across > 1 ? moved : 0));
      int y = (int) (place.y() * down / (double) height + (down > 1 ? moved : 0));
      cells.get(y * (across + 1) + x).add(orbit);
    }
    return cells.stream()
        .filter(cell -> !cell.isEmpty())
        .map(cell -> cell.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  /** Deals tiles to phases. */
  private void colour(int[][] tiles) {
    BitSet[] near = near(tiles);
    List<List<Integer>> colours = new ArrayList<>();
    for (int tile = 0; tile < tiles.length; tile++) {
      BitSet beside = near[tile];
      List<Integer> own =
          colours.stream()
              .filter(all -> all.size() < MOST_AT_ONCE && all.stream().noneMatch(beside::get))
              .findFirst()
              .orElse(null);
      if (own == null) {
        own = new ArrayList<>();
        colours.add(own);
      }
      own.add(tile);
    }
    for (List<Integer> colour : colours) {
      phases.add(colour.stream().map(tile -> tiles[tile]).toList());
    }
  }

  /** For each tile those that have a piece within reach in common with it. */
  private BitSet[] near(int[][] tiles) {
    BitSet[] near = new BitSet[tiles.length];
    int[] tileOf = new int[slots.orbits()];
    for (int tile = 0; tile < tiles.length; tile++) {
      near[tile] = new BitSet(tiles.length);
      for (int orbit : tiles[tile]) {
        tileOf[orbit] = tile;
      }
    }
    PairCosts pairs = problem.costs().pairs();
    Clashes clashes = problem.clashes();
    BitSet reaching = new BitSet(tiles.length);
    for (int orbit = 0; orbit < tileOf.length; orbit++) {
      reaching.clear();
      reaching.set(tileOf[orbit]);
      for (int slot = slots.orbitStart()[orbit]; slot < slots.orbitStart()[orbit + 1]; slot++) {
        reach(
            reaching,
            tileOf,
            pairs.lightSlot(),
            pairs.lightStart()[slot],
            pairs.lightStart()[slot + 1]);
        reach(
            reaching,
            tileOf,
            pairs.seamSlot(),
            pairs.seamStart()[slot],
            pairs.seamStart()[slot + 1]);
        reach(reaching, tileOf, clashes.slot(), clashes.start()[slot], clashes.start()[slot + 1]);
      }
      for (int tile = reaching.nextSetBit(0); tile >= 0; tile = reaching.nextSetBit(tile + 1)) {
        near[tile].or(reaching);
      }
    }
    return near;
  }

  private void reach(BitSet reaching, int[] tileOf, int[] list, int from, int to) {
    for (int i = from; i < to; i++) {
      reaching.set(tileOf[slots.orbit()[list[i]]]);
    }
  }
}
