package lozengy.solver.search;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;

/**
 * The walk of a single walker on a large board. Phase by phase the tiles of a {@link Tiles} phase
 * change at once, each as a part of the state with a random source of its own, by seed, phase and
 * tile: exchanges of rounds with the same needs and domain, which leave counts and stock as they
 * are. Then the whole takes over what has changed, with copies that several tiles may have made,
 * and the walker makes moves of all other kinds anywhere. So the outcome depends on the seed and
 * the moves alone, however many threads carry the tiles; and what a tile touches stays in a core's
 * cache.
 */
final class TiledWalk {

  /**
   * Rounds from which on a board is large: from there one such walk does better than two walkers.
   */
  static final int LARGE = 20_000;

  /** Moves for each slot of a tile while it changes. */
  private static final int MOVES_OF_SLOT = 8;

  /** Moves between two changes of temperature. */
  private static final int STRIDE = 256;

  private final Walker walker;
  private final List<List<int[]>> phases;
  private final Lockstep lockstep;
  private final long seed;
  private long phase;

  /**
   * Sets up a walk.
   *
   * @param walker whose state it is
   * @param tiles tiles of its problem
   * @param lockstep carries the tiles
   * @param seed seed of the tiles' random sources
   */
  TiledWalk(Walker walker, Tiles tiles, Lockstep lockstep, long seed) {
    this.walker = walker;
    this.phases = tiles.phases();
    this.lockstep = lockstep;
    this.seed = seed;
    walker.leaveToParts();
  }

  /**
   * Whether a blanket is one for tiles: large, and without wishes that count borders or pieces all
   * over it, which single tiles cannot know.
   */
  static boolean suits(Blanket blanket) {
    Look look = blanket.brief().look();
    return blanket.index().count() >= LARGE && look.counts().isEmpty() && look.order().isEmpty();
  }

  /**
   * Walks one phase, if the state can part; else some moves.
   *
   * @param most moves to make at most, at least 1
   * @return moves made
   */
  long walk(long most) {
    List<Tile> tiles = walker.canPart() ? tiles() : List.of();
    long slots = tiles.stream().mapToLong(Tile::slots).sum();
    if (slots == 0 || most < 2 * slots) {
      long some = Math.min(most, Walkers.CHUNK);
      walker.walk(some);
      return some;
    }
    double parts = 1 + walker.anywhere();
    long all = Math.min(most, (long) (slots * MOVES_OF_SLOT * parts));
    double movesOfSlot = all / parts / slots;
    lockstep.run(tiles, tile -> tile.walk(movesOfSlot));
    long made = tiles.stream().mapToLong(tile -> tile.moves(movesOfSlot)).sum();
    walker.settle(tiles.stream().map(tile -> tile.state).toList(), made);
    walker.walk(all - made);
    phase++;
    if (phase % phases.size() == 0) {
      walker.look();
    }
    return all;
  }

  /** The tiles of the next phase that have anything to change. */
  private List<Tile> tiles() {
    List<int[]> pieces = phases.get((int) (phase % phases.size()));
    List<Tile> tiles = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Tile tile = new Tile(pieces.get(i), Draws.of(seed, phase, i));
      if (tile.slots() > 0) {
        tiles.add(tile);
      }
    }
    return tiles;
  }

  /** A tile while it changes. */
  private final class Tile {

    private final Draws draws;
    private final State state;
    private final Neighbourhood neighbourhood;

    Tile(int[] pieces, Draws draws) {
      this.draws = draws;
      this.state = new State(walker.state(), pieces.length);
      this.neighbourhood = new Neighbourhood(walker.neighbourhood(), pieces, draws);
    }

    int slots() {
      return neighbourhood.size();
    }

    long moves(double ofSlot) {
      return (long) (ofSlot * slots());
    }

    /** Makes its moves; it cools as the whole board does while all tiles have their turn. */
    void walk(double movesOfSlot) {
      Acceptance acceptance = Acceptance.drawingFirst(state, draws);
      Moves moves = new Moves(state, draws, acceptance, neighbourhood, null);
      double turn = movesOfSlot * walker.neighbourhood().size();
      long count = moves(movesOfSlot);
      for (long done = 0; done < count; done += STRIDE) {
        double temperature = walker.temperatureAfter(turn * done / count);
        long stride = Math.min(STRIDE, count - done);
        for (long i = 0; i < stride; i++) {
          walker.attemptWithin(neighbourhood, moves, temperature);
        }
      }
    }
  }
}
