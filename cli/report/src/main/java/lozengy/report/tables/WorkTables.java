package lozengy.report.tables;

import static lozengy.report.Decimals.metres;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.making.MakeList;
import lozengy.report.PileLine;

/** The tables to work by: the make list, and the strips to join. */
final class WorkTables {

  private WorkTables() {}

  /** A row for every round that is still to be worked, in the order of the make list. */
  static Table makeList(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    Table table =
        new Table(
                "make-list",
                "Every round still to be worked, in an order that picks yarns up seldom",
                List.of("step", "piece", "round"),
                Column.whole(
                    "step", "The step's number, from 1; it stays while steps are worked", 1),
                Column.text("yarn", "Code of the yarn in hand"),
                Column.text("piece", "Name of the piece"),
                Column.whole("round", "Which of its rounds, 1 at the centre", 1),
                Column.number("length_m", "Yarn that it takes, in m"))
            .refers("yarn", YarnTable.YARNS, "code")
            .refers("piece", PieceTables.PIECES, "piece");
    for (MakeList.Batch batch : MakeList.of(arrangement).batches()) {
      for (MakeList.Task task : batch.tasks()) {
        Place place = blanket.place(task.piece());
        table.row(
            Long.valueOf(batch.step()),
            blanket.yarn(batch.yarn()).code(),
            place.name(),
            Long.valueOf(task.round() + 1),
            metres(blanket.motifs().needMillimetres(place.kind(), task.round(), batch.yarn())));
      }
    }
    return table;
  }

  /** A row for every finished piece of the pile that has a place, by border and inwards. */
  static Table pile(Arrangement arrangement) {
    Table table =
        new Table(
                "pile",
                "Where each finished piece of the pile goes: by kind, then by border and inwards",
                List.of("piece"),
                Column.text("kind", "What it is"),
                Column.text("border", "Code of its border's yarn"),
                Column.text("inwards", "Codes of its yarns, the border first, spaces between"),
                Column.text("piece", "Name of its place"))
            .refers("border", YarnTable.YARNS, "code")
            .refers("piece", PieceTables.PIECES, "piece");
    for (PileLine line : PileLine.index(arrangement)) {
      for (String place : line.at()) {
        table.row(line.kind(), line.inwards().get(0), String.join(" ", line.inwards()), place);
      }
    }
    return table;
  }

  /** A row for every sort of finished pieces of which some stay out of the blanket. */
  static Table pileOut(Arrangement arrangement) {
    Table table =
        new Table(
                "pile-out",
                "Which finished pieces of the pile stay out, because there are more than places",
                List.of("kind", "inwards"),
                Column.text("kind", "What it is"),
                Column.text("border", "Code of its border's yarn"),
                Column.text("inwards", "Codes of its yarns, the border first, spaces between"),
                Column.whole("pieces", "How many stay out", 1))
            .refers("border", YarnTable.YARNS, "code");
    for (PileLine line : PileLine.index(arrangement)) {
      if (line.out() > 0) {
        String inwards = String.join(" ", line.inwards());
        table.row(line.kind(), line.inwards().get(0), inwards, Long.valueOf(line.out()));
      }
    }
    return table;
  }

  /** A row for every piece, strip by strip in joining order. */
  static Table strips(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    Table table =
        new Table(
                "strips",
                "The strips to join, and which piece follows which",
                List.of("strip", "place"),
                Column.whole("strip", "Number of the strip, in joining order", 1),
                Column.whole("place", "Place in the strip, from its left end", 1),
                Column.text("piece", "Name of the piece"),
                Column.text("follows", "Name of the piece before it; empty for the first")
                    .optional(),
                Column.flag("joined", "Whether it is joined already"))
            .refers("piece", PieceTables.PIECES, "piece")
            .refers("follows", PieceTables.PIECES, "piece");
    for (Strip strip : Strips.of(blanket.layout())) {
      String before = null;
      for (int i = 0; i < strip.pieces().size(); i++) {
        Place place = strip.pieces().get(i);
        boolean joined = blanket.state(place.index()) == PieceState.JOINED;
        table.row(Long.valueOf(strip.number()), Long.valueOf(i + 1), place.name(), before, joined);
        before = place.name();
      }
    }
    return table;
  }
}
