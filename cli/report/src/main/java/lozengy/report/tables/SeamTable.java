package lozengy.report.tables;

import static lozengy.report.Decimals.rounded;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Scorer;
import lozengy.report.SeamKinds;

/** The table of seams. */
final class SeamTable {

  private static final int DIFFERENCE_DECIMALS = 4;
  private static final int CM_DECIMALS = 3;

  private SeamTable() {}

  /** A row for every seam, in the layout's order. */
  static Table of(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    Table table =
        new Table(
                "seams",
                "Every seam: the two pieces, their borders and how much these differ",
                List.of("first", "second"),
                Column.text("first", "Name of one piece"),
                Column.text("second", "Name of the other piece"),
                Column.text("first_border", "Code of the yarn of the first piece's border"),
                Column.text("second_border", "Code of the yarn of the second piece's border"),
                Column.number("colour_difference", "CIEDE2000 between the two borders"),
                Column.number(
                    "contrast", "How well they have the contrast wanted of seams, 0 to 1"),
                Column.number("length_cm", "Length of the seam, in cm"),
                Column.word(
                    "seam", "Whether it joins pieces to a strip, or strips", SeamKinds.WORDS))
            .refers("first", PieceTables.PIECES, "piece")
            .refers("second", PieceTables.PIECES, "piece")
            .refers("first_border", YarnTable.YARNS, "code")
            .refers("second_border", YarnTable.YARNS, "code");
    double sideCm = blanket.measures().sideCm();
    Sequences sequences = arrangement.sequences();
    SeamKinds kinds = SeamKinds.of(blanket.layout());
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int first = seams.first()[seam];
      int second = seams.second()[seam];
      int firstYarn = sequences.border(first);
      int secondYarn = sequences.border(second);
      table.row(
          blanket.place(first).name(),
          blanket.place(second).name(),
          blanket.yarn(firstYarn).code(),
          blanket.yarn(secondYarn).code(),
          rounded(blanket.yarns().difference(firstYarn, secondYarn), DIFFERENCE_DECIMALS),
          rounded(Scorer.contrast(blanket, true, firstYarn, secondYarn), DIFFERENCE_DECIMALS),
          rounded(sideCm, CM_DECIMALS),
          kinds.of(first, second));
    }
    return table;
  }
}
