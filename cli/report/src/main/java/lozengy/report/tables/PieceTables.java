package lozengy.report.tables;

import static lozengy.report.Decimals.metres;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/** The tables of pieces and of their rounds. */
final class PieceTables {

  static final String PIECES = "pieces";

  private PieceTables() {}

  /** A row for every piece, in the layout's order. */
  static Table pieces(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    Table table =
        new Table(
                PIECES,
                "Every piece: where it lies, how far it has come, its yarns",
                List.of("piece"),
                Column.text("piece", "Name of the piece"),
                Column.word(
                    "kind",
                    "What it is",
                    Arrays.stream(PieceKind.values()).map(PieceKind::word).toList()),
                Column.word(
                    "state",
                    "How far it has come",
                    Arrays.stream(PieceState.values()).map(PieceState::word).toList()),
                Column.whole(
                    "x",
                    "Lattice coordinate from the left: half diagonals on point, else half sides",
                    0),
                Column.whole("y", "Lattice coordinate from the top, in the same unit", 0),
                Column.whole("rounds", "How many rounds it has", 1),
                Column.whole("rounds_worked", "How many of them are worked, from the centre", 0),
                Column.text("sequence", "Codes of its yarns, centre first, spaces between"),
                Column.text("border", "Code of its last round's yarn"),
                Column.whole(
                        "changed_rounds",
                        "Rounds in another yarn than in the earlier arrangement; empty without one",
                        0)
                    .optional())
            .refers("border", YarnTable.YARNS, "code");
    Sequences sequences = arrangement.sequences();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (Place place : blanket.layout().places()) {
      int piece = place.index();
      table.row(
          place.name(),
          place.kind().word(),
          laid.state(piece).word(),
          Long.valueOf(place.x()),
          Long.valueOf(place.y()),
          Long.valueOf(sequences.rounds(piece)),
          Long.valueOf(laid.roundsWorked(piece)),
          Arrays.stream(sequences.of(piece))
              .mapToObj(yarn -> blanket.yarn(yarn).code())
              .collect(Collectors.joining(" ")),
          blanket.yarn(sequences.border(piece)).code(),
          arrangement
              .earlier()
              .map(earlier -> Long.valueOf(changed(sequences, earlier, piece)))
              .orElse(null));
    }
    return table;
  }

  private static int changed(Sequences sequences, Sequences earlier, int piece) {
    int changed = 0;
    for (int round = 0; round < sequences.rounds(piece); round++) {
      changed += sequences.yarn(piece, round) == earlier.yarn(piece, round) ? 0 : 1;
    }
    return changed;
  }

  /** A row for every round of every piece, centre first. */
  static Table rounds(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    Table table =
        new Table(
                "rounds",
                "Every round of every piece: its yarn and how much of it",
                List.of("piece", "round"),
                Column.text("piece", "Name of the piece"),
                Column.whole("round", "Which round, 1 at the centre", 1),
                Column.flag("border", "Whether it is the piece's last round"),
                Column.text("yarn", "Code of its yarn"),
                Column.number("length_m", "Yarn that it takes, in m"),
                Column.flag("fixed", "Whether the brief locks it, or it is worked"),
                Column.flag("worked", "Whether it is worked"),
                Column.text("earlier_yarn", "Its yarn in the earlier arrangement; empty without")
                    .optional())
            .refers("piece", PIECES, "piece")
            .refers("yarn", YarnTable.YARNS, "code");
    Sequences sequences = arrangement.sequences();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (Place place : blanket.layout().places()) {
      int piece = place.index();
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        table.row(
            place.name(),
            Long.valueOf(round + 1),
            round == sequences.rounds(piece) - 1,
            blanket.yarn(yarn).code(),
            metres(blanket.motifs().needMillimetres(place.kind(), round, yarn)),
            !blanket.free(piece, round),
            round < laid.roundsWorked(piece),
            earlier(arrangement, piece, round));
      }
    }
    return table;
  }

  private static String earlier(Arrangement arrangement, int piece, int round) {
    Optional<Sequences> earlier = arrangement.earlier();
    int yarn = earlier.isEmpty() ? Sequences.OPEN : earlier.get().yarn(piece, round);
    return yarn == Sequences.OPEN ? null : arrangement.blanket().yarn(yarn).code();
  }
}
