package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.brief.PieceNoteReader;
import lozengy.model.brief.PieceState;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.Range;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/**
 * What a file says of a piece, before it is held against the layout.
 *
 * @param located where it says so
 * @param at name of the piece; empty if a mistake tells of it
 * @param kind the same
 * @param state how far it has come, where stated
 * @param roundsWorked how many rounds of it are worked, where stated
 * @param pile whether it is of the pile, where stated
 * @param rounds codes, centre first
 * @param x lattice coordinate, where stated
 * @param y lattice coordinate, where stated
 */
record StatedPiece(
    Located located,
    Optional<String> at,
    Optional<PieceKind> kind,
    Optional<PieceState> state,
    Optional<Integer> roundsWorked,
    Optional<Boolean> pile,
    List<Optional<String>> rounds,
    Optional<Integer> x,
    Optional<Integer> y) {

  private static final Map<String, PieceKind> KINDS =
      Words.meanings(PieceKind.values(), PieceKind::word);
  private static final Map<String, Boolean> YES_OR_NO =
      Words.meanings(new Boolean[] {true, false}, yes -> Boolean.toString(yes));
  private static final Range COORDINATES = Range.whole(0, 1_000_000, "");

  /** Reads a list of pieces. */
  static List<StatedPiece> list(Located located, boolean withStates) {
    List<StatedPiece> pieces = new ArrayList<>();
    for (Located item : located.items("pieces")) {
      item.fields().map(fields -> read(item, fields, withStates)).ifPresent(pieces::add);
    }
    return pieces;
  }

  private static StatedPiece read(Located item, Fields of, boolean withStates) {
    Optional<String> at = of.need("at", "\"at\": \"r3c2\"").flatMap(PieceNoteReader::name);
    List<Optional<String>> rounds =
        of.need("rounds", "\"rounds\": [\"REE\", \"MUD\"]")
            .map(PieceNoteReader::rounds)
            .orElse(List.of());
    Optional<PieceKind> kind = Optional.empty();
    Optional<PieceState> state = Optional.empty();
    Optional<Integer> worked = Optional.empty();
    Optional<Boolean> pile = Optional.empty();
    Optional<Integer> x = Optional.empty();
    Optional<Integer> y = Optional.empty();
    if (withStates) {
      kind = of.get("kind").flatMap(k -> k.word(KINDS));
      state = of.get("state").flatMap(PieceNoteReader::state);
      worked = of.get("rounds_worked").flatMap(PieceNoteReader::roundsWorked);
      pile = of.get("pile").flatMap(p -> p.word(YES_OR_NO));
      x = coordinate(of, "x");
      y = coordinate(of, "y");
    }
    of.tellUnknown();
    return new StatedPiece(item, at, kind, state, worked, pile, rounds, x, y);
  }

  private static Optional<Integer> coordinate(Fields of, String name) {
    return of.get(name).flatMap(c -> c.number(COORDINATES)).map(BigDecimal::intValueExact);
  }
}
