package lozengy.report.chart;

import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/** Marks a drawing that stands alone: every element bears its colour. */
final class Coloured implements PieceStyle {

  /** Fill of a round without a yarn. */
  private static final String OPEN_FILL = "#ffffff";

  private final Blanket blanket;

  Coloured(Blanket blanket) {
    this.blanket = blanket;
  }

  @Override
  public Object[] piece(PieceDrawing piece) {
    return new Object[] {"id", "piece-" + piece.place().name()};
  }

  @Override
  public Optional<String> title(PieceDrawing piece) {
    String codes = piece.yarns().stream().map(this::word).collect(Collectors.joining(" "));
    String state = piece.roundsWorked() == 0 ? "" : ", " + piece.stateWords();
    return Optional.of(piece.place().name() + ": " + codes + state);
  }

  private String word(int yarn) {
    return yarn == Sequences.OPEN ? "-" : blanket.yarn(yarn).code();
  }

  @Override
  public Object[] round(int yarn) {
    return new Object[] {
      "fill", yarn == Sequences.OPEN ? OPEN_FILL : blanket.yarn(yarn).colour().hex()
    };
  }

  @Override
  public Object[] code(int yarn) {
    return new Object[] {"fill", Ink.on(blanket.yarn(yarn).colour())};
  }
}
