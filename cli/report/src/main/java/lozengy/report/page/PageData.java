package lozengy.report.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.making.MakeList;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.model.making.WorkTime;
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
  static String json(Arrangement arrangement, Page.Home home, Map<WorkOrder, WorkSteps> steps) {
    // The only place for < is within a string, where this means the same.
    return Json.compact(new PageData(arrangement).object(home, steps)).replace("<", "\\u003c");
  }

  /** The weakest spots that the page tells of. */
  static List<WeakSpot> weakSpots(Arrangement arrangement) {
    return WeakSpots.of(arrangement.blanket(), arrangement.sequences(), WEAK_SPOTS);
  }

  private Map<String, Object> object(Page.Home home, Map<WorkOrder, WorkSteps> steps) {
    Brief brief = blanket.brief();
    return Json.object(
        "file", PlainText.oneLine(home.file()),
        "beside", home.beside().map(PlainText::oneLine),
        "title", PlainText.oneLine(brief.title()),
        "plan", identity(),
        "yarns", brief.yarns().stream().map(PageData::yarn).toList(),
        "kinds", Arrays.stream(PieceKind.values()).map(BlanketWords::noun).toList(),
        "states", Arrays.stream(PieceState.values()).map(PieceState::word).toList(),
        "needs", needs(),
        "minutes", minutes(),
        "seamMinutes", seamMinutes(),
        "edgingMinutes",
            WorkTime.of(blanket, sequences).edgingMinutes().map(BigDecimal::doubleValue),
        "joining", brief.joiningInOneYarn().map(use -> blanket.yarnIndex(use.yarn())),
        "edging", edgingYarn(),
        "pieces", pieces(),
        "earlier", arrangement.earlier().map(PageData::all),
        "seams", seams(),
        "touches", pairs(blanket.layout().touches()),
        "weak", weakSpots(arrangement).stream().map(PageData::weakSpot).toList(),
        "steps", steps(steps));
  }

  /**
   * What a plan is known by: its pieces and their yarns, however far it has come. Ticks are kept
   * under it, so that they outlast a page made anew and are never taken for those of another plan.
   */
  private String identity() {
    StringBuilder plan = new StringBuilder();
    for (Place place : blanket.layout().places()) {
      plan.append(place.name());
      for (int yarn : sequences.of(place.index())) {
        plan.append(' ').append(yarn < 0 ? "" : blanket.yarn(yarn).code());
      }
      plan.append('\n');
    }
    return Page.sha256(plan.toString());
  }

  /** By kind and round, minutes; nothing where the brief does not tell. */
  private List<Object> minutes() {
    return byRound(
        (kind, round) ->
            WorkTime.minutes(blanket, kind, round).<Object>map(BigDecimal::doubleValue).orElse(""));
  }

  /** The yarn of the edging; empty where it has none, or several. */
  private Optional<Integer> edgingYarn() {
    List<YarnUse> edging = blanket.brief().edging();
    return edging.size() == 1
        ? Optional.of(blanket.yarnIndex(edging.get(0).yarn()))
        : Optional.empty();
  }

  /** Minutes that joining one seam takes; empty where the brief does not tell. */
  private Optional<Double> seamMinutes() {
    BigDecimal metres = BigDecimal.valueOf(blanket.measures().sideCm()).movePointLeft(2);
    return blanket
        .brief()
        .joining()
        .flatMap(use -> use.minutes(metres))
        .map(BigDecimal::doubleValue);
  }

  private static Map<String, Object> steps(Map<WorkOrder, WorkSteps> steps) {
    Map<String, Object> byOrder = new LinkedHashMap<>();
    steps.forEach(
        (order, each) ->
            byOrder.put(
                order.word(),
                Json.object(
                    "count",
                    each.count(),
                    "left",
                    each.left().stream().map(PageData::step).toList())));
    return byOrder;
  }

  /**
   * Number, what it is, and of work the pieces of each round in turn, or the one piece of which all
   * is worked that is left; of a join its strip, mm and pieces, of the edging its mm.
   */
  private static List<Object> step(WorkStep step) {
    if (step instanceof WorkStep.Work work && work.strip().isPresent()) {
      return List.of(step.number(), 0, work.tasks().get(0).piece());
    }
    if (step instanceof WorkStep.Work work) {
      List<List<Integer>> rounds = new ArrayList<>();
      for (MakeList.Task task : work.tasks()) {
        List<Integer> last = rounds.isEmpty() ? null : rounds.get(rounds.size() - 1);
        if (last == null || last.get(0) != task.round()) {
          last = new ArrayList<>(List.of(task.round()));
          rounds.add(last);
        }
        last.add(task.piece());
      }
      return List.of(step.number(), 0, rounds);
    }
    return step instanceof WorkStep.Join join
        ? List.of(step.number(), 1, join.strip(), join.millimetres(), join.pieces())
        : List.of(step.number(), 2, ((WorkStep.Edge) step).millimetres());
  }

  private static List<Object> yarn(Yarn yarn) {
    return List.of(PlainText.oneLine(yarn.code()), PlainText.oneLine(yarn.name()));
  }

  /** By kind and round, millimetres: one for all yarns, or a list by yarn where they differ. */
  private List<Object> needs() {
    return byRound(
        (kind, round) -> {
          List<Long> byYarn =
              IntStream.range(0, blanket.yarnCount())
                  .mapToObj(yarn -> blanket.motifs().needMillimetres(kind, round, yarn))
                  .toList();
          return byYarn.stream().distinct().count() == 1 ? byYarn.get(0) : byYarn;
        });
  }

  private List<Object> byRound(BiFunction<PieceKind, Integer, Object> each) {
    List<Object> all = new ArrayList<>();
    for (PieceKind kind : PieceKind.values()) {
      int rounds = blanket.motif(kind) == null ? 0 : blanket.motif(kind).rounds().size();
      all.add(IntStream.range(0, rounds).mapToObj(round -> each.apply(kind, round)).toList());
    }
    return all;
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
      double difference =
          blanket.yarns().difference(sequences.border(first), sequences.border(second));
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
