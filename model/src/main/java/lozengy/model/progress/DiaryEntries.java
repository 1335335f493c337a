package lozengy.model.progress;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.arrangement.Diary;
import lozengy.model.arrangement.Diary.YarnEvent.What;
import lozengy.model.arrangement.Reversal;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.layout.GroupedNames;
import lozengy.model.making.WorkTime;

/** Writes down in a diary what a mark has come to. */
final class DiaryEntries {

  private DiaryEntries() {}

  static Diary.Entry of(
      Blanket before, Sequences planned, Marked marked, Mark mark, Reversal reversal) {
    Blanket now = marked.blanket();
    Map<Integer, List<Integer>> parts = new TreeMap<>();
    for (int piece : marked.states()) {
      if (now.partWorked(piece)) {
        parts.computeIfAbsent(now.roundsWorked(piece), r -> new ArrayList<>()).add(piece);
      }
    }
    List<Integer> givenUp =
        marked.states().stream().filter(piece -> now.roundsWorked(piece) == 0).toList();
    PilePlacement laidBefore = PilePlacement.of(before, planned);
    PilePlacement laid = PilePlacement.of(now, marked.sequences());
    return new Diary.Entry(
        mark.on().map(Mark.Day::day),
        names(now, givenUp),
        parts.entrySet().stream()
            .map(part -> new PartWorked(part.getKey(), names(now, part.getValue())))
            .toList(),
        names(now, in(now, marked.states(), PieceState.MADE)),
        names(now, in(now, marked.states(), PieceState.JOINED)),
        names(now, marked.yarns()),
        events(mark, marked),
        finished(now, laid) - finished(before, laidBefore),
        rounds(now, laid) - rounds(before, laidBefore),
        minutes(WorkTime.of(before, planned), WorkTime.of(now, marked.sequences())),
        Optional.of(now.brief().stitching().handPercent()).filter(hand -> marked.handChanged()),
        Optional.of(reversal));
  }

  /** What was worked between, to a tenth of a minute. */
  private static Optional<BigDecimal> minutes(WorkTime before, WorkTime now) {
    return before
        .allMinutes()
        .flatMap(were -> now.allMinutes().map(were::subtract))
        .map(minutes -> minutes.setScale(1, RoundingMode.HALF_UP))
        .filter(minutes -> minutes.signum() != 0);
  }

  /** What came about with yarns. */
  static List<Diary.YarnEvent> events(Mark mark, Marked marked) {
    Brief brief = marked.blanket().brief();
    Stream<Diary.YarnEvent> yarns = mark.yarns().stream().map(wish -> event(wish, brief));
    Stream<Diary.YarnEvent> counts =
        mark.counts().stream()
            .map(
                count ->
                    new Diary.YarnEvent(
                        What.COUNTED,
                        count.code(),
                        Optional.of(count.left()),
                        Optional.ofNullable(marked.weighed().get(count.code()))));
    return Stream.concat(yarns, counts).toList();
  }

  private static Diary.YarnEvent event(Mark.OfYarn wish, Brief brief) {
    What what =
        wish instanceof Mark.Bought
            ? What.BOUGHT
            : wish instanceof Mark.Gone
                ? What.GONE
                : wish instanceof Mark.Uncounted ? What.UNCOUNTED : What.ADDED;
    Optional<YarnAmount> amount =
        wish instanceof Mark.Bought bought
            ? Stocks.amount(
                bought, brief.yarns().get(Selections.yarn(wish.place(), brief, wish.code())))
            : Optional.empty();
    return new Diary.YarnEvent(what, wish.code(), amount);
  }

  private static List<Integer> in(Blanket blanket, List<Integer> pieces, PieceState state) {
    return pieces.stream().filter(piece -> blanket.state(piece) == state).toList();
  }

  private static List<String> names(Blanket blanket, List<Integer> pieces) {
    return GroupedNames.of(blanket.layout(), pieces.stream().map(blanket::place).toList());
  }

  private static int finished(Blanket blanket, PilePlacement laid) {
    return (int) IntStream.range(0, blanket.pieceCount()).filter(laid::worked).count();
  }

  private static int rounds(Blanket blanket, PilePlacement laid) {
    return IntStream.range(0, blanket.pieceCount()).map(laid::roundsWorked).sum();
  }
}
