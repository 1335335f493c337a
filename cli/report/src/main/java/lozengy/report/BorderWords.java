package lozengy.report;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Nearness;

/** Says how often the same border comes again close by. */
final class BorderWords {

  private BorderWords() {}

  /** A sentence; empty where the look gives the borders, for they come again by design. */
  static Optional<String> again(Blanket blanket, Sequences sequences) {
    if (!blanket.brief().look().borders().isEmpty()) {
      return Optional.empty();
    }
    long again = 0;
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int i = 0; i < pairs.size(); i++) {
        int border = sequences.border(pairs.first()[i]);
        boolean same = border == sequences.border(pairs.second()[i]);
        again += same && border != Sequences.OPEN ? 1 : 0;
      }
    }
    if (again > blanket.pieceCount()) {
      return Optional.of(
          "The same border comes again within two squares at "
              + Figures.count(again, "place")
              + ".");
    }
    return Optional.of(
        again == 0
            ? "No border comes again within two squares."
            : "No border comes again within two squares, but for "
                + Figures.count(again, "place")
                + ".");
  }
}
