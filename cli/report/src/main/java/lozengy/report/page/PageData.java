package lozengy.report.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.score.WeakSpot;
import lozengy.model.score.WeakSpots;
import lozengy.report.BlanketWords;
import lozengy.report.Json;
import lozengy.report.PlainText;

/** What the page's script needs to know, as compact JSON: lists with fixed places for values. */
final class PageData {

  private static final int WEAK_SPOTS = 12;

  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Sequences sequences;

  private PageData(Arrangement arrangement) {
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.sequences = arrangement.sequences();
  }

  /** The data as JSON that may stand within a script element. */
  static String json(Arrangement arrangement, String file) {
    // The only place for < is within a string, where this means the same.
    return Json.compact(new PageData(arrangement).object(file)).replace("<", "\\u003c");
  }

  /** The weakest spots that the page tells of. */
  static List<WeakSpot> weakSpots(Arrangement arrangement) {
    return WeakSpots.of(arrangement.blanket(), arrangement.sequences(), WEAK_SPOTS);
  }

  private Map<String, Object> object(String file) {
    return Json.object(
        "file", PlainText.oneLine(file),
        "yarns", blanket.brief().yarns().stream().map(PageData::yarn).toList(),
        "kinds", Arrays.stream(PieceKind.values()).map(BlanketWords::noun).toList(),
        "states", Arrays.stream(PieceState.values()).map(PieceState::word).toList(),
        "needs", needs(),
        "pieces", pieces(),
        "earlier", arrangement.earlier().map(PageData::all),
        "seams", seams(),
        "touches", pairs(blanket.layout().touches()),
        "weak", weakSpots(arrangement).stream().map(PageData::weakSpot).toList());
  }

  private static List<Object> yarn(Yarn yarn) {
    return List.of(PlainText.oneLine(yarn.code()), PlainText.oneLine(yarn.name()));
  }

  /** By kind and round, millimetres: one for all yarns, or a list by yarn where they differ. */
  private List<Object> needs() {
    List<Object> needs = new ArrayList<>();
    for (PieceKind kind : PieceKind.values()) {
      int rounds = blanket.motif(kind) == null ? 0 : blanket.motif(kind).rounds().size();
      List<Object> byRound = new ArrayList<>();
      for (int round = 0; round < rounds; round++) {
        int at = round;
        List<Long> byYarn =
            IntStream.range(0, blanket.yarnCount())
                .mapToObj(yarn -> blanket.needMillimetres(kind, at, yarn))
                .toList();
        byRound.add(byYarn.stream().distinct().count() == 1 ? byYarn.get(0) : byYarn);
      }
      needs.add(byRound);
    }
    return needs;
  }

  /**
   * Name, kind, state, strip, place in the strip, x, y, yarns, which rounds the brief locks, and
   * how many are worked.
   */
  private List<Object> pieces() {
    int[] strip = new int[blanket.pieceCount()];
    int[] order = new int[blanket.pieceCount()];
    for (Strip each : Strips.of(blanket.layout())) {
      for (int i = 0; i < each.pieces().size(); i++) {
        strip[each.pieces().get(i).index()] = each.number();
        order[each.pieces().get(i).index()] = i + 1;
      }
    }
    List<Object> pieces = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (Place place : blanket.layout().places()) {
      int piece = place.index();
      pieces.add(
          List.of(
              place.name(),
              place.kind().ordinal(),
              laid.state(piece).ordinal(),
              strip[piece],
              order[piece],
              place.x(),
              place.y(),
              list(sequences.of(piece)),
              IntStream.range(0, sequences.rounds(piece))
                  .filter(round -> blanket.locked(piece, round) != Sequences.OPEN)
                  .boxed()
                  .toList(),
              laid.roundsWorked(piece)));
    }
    return pieces;
  }

  private static List<Object> all(Sequences earlier) {
    return IntStream.range(0, earlier.pieces())
        .<Object>mapToObj(piece -> list(earlier.of(piece)))
        .toList();
  }

  /** First piece, second piece and tenths of CIEDE2000 between their borders, in turn. */
  private List<Integer> seams() {
    List<Integer> seams = new ArrayList<>();
    Pairs pairs = blanket.layout().seams();
    for (int i = 0; i < pairs.size(); i++) {
      int first = pairs.first()[i];
      int second = pairs.second()[i];
      double difference = blanket.difference(sequences.border(first), sequences.border(second));
      seams.addAll(List.of(first, second, (int) Math.floor(difference * 10)));
    }
    return seams;
  }

  private static List<Integer> pairs(Pairs pairs) {
    List<Integer> list = new ArrayList<>();
    for (int i = 0; i < pairs.size(); i++) {
      list.add(pairs.first()[i]);
      list.add(pairs.second()[i]);
    }
    return list;
  }

  private static List<Integer> list(int[] numbers) {
    return Arrays.stream(numbers).boxed().toList();
  }

  private static List<Object> weakSpot(WeakSpot spot) {
    return List.of(PlainText.oneLine(spot.words()), spot.pieces());
  }
}
