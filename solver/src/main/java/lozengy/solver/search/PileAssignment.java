package lozengy.solver.search;

import java.util.Arrays;
import lozengy.solver.problem.PilePlaces;
import lozengy.solver.problem.Problem;

/** Where the pieces of the pile lie in a state. Nothing but {@link #reset} allocates. */
final class PileAssignment {

  private final Problem problem;
  private final int[] placeOf;
  private final int[] pieceAt;
  private final int[] stackOf;
  private final boolean[] held;

  PileAssignment(Problem problem) {
    this.problem = problem;
    PilePlaces pile = problem.pile();
    this.placeOf = new int[pile.pieces()];
    this.stackOf = new int[placeOf.length];
    this.pieceAt = new int[problem.slots().orbits()];
    this.held = new boolean[pieceAt.length];
  }

  /** Finds the pieces in an assignment. */
  void reset(int[] assignment) {
    if (placeOf.length == 0) {
      return;
    }
    int[] laid = problem.pile().laid(problem.slots(), problem.domains(), assignment);
    Arrays.fill(pieceAt, -1);
    int orbit = 0;
    for (int place = 0; place < laid.length; place++) {
      held[place] = laid[place] >= 0;
      if (held[place]) {
        placeOf[orbit] = place;
        stackOf[orbit] = laid[place];
        pieceAt[place] = orbit++;
      }
    }
  }

  /** Whether a piece of the pile lies at a place. */
  boolean holds(int place) {
    return held[place];
  }

  /** How many pieces there are. */
  int pieces() {
    return placeOf.length;
  }

  /** Where a piece lies, by its number. */
  int place(int orbit) {
    return placeOf[orbit];
  }

  /** The stack of the piece that lies at a place, which must hold one. */
  int stack(int place) {
    return stackOf[pieceAt[place]];
  }

  /** Notes that what lies at two places was exchanged. */
  void exchange(int placeA, int placeB) {
    int orbitA = pieceAt[placeA];
    int orbitB = pieceAt[placeB];
    set(placeA, orbitB);
    set(placeB, orbitA);
  }

  private void set(int place, int orbit) {
    pieceAt[place] = orbit;
    held[place] = orbit >= 0;
    if (orbit >= 0) {
      placeOf[orbit] = place;
    }
  }
}
