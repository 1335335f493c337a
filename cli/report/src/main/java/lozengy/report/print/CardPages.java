package lozengy.report.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.chart.Chart;
import lozengy.report.chart.Drawing;
import lozengy.report.chart.PieceDrawing;

/** Writes a card for every piece that is not joined yet, to pin to its pile. */
final class CardPages {

  private static final int ACROSS = 3;

  /** With more rounds than this a narrow card could be longer than a page, names in two lines. */
  private static final int MOST_ROUNDS_IN_A_COLUMN = 20;

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
    // Cards of many rounds take the whole width, and write the rounds side by side.
    int rounds = cards.stream().mapToInt(piece -> piece.yarns().size()).max().getAsInt();
    int across = rounds > MOST_ROUNDS_IN_A_COLUMN ? 1 : ACROSS;
    sheet.part("Piece cards");
    html.open("table", "class", "cards");
    html.open("tbody");
    for (int i = 0; i < cards.size(); i += across) {
      html.open("tr");
      for (int j = i; j < i + across; j++) {
        if (j < cards.size()) {
          card(cards.get(j), ACROSS / across);
        } else {
          html.text("td", "", "style", "border:0");
        }
      }
      html.close();
    }
    html.close();
    html.close();
  }

  private void card(PieceDrawing piece, int columns) {
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
    if (made || piece.begun()) {
      html.text("p", piece.stateWords());
    }
    if (columns == 1) {
      rounds(piece, 0, piece.yarns().size());
    } else {
      inColumns(piece, columns);
    }
    html.close();
    html.close();
  }

  private void inColumns(PieceDrawing piece, int columns) {
    int rounds = piece.yarns().size();
    int each = (rounds + columns - 1) / columns;
    html.open("table", "class", "columns");
    html.open("tr");
    for (int column = 0; column < columns; column++) {
      html.open("td");
      rounds(piece, Math.min(rounds, column * each), Math.min(rounds, (column + 1) * each));
      html.close();
    }
    html.close();
    html.close();
  }

  private void rounds(PieceDrawing piece, int from, int to) {
    Place place = piece.place();
    for (int round = from; round < to; round++) {
      html.open("p");
      if (round >= piece.roundsWorked()) {
        sheet.tick();
      } else if (piece.begun()) {
        sheet.ticked();
      }
      html.words(" " + (round + 1) + " ");
      int yarn = piece.yarns().get(round);
      sheet.yarn(blanket, yarn);
      long need = blanket.needMillimetres(place.kind(), round, yarn);
      html.words(" ");
      html.text("span", Figures.metres(need) + " m", "class", "quiet");
      html.close();
    }
  }
}
