package lozengy.cli.report.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lozengy.cli.report.BlanketWords;
import lozengy.cli.report.Chart;
import lozengy.cli.report.Drawing;
import lozengy.cli.report.Figures;
import lozengy.cli.report.Markup;
import lozengy.cli.report.PieceDrawing;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;

/** Writes a card for every piece that is not joined yet, to pin to its pile. */
final class CardPages {

  private static final int ACROSS = 3;
  private static final double PICTURE_MM = 22;

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Drawing drawing;
  private final Map<Place, String> strips = new HashMap<>();

  CardPages(Sheet sheet, Arrangement arrangement, Drawing drawing) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.drawing = drawing;
    for (Strip strip : Strips.of(blanket.layout())) {
      for (int i = 0; i < strip.pieces().size(); i++) {
        strips.put(strip.pieces().get(i), "strip " + strip.number() + ", place " + (i + 1));
      }
    }
  }

  void write() {
    List<PieceDrawing> cards = new ArrayList<>();
    for (PieceDrawing piece : drawing.pieces()) {
      if (piece.state() != PieceState.JOINED) {
        cards.add(piece);
      }
    }
    if (cards.isEmpty()) {
      return;
    }
    sheet.part("Piece cards");
    html.open("table", "class", "cards");
    html.open("tbody");
    for (int i = 0; i < cards.size(); i += ACROSS) {
      html.open("tr");
      for (int j = i; j < i + ACROSS; j++) {
        if (j < cards.size()) {
          card(cards.get(j));
        } else {
          html.text("td", "", "style", "border:0");
        }
      }
      html.close();
    }
    html.close();
    html.close();
  }

  private void card(PieceDrawing piece) {
    Place place = piece.place();
    html.open("td");
    sheet.picture(Chart.piece(arrangement, piece, PICTURE_MM), PICTURE_MM, PICTURE_MM);
    html.open("p");
    html.text("b", place.name(), "class", "name");
    html.close();
    html.text("p", BlanketWords.noun(place.kind()), "class", "quiet");
    html.text("p", strips.get(place), "class", "quiet");
    html.open("div", "class", "rounds", "style", "clear:both");
    boolean made = piece.state() == PieceState.MADE;
    if (made) {
      html.text("p", "made");
    }
    for (int round = 0; round < piece.yarns().size(); round++) {
      html.open("p");
      if (!made) {
        sheet.tick();
      }
      html.words(" " + (round + 1) + " ");
      int yarn = piece.yarns().get(round);
      sheet.yarn(blanket, yarn);
      long need = blanket.needMillimetres(place.kind(), round, yarn);
      html.words(" ");
      html.text("span", Figures.metres(need) + " m", "class", "quiet");
      html.close();
    }
    html.close();
    html.close();
  }
}
