package lozengy.report.page;

import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.report.BlanketWords;
import lozengy.report.PlainText;
import lozengy.report.chart.PieceDrawing;

/** Says a piece in words. */
final class PieceWords {

  private final Blanket blanket;

  PieceWords(Blanket blanket) {
    this.blanket = blanket;
  }

  /** Name, kind, state and yarns: {@code r3c2, square, made: Sand, Reed}. */
  String label(PieceDrawing piece) {
    String yarns =
        piece.yarns().stream()
            .map(yarn -> blanket.yarn(yarn).name())
            .collect(Collectors.joining(", "));
    return PlainText.oneLine(
        piece.place().name()
            + ", "
            + BlanketWords.noun(piece.place().kind())
            + ", "
            + piece.stateWords()
            + ": "
            + yarns);
  }
}
