package lozengy.model.check;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Place;

/** The rounds that are still to be worked. */
final class PlannedRounds {

  private PlannedRounds() {}

  /** Whether a round of a piece with so many is meant. */
  interface Covers {

    /** Whether it is. */
    boolean test(int round, int count);
  }

  /** The numbers of the rounds that are meant, piece by piece. */
  static int[] of(Blanket blanket, List<String> at, Covers covers) {
    IntStream.Builder rounds = IntStream.builder();
    for (Place place : blanket.layout().select(at)) {
      int piece = place.index();
      int count = blanket.roundCount(piece);
      for (int round = blanket.roundsWorked(piece); round < count; round++) {
        if (covers.test(round, count)) {
          rounds.add(blanket.index().number(piece, round));
        }
      }
    }
    return rounds.build().toArray();
  }
}
