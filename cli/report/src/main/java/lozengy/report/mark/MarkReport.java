package lozengy.report.mark;

import static lozengy.report.Decimals.metres;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.check.Check;
import lozengy.model.reading.Doubt;
import lozengy.model.reading.Doubts;
import lozengy.model.yarn.YarnWork;
import lozengy.report.Figures;
import lozengy.report.Json;
import lozengy.report.PlainText;
import lozengy.report.YarnLine;
import lozengy.report.check.FaultLine;
import lozengy.report.need.HandWords;
import lozengy.report.wording.DoubtWords;

/**
 * What a mark has changed, for a terminal and for programs.
 *
 * @param before the arrangement before it
 * @param now the arrangement now
 * @param faults what is wrong with it now
 * @param overlapping pieces that were named more than once and not for the same
 */
public record MarkReport(
    Arrangement before, Arrangement now, List<FaultLine> faults, List<Integer> overlapping) {

  /** So many faults are told one by one. */
  private static final int MOST_FAULTS = 4;

  /**
   * Copies the lists.
   *
   * @param before the arrangement before it
   * @param now the arrangement now
   * @param faults what is wrong with it now
   * @param overlapping pieces that were named more than once and not for the same
   */
  public MarkReport {
    faults = List.copyOf(faults);
    overlapping = List.copyOf(overlapping);
  }

  /**
   * Compares.
   *
   * @param before the arrangement before a mark
   * @param now the arrangement now; the same one where nothing is new
   * @param overlapping pieces that were named more than once and not for the same
   * @return what has changed
   */
  public static MarkReport of(Arrangement before, Arrangement now, List<Integer> overlapping) {
    List<FaultLine> faults =
        Check.faults(now.blanket(), now.sequences()).stream()
            .map(fault -> FaultLine.of(now.blanket(), fault))
            .toList();
    return new MarkReport(before, now, faults, overlapping);
  }

  /** {@return whether all was as marked before} */
  public boolean nothingNew() {
    return before == now;
  }

  /**
   * {@return the report for a terminal}
   *
   * @param undone whether a mark was taken back
   */
  public List<String> lines(boolean undone) {
    if (nothingNew()) {
      return List.of("Nothing new: all of this is marked already.");
    }
    List<String> lines = new ArrayList<>();
    if (undone) {
      lines.add("The last mark is taken back.");
    }
    for (PieceState state : PieceState.values()) {
      List<Integer> pieces =
          turned(state).stream().filter(piece -> !now.blanket().partWorked(piece)).toList();
      if (!pieces.isEmpty()) {
        lines.add("Now " + state.word() + ": " + Words.pieces(blanket(), pieces));
      }
    }
    begun()
        .forEach(
            (rounds, pieces) ->
                lines.add(
                    "Now worked to round " + rounds + ": " + Words.pieces(blanket(), pieces)));
    if (!overlapping.isEmpty()) {
      lines.add(
          "Named more than once, the furthest counts (joined over made, made over begun, begun over"
              + " planned): "
              + Words.pieces(blanket(), overlapping));
    }
    if (!offPile().isEmpty()) {
      lines.add("No longer on the pile: " + Words.pieces(blanket(), offPile()));
    }
    reworked().forEach(piece -> lines.add(reworked(piece)));
    recounted().forEach(yarn -> lines.add(recounted(yarn)));
    doubts().forEach(doubt -> lines.add(DoubtWords.of(blanket(), doubt)));
    if (!recounted().isEmpty() || handChanged()) {
      lines.addAll(HandWords.counted(blanket(), now.sequences(), now.diary()));
    }
    lines.add(states());
    if (!faults.isEmpty()) {
      lines.add(Figures.count(faults.size(), "fault") + ":");
      faults.stream().limit(MOST_FAULTS).forEach(fault -> lines.add("  " + fault.line()));
      if (faults.size() > MOST_FAULTS) {
        lines.add("  and " + (faults.size() - MOST_FAULTS) + " more; 'lozengy check' tells all");
      }
      lines.add("'lozengy solve' plans the rest again around what is worked.");
    }
    return lines.stream().map(PlainText::oneLine).toList();
  }

  /** What is doubtful of the counts that were made. */
  private List<Doubt> doubts() {
    return Doubts.of(blanket()).stream()
        .filter(doubt -> doubt instanceof Doubt.Count count && recounted().contains(count.yarn()))
        .toList();
  }

  /**
   * {@return the report for programs}
   *
   * @param written where the arrangement was written, if it was
   */
  public Map<String, Object> json(Optional<String> written) {
    List<Object> turned = new ArrayList<>();
    for (PieceState state : PieceState.values()) {
      for (int piece : turned(state)) {
        turned.add(
            Json.object(
                "at", Words.piece(blanket(), piece),
                "from", laid(before).state(piece).word(),
                "to", state.word()));
      }
    }
    List<Object> rounds = new ArrayList<>();
    begun()
        .forEach(
            (to, pieces) ->
                pieces.forEach(
                    piece ->
                        rounds.add(
                            Json.object(
                                "at", Words.piece(blanket(), piece),
                                "from", laid(before).roundsWorked(piece),
                                "to", to))));
    List<Object> worked = new ArrayList<>();
    for (int piece : reworked()) {
      worked.add(
          Json.object(
              "at", Words.piece(blanket(), piece),
              "from", codes(before.sequences(), piece),
              "to", codes(now.sequences(), piece)));
    }
    List<Object> counted = new ArrayList<>();
    for (int yarn : recounted()) {
      counted.add(
          Json.object(
              "code", blanket().yarn(yarn).code(),
              "available_m", metres(blanket().yarn(yarn).stockMillimetres()),
              "used_m", metres(blanket().usedMillimetres(now.sequences())[yarn])));
    }
    Map<String, Object> counts =
        Json.object(
            "planned", count(PieceState.PLANNED),
            "part_worked", partWorked(),
            "made", count(PieceState.MADE),
            "joined", count(PieceState.JOINED));
    return Json.object(
        "outcome",
        nothingNew() ? "nothing-new" : "marked",
        "arrangement",
        written,
        "on",
        now.diary().lastDay().map(Object::toString),
        "states",
        turned,
        "rounds_worked",
        rounds,
        "overlapping",
        overlapping.stream().map(piece -> Words.piece(blanket(), piece)).toList(),
        "off_pile",
        offPile().stream().map(piece -> Words.piece(blanket(), piece)).toList(),
        "worked",
        worked,
        "counted",
        counted,
        "hand_percent",
        handChanged() ? Optional.of(blanket().brief().stitching().handPercent()) : Optional.empty(),
        "counted_hand",
        recounted().isEmpty()
            ? Optional.empty()
            : HandWords.countedData(blanket(), now.sequences(), now.diary()),
        "doubts",
        doubts().stream().map(doubt -> DoubtWords.data(blanket(), doubt)).toList(),
        "pieces",
        counts,
        "faults",
        faults.stream().map(FaultLine::json).toList());
  }

  private boolean handChanged() {
    return !before
        .blanket()
        .brief()
        .stitching()
        .handPercent()
        .equals(blanket().brief().stitching().handPercent());
  }

  private Blanket blanket() {
    return now.blanket();
  }

  private static PilePlacement laid(Arrangement arrangement) {
    return PilePlacement.of(arrangement.blanket(), arrangement.sequences());
  }

  /** Places at which a piece of the pile lay, and which hold it for good now or have lost it. */
  private List<Integer> offPile() {
    PilePlacement earlier = laid(before);
    PilePlacement after = laid(now);
    return pieces().filter(p -> earlier.holds(p) && !after.holds(p)).boxed().toList();
  }

  private List<Integer> turned(PieceState state) {
    PilePlacement earlier = laid(before);
    PilePlacement after = laid(now);
    return pieces()
        .filter(
            piece ->
                after.state(piece) == state
                    && (earlier.state(piece) != state
                        || after.roundsWorked(piece) == 0 && earlier.roundsWorked(piece) > 0))
        .boxed()
        .toList();
  }

  /** Pieces that are begun and were not so far before, or further, by their worked rounds. */
  private Map<Integer, List<Integer>> begun() {
    PilePlacement earlier = laid(before);
    return pieces()
        .filter(now.blanket()::partWorked)
        .filter(piece -> now.blanket().roundsWorked(piece) != earlier.roundsWorked(piece))
        .boxed()
        .collect(
            Collectors.groupingBy(now.blanket()::roundsWorked, TreeMap::new, Collectors.toList()));
  }

  private long partWorked() {
    return pieces().filter(now.blanket()::partWorked).count();
  }

  private List<Integer> reworked() {
    return pieces()
        .filter(piece -> !Arrays.equals(before.sequences().of(piece), now.sequences().of(piece)))
        .boxed()
        .toList();
  }

  private List<Integer> recounted() {
    List<Yarn> old = before.blanket().brief().yarns();
    return IntStream.range(0, blanket().yarnCount())
        .filter(yarn -> yarn >= old.size() || !blanket().yarn(yarn).equals(old.get(yarn)))
        .boxed()
        .toList();
  }

  private IntStream pieces() {
    return IntStream.range(0, blanket().pieceCount());
  }

  private String reworked(int piece) {
    return Words.piece(blanket(), piece)
        + ": "
        + String.join(" ", codes(before.sequences(), piece))
        + " -> "
        + String.join(" ", codes(now.sequences(), piece));
  }

  private String recounted(int yarn) {
    YarnWork work = YarnWork.of(blanket(), now.sequences()).get(yarn);
    boolean added = yarn >= before.blanket().yarnCount();
    boolean uncounted =
        !added
            && !before.blanket().yarn(yarn).gone()
            && blanket().yarn(yarn).counted().isEmpty()
            && before.blanket().yarn(yarn).counted().isPresent()
            && !blanket().yarn(yarn).gone();
    return Words.yarn(blanket(), yarn)
        + ": "
        + (added ? "new, " : uncounted ? "as before the count, " : "")
        + (blanket().yarn(yarn).gone()
            ? YarnLine.GONE
            : Words.metres(work.atHandMillimetres()) + " at hand")
        + ", "
        + Words.metres(work.toWorkMillimetres())
        + " still to be worked";
  }

  private String states() {
    return String.format(
        Locale.ROOT,
        "%d made, %d joined, %d planned%s. Score %.2f.",
        count(PieceState.MADE),
        count(PieceState.JOINED),
        count(PieceState.PLANNED),
        partWorked() == 0 ? "" : ", " + partWorked() + " of them begun",
        now.score().total());
  }

  private long count(PieceState state) {
    PilePlacement after = laid(now);
    return pieces().filter(piece -> after.state(piece) == state).count();
  }

  private List<String> codes(Sequences sequences, int piece) {
    return IntStream.of(sequences.of(piece))
        .mapToObj(yarn -> blanket().yarn(yarn).code())
        .collect(Collectors.toList());
  }
}
