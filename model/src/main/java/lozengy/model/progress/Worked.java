package lozengy.model.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.layout.Place;

/** Lists pieces by how far they have come. */
final class Worked {

  private Worked() {}

  /** The names of the pieces in a state. */
  static List<String> names(Blanket blanket, PieceState state) {
    return names(blanket, piece -> blanket.state(piece) == state);
  }

  private static List<String> names(Blanket blanket, IntPredicate named) {
    return blanket.layout().places().stream()
        .filter(place -> named.test(place.index()))
        .map(Place::name)
        .toList();
  }

  /** A count of a yarn as the work stands. */
  static Counted count(Blanket blanket, YarnAmount left, double edgedPercent) {
    Map<Integer, List<String>> parts = new TreeMap<>();
    for (Place place : blanket.layout().places()) {
      if (blanket.partWorked(place.index())) {
        parts
            .computeIfAbsent(blanket.roundsWorked(place.index()), rounds -> new ArrayList<>())
            .add(place.name());
      }
    }
    return new Counted(
        left,
        names(blanket, PieceState.MADE),
        names(blanket, PieceState.JOINED),
        parts.entrySet().stream()
            .map(part -> new PartWorked(part.getKey(), part.getValue()))
            .toList(),
        edgedPercent);
  }
}
