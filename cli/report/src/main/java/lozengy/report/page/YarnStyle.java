package lozengy.report.page;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Srgb;
import lozengy.report.chart.Ink;
import lozengy.report.chart.PieceDrawing;
import lozengy.report.chart.PieceStyle;
import lozengy.report.chart.YarnLetters;

/** Marks the drawn blanket for the page's style and script: classes for yarns, options to pick. */
final class YarnStyle implements PieceStyle {

  private final PieceWords words;
  private final Blanket blanket;

  YarnStyle(Blanket blanket, PieceWords words) {
    this.blanket = blanket;
    this.words = words;
  }

  /** The class of a yarn. */
  static String name(int yarn) {
    return "y" + yarn;
  }

  /** Rules that give what has a yarn's class its colour, its letter and an ink for that. */
  static String css(Blanket blanket) {
    StringBuilder css = new StringBuilder();
    YarnLetters letters = YarnLetters.of(blanket);
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      Srgb colour = blanket.yarn(yarn).colour();
      css.append('.').append(name(yarn)).append("{--y:").append(colour.hex());
      css.append(";--i:").append(Ink.on(colour));
      css.append(";--l:\"").append(letters.of(yarn)).append("\"}\n");
    }
    return css.toString();
  }

  @Override
  public Object[] piece(PieceDrawing piece) {
    int index = piece.place().index();
    return new Object[] {
      "id",
      "p" + index,
      "class",
      "piece",
      "role",
      "option",
      "aria-selected",
      "false",
      "tabindex",
      index == 0 ? "0" : "-1",
      "aria-label",
      words.label(piece)
    };
  }

  /** None: the card tells more, and a title would lie over it. */
  @Override
  public Optional<String> title(PieceDrawing piece) {
    return Optional.empty();
  }

  @Override
  public Object[] round(int yarn) {
    return new Object[] {"class", yarn == Sequences.OPEN ? "r" : "r " + name(yarn)};
  }

  @Override
  public Object[] code(int yarn, boolean veiled) {
    Srgb colour = blanket.yarn(yarn).colour();
    boolean dark = Ink.on(veiled ? Ink.veiled(colour) : colour).equals(Ink.DARK);
    return new Object[] {"class", (dark ? "d" : "l") + (veiled ? "" : " " + name(yarn))};
  }
}
