package lozengy.report.print;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.WorkStepWords;
import lozengy.report.chart.Chart;
import lozengy.report.chart.Drawing;
import lozengy.report.chart.PieceDrawing;
import lozengy.report.wording.Phrases;

/**
 * Writes a card for every piece that is not joined yet, strip by strip, with its neighbours: to pin
 * to its pile or, where the order goes by strips, to work by, with a card for each join.
 */
final class CardPages {

  private static final int ACROSS = 3;

  /** With more rounds than this a narrow card could be longer than a page, names in two lines. */
  private static final int MOST_ROUNDS_IN_A_COLUMN = 20;

  private static final double PICTURE_MM = 16;

  /** Longer names, in font sizes, would not fit beside the picture. */
  private static final double LONGEST_NAME = 8.4;

  private final Sheet sheet;
  private final Markup html;
  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Drawing drawing;
  private final WorkStepWords words;
  private final Map<Long, Place> byPosition = new HashMap<>();

  /** How many columns of the table a card takes, and how many rounds stand side by side in it. */
  private int columns;

  CardPages(Sheet sheet, Arrangement arrangement, Drawing drawing) {
    this.sheet = sheet;
    this.html = sheet.html();
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.drawing = drawing;
    this.words = new WorkStepWords(blanket, arrangement.sequences());
    blanket.layout().places().forEach(place -> byPosition.put(at(place.x(), place.y()), place));
  }

  private static long at(int x, int y) {
    return ((long) x << Integer.SIZE) + y;
  }

  /** Writes the cards; those of joins too where the steps go by strips. */
  void write(WorkSteps steps) {
    boolean byStrip = steps.order() == WorkOrder.STRIP;
    List<Runnable> cards = cards(byStrip ? steps.left() : List.of());
    if (cards.isEmpty()) {
      return;
    }
    String title = byStrip ? "Strip by strip" : "Piece cards";
    if (columns == 1) {
      sheet.part(title);
    } else {
      sheet.page(title);
    }
    html.text(
        "p",
        (byStrip
                ? "Finish the pieces of a strip, join them, and go on with the next. "
                : "Strip by strip, to pin to the pieces. ")
            + "Around each piece stand its neighbours. "
            + lengths(),
        "class",
        "quiet");
    html.open("table", "class", "cards");
    html.open("tbody");
    int across = ACROSS / columns;
    for (int i = 0; i < cards.size(); i += across) {
      html.open("tr");
      for (int j = i; j < i + across; j++) {
        html.open("td", "class", j < cards.size() ? "card" : "none");
        if (j < cards.size()) {
          cards.get(j).run();
        }
        html.close();
      }
      html.close();
    }
    html.close();
    html.close();
  }

  private List<Runnable> cards(List<WorkStep> steps) {
    Map<Integer, WorkStep> joins = new HashMap<>();
    for (WorkStep step : steps) {
      if (step instanceof WorkStep.Join join) {
        joins.put(join.strip(), join);
      }
    }
    List<Runnable> cards = new ArrayList<>();
    int rounds = 0;
    for (Strip strip : Strips.of(blanket.layout())) {
      for (int i = 0; i < strip.pieces().size(); i++) {
        PieceDrawing piece = drawing.pieces().get(strip.pieces().get(i).index());
        String where = "strip " + strip.number() + ", place " + (i + 1);
        if (piece.state() != PieceState.JOINED) {
          cards.add(() -> card(piece, where));
          rounds = Math.max(rounds, piece.yarns().size());
        }
      }
      if (joins.containsKey(strip.number())) {
        cards.add(() -> step(joins.get(strip.number())));
      }
    }
    steps.stream()
        .filter(WorkStep.Edge.class::isInstance)
        .forEach(step -> cards.add(() -> step(step)));
    // Cards of many rounds take the whole width, and write the rounds side by side.
    columns = rounds > MOST_ROUNDS_IN_A_COLUMN ? ACROSS : 1;
    return cards;
  }

