package lozengy.model.progress;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;

/** Lists pieces by how far they have come. */
final class Worked {

  private Worked() {}

  /** The names of the pieces in a state. */
  static List<String> names(Blanket blanket, PieceState state) {
    return blanket.layout().places().stream()
        .filter(place -> blanket.state(place.index()) == state)
        .map(Place::name)
        .toList();
  }
}
