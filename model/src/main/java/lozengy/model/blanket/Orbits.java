package lozengy.model.blanket;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lozengy.model.brief.Symmetry;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Place;

/**
 * The pieces that a symmetry makes each other's images, and that so have one sequence between them:
 * one piece on an axis or without a symmetry, else two or four. Images go together where the rounds
 * that are worked of them agree, and apart where not: what has been worked is a fact. Images are of
 * one kind and so have as many rounds. Immutable; O(pieces x rounds) to make.
 */
public final class Orbits {

  private final int[][] members;
  private final int[] of;
  private final int[] leads;
  private final int[] worked;
  private final boolean any;

  /**
   * Finds images of each other.
   *
   * @param roundsWorked by piece, how many rounds are worked, from the centre
   * @param locks what was worked, by piece
   */
  Orbits(Layout layout, Symmetry symmetry, int[] roundsWorked, Sequences locks) {
    int pieces = layout.places().size();
    IntPredicate planned = piece -> roundsWorked[piece] < locks.rounds(piece);
    this.members = new int[pieces][];
    this.of = new int[pieces];
    this.worked = new int[pieces];
    Map<Long, Integer> byPoint = new HashMap<>();
    if (symmetry != Symmetry.NONE) {
      layout.places().forEach(place -> byPoint.put(point(place.x(), place.y()), place.index()));
    }
    boolean tied = false;
    Arrays.fill(of, -1);
    for (int piece = 0; piece < pieces; piece++) {
      if (of[piece] >= 0) {
        continue;
      }
      int[] images =
          symmetry == Symmetry.NONE
              ? new int[] {piece}
              : images(layout, symmetry, layout.places().get(piece), byPoint);
      images = agreeing(piece, images, roundsWorked, locks);
      int lead = IntStream.of(images).filter(planned).findFirst().orElse(-1);
      if (lead < 0) {
        lead = piece;
      } else {
        tied |= images.length > 1;
      }
      members[lead] = images;
      for (int image : images) {
        of[image] = lead;
      }
      worked[lead] = IntStream.of(images).filter(i -> !planned.test(i)).findFirst().orElse(-1);
    }
    this.any = tied;
    this.leads = IntStream.range(0, pieces).filter(piece -> of[piece] == piece).toArray();
  }

  /** The images of a piece that no worked round keeps from going with it and with each other. */
  private int[] agreeing(int piece, int[] images, int[] roundsWorked, Sequences locks) {
    int[] facts = new int[locks.rounds(piece)];
    Arrays.fill(facts, Sequences.OPEN);
    IntStream.Builder agreeing = IntStream.builder();
    for (int image : images) {
      boolean agrees = of[image] < 0;
      for (int round = 0; agrees && round < roundsWorked[image]; round++) {
        int yarn = locks.yarn(image, round);
        agrees = facts[round] == Sequences.OPEN || facts[round] == yarn;
      }
      if (agrees) {
        agreeing.add(image);
        for (int round = 0; round < roundsWorked[image]; round++) {
          facts[round] = locks.yarn(image, round);
        }
      }
    }
    return agreeing.build().toArray();
  }

  private static long point(int x, int y) {
    return (long) x << 32 | y;
  }

  private static int[] images(
      Layout layout, Symmetry symmetry, Place place, Map<Long, Integer> byPoint) {
    int x = 2 * layout.size().across() - place.x();
    int y = 2 * layout.size().down() - place.y();
    boolean both = symmetry == Symmetry.BOTH;
    IntStream.Builder images = IntStream.builder();
    images.add(place.index());
    if (both || symmetry == Symmetry.LEFT_RIGHT) {
      images.add(byPoint.get(point(x, place.y())));
    }
    if (both || symmetry == Symmetry.TOP_BOTTOM) {
      images.add(byPoint.get(point(place.x(), y)));
    }
    if (both || symmetry == Symmetry.HALF_TURN) {
      images.add(byPoint.get(point(x, y)));
    }
    return images.build().distinct().sorted().toArray();
  }

  /**
   * {@return whether any piece that is still to be worked is tied to another, so that the symmetry
   * asks something}
   */
  public boolean any() {
    return any;
  }

  /**
   * {@return the pieces that lead an orbit, ascending; the first planned piece of each, or the
   * first of all where none is planned} Not to be changed. What counts pieces and not places counts
   * these.
   */
  public int[] leads() {
    return leads;
  }

  /**
   * {@return whether a piece leads its orbit}
   *
   * @param piece the piece's index, from 0
   */
  public boolean leads(int piece) {
    return of[piece] == piece;
  }

  /**
   * {@return the piece that leads a piece's orbit}
   *
   * @param piece the piece's index, from 0
   */
  public int lead(int piece) {
    return of[piece];
  }

  /**
   * {@return the pieces of an orbit by its lead, ascending; not to be changed}
   *
   * @param lead the index of a piece that leads its orbit
   */
  public int[] members(int lead) {
    return members[lead];
  }

  /**
   * {@return a piece of an orbit that is worked, so that the sequence of all of them is a fact; or
   * -1}
   *
   * @param lead the index of a piece that leads its orbit
   */
  public int worked(int lead) {
    return worked[lead];
  }
}
