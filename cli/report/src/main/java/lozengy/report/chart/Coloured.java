package lozengy.report.chart;

import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Srgb;

/** Marks a drawing that stands alone: every element bears its colour. */
final class Coloured implements PieceStyle {

  /** Fill of a round without a yarn. */
  private static final String OPEN_FILL = "#ffffff";

  private final Blanket blanket;
  private final String prefix;

  Coloured(Blanket blanket) {
    this(blanket, "piece-");
  }

  /** With another beginning of the pieces' ids, for several blankets in one document. */
  Coloured(Blanket blanket, String prefix) {
    this.blanket = blanket;
    this.prefix = prefix;
  }

  @Override
  public Object[] piece(PieceDrawing piece) {
    return new Object[] {"id", prefix + piece.place().name()};
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
  public Object[] code(int yarn, boolean veiled) {
    Srgb colour = blanket.yarn(yarn).colour();
    return veiled
        ? new Object[] {"fill", Ink.on(Ink.veiled(colour)), "stroke", "none"}
        : new Object[] {"fill", Ink.on(colour), "stroke", colour.hex()};
  }
}