  /** What each round takes, by kind; yarns of other put-ups may take other lengths. */
  private String lengths() {
    List<String> kinds = new ArrayList<>();
    for (PieceKind kind : PieceKind.values()) {
      int rounds = blanket.brief().motifs().containsKey(kind) ? rounds(kind) : 0;
      List<String> each = new ArrayList<>();
      for (int round = 0; round < rounds; round++) {
        long least = Long.MAX_VALUE;
        long most = 0;
        for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
          long need = blanket.motifs().needMillimetres(kind, round, yarn);
          least = Math.min(least, need);
          most = Math.max(most, need);
        }
        String from = Figures.metres(least);
        String to = Figures.metres(most);
        each.add(from.equals(to) ? from : from + " to " + to);
      }
      if (!each.isEmpty()) {
        kinds.add("a " + BlanketWords.noun(kind) + " " + String.join(", ", each));
      }
    }
    return "Metres from the centre out: " + String.join("; ", kinds) + ".";
  }

  private int rounds(PieceKind kind) {
    boolean laid =
        blanket.layout().places().stream().map(Place::kind).anyMatch(each -> each == kind);
    return laid ? blanket.motif(kind).rounds().size() : 0;
  }

  private void step(WorkStep step) {
    html.open("p");
    sheet.tick();
    html.text("b", Phrases.capital(words.title(step)));
    html.close();
    words.lines(step).forEach(line -> html.text("p", line, "class", "quiet"));
  }

  private void card(PieceDrawing piece, String where) {
    Place place = piece.place();
    among(piece);
    html.open("p");
    html.text("b", place.name(), "class", "name");
    html.close();
    String noun = place.kind() == PieceKind.SQUARE ? "" : ", " + BlanketWords.noun(place.kind());
    html.text("p", where + noun, "class", "quiet");
    boolean made = piece.state() == PieceState.MADE;
    if (made || piece.begun()) {
      html.open("p");
      html.text("b", piece.stateWords());
      html.close();
    }
    html.open("div", "class", columns == 1 ? "rounds" : "rounds below");
    int rounds = piece.yarns().size();
    int each = (rounds + columns - 1) / columns;
    for (int column = 0; column < columns; column++) {
      html.open("div", "class", columns == 1 ? "whole" : "column");
      rounds(piece, Math.min(rounds, column * each), Math.min(rounds, (column + 1) * each));
      html.close();
    }
    html.close();
  }

  /** The piece with its neighbours' names where they lie. */
  private void among(PieceDrawing piece) {
    Place place = piece.place();
    html.open("div", "class", "among");
    if (blanket.layout().size().setting() == Setting.ON_POINT) {
      pair(neighbour(place, -1, -1), neighbour(place, 1, -1));
      picture(piece);
      pair(neighbour(place, -1, 1), neighbour(place, 1, 1));
    } else {
      html.text("div", neighbour(place, 0, -2), "class", "middle");
      html.open("div", "class", "beside");
      html.text("span", neighbour(place, -2, 0), "class", "side");
      picture(piece);
      html.text("span", neighbour(place, 2, 0), "class", "side");
      html.close();
      html.text("div", neighbour(place, 0, 2), "class", "middle");
    }
    html.close();
  }

  private void picture(PieceDrawing piece) {
    sheet.picture(
        Chart.piece(arrangement, piece, PICTURE_MM), PICTURE_MM, PICTURE_MM, piece.place().name());
  }

  private void pair(String left, String right) {
    html.open("div", "class", "pair");
    html.text("span", left, "class", "left");
    html.text("span", right, "class", "right");
    html.close();
  }

  /** The name of what lies there in lattice units; empty beyond the outline. */
  private String neighbour(Place place, int right, int down) {
    Place there = byPosition.get(at(place.x() + right, place.y() + down));
    return there == null ? "" : there.name();
  }

  private void rounds(PieceDrawing piece, int from, int to) {
    for (int round = from; round < to; round++) {
      html.open("p");
      if (round < piece.roundsWorked()) {
        sheet.ticked();
      } else {
        sheet.tick();
      }
      html.words((round + 1) + " ");
      sheet.name(blanket, piece.yarns().get(round), LONGEST_NAME);
      html.close();
    }
  }
}
