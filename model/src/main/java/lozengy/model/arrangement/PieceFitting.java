package lozengy.model.arrangement;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceNames;
import lozengy.model.brief.PieceState;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Located;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Nearest;
import lozengy.model.input.Words;
import lozengy.model.layout.Place;

/** Holds the pieces that a file lists against the layout: each must be there once, and fit. */
final class PieceFitting {

  private final Blanket blanket;
  private final Located list;
  private final Mistakes mistakes;
  private final Sequences sequences;
  private final PieceState[] states;
  private final List<String> codes;

  private PieceFitting(Blanket blanket, Located list, Sequences sequences) {
    this.blanket = blanket;
    this.list = list;
    this.mistakes = list.mistakes();
    this.sequences = sequences;
    this.states = new PieceState[blanket.pieceCount()];
    this.codes = blanket.brief().yarns().stream().map(yarn -> yarn.code()).toList();
  }

  /** Fits a list of pieces; what does not fit is a mistake. */
  static PieceFitting of(Blanket blanket, Located list, List<StatedPiece> pieces) {
    PieceFitting fitting = new PieceFitting(blanket, list, blanket.open());
    pieces.forEach(fitting::fit);
    fitting.tellMissing();
    return fitting;
  }

  /** Fits a list of some pieces, and sets them in sequences that hold the others already. */
  static void ofSome(Blanket blanket, Located list, List<StatedPiece> pieces, Sequences sequences) {
    PieceFitting fitting = new PieceFitting(blanket, list, sequences);
    pieces.forEach(fitting::fit);
  }

  /** By piece, its yarns. */
  Sequences sequences() {
    return sequences;
  }

  /** By piece, its state. */
  PieceState[] states() {
    return states;
  }

  private void fit(StatedPiece piece) {
    if (piece.at().isEmpty()) {
      return;
    }
    String name = piece.at().get();
    Optional<Place> found = blanket.layout().find(name);
    if (found.isEmpty()) {
      wrong(
          piece,
          "at",
          "There is no piece " + Words.quoted(name),
          PieceNames.remedy(name, blanket.brief().layout()));
      return;
    }
    Place place = found.get();
    if (states[place.index()] != null) {
      wrong(piece, "at", "The piece " + name + " is listed twice", "List each piece once");
      return;
    }
    states[place.index()] = piece.state();
    String kind = place.kind().word();
    if (piece.kind().isPresent() && piece.kind().get() != place.kind()) {
      String stated = piece.kind().get().word();
      wrong(piece, "kind", name + " is stated to be a " + stated, "It is a " + kind);
    }
    tellCoordinate(piece, "x", piece.x(), place.x());
    tellCoordinate(piece, "y", piece.y(), place.y());
    rounds(piece, place);
  }

  private void tellCoordinate(StatedPiece piece, String axis, Optional<Integer> stated, int is) {
    if (stated.isPresent() && stated.get() != is) {
      String name = piece.at().orElseThrow();
      wrong(piece, axis, name + " is stated to lie at " + axis + " " + stated.get(), "It is " + is);
    }
  }

  private void rounds(StatedPiece piece, Place place) {
    int rounds = blanket.roundCount(place.index());
    String name = place.name();
    if (piece.rounds().size() != rounds) {
      if (!mistakes.doubt(piece.located().path().field("rounds"))) {
        wrong(
            piece,
            "rounds",
            name + " is given " + Words.count(piece.rounds().size(), "round"),
            "A " + place.kind().word() + " has " + Words.count(rounds, "round"));
      }
      return;
    }
    for (int round = 0; round < rounds; round++) {
      Optional<String> code = piece.rounds().get(round);
      BriefPath path = BriefPath.of("rounds").item(round);
      if (code.isEmpty()) {
        if (piece.state() != PieceState.PLANNED
            && !mistakes.doubt(path.in(piece.located().path()))) {
          wrong(
              piece,
              path,
              name + " is " + piece.state().word() + " but its round " + (round + 1) + " is open",
              "Give all rounds of a worked piece");
        }
        continue;
      }
      int yarn = blanket.yarnIndex(code.get());
      if (yarn < 0) {
        wrong(
            piece,
            path,
            "No yarn has the code " + Words.quoted(code.get()),
            Nearest.to(code.get(), codes)
                .map(near -> "Maybe " + near + " is meant")
                .orElse("The yarns' codes are " + String.join(", ", codes)));
      } else {
        sequences.set(place.index(), round, yarn);
      }
    }
  }

  private void tellMissing() {
    int missing = 0;
    String first = "";
    for (int piece = 0; piece < states.length; piece++) {
      if (states[piece] == null) {
        states[piece] = PieceState.PLANNED;
        first = missing++ == 0 ? blanket.place(piece).name() : first;
      }
    }
    if (missing > 0 && mistakes.none()) {
      String others = missing == 1 ? " is" : " and " + Words.count(missing - 1, "other") + " are";
      list.wrong(
          first + others + " not listed",
          "List each of the " + Words.count(states.length, "piece") + " of the layout");
    }
  }

  private void wrong(StatedPiece piece, String field, String found, String remedy) {
    wrong(piece, BriefPath.of(field), found, remedy);
  }

  private void wrong(StatedPiece piece, BriefPath step, String found, String remedy) {
    Located at = piece.located();
    mistakes.add(step.in(at.path()), at.node().lineAt(step), found, remedy);
  }
}
