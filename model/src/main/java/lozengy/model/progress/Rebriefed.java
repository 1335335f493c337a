package lozengy.model.progress;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import lozengy.model.arrangement.WorkedPieces;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.Joining;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Stitching;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnUse;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;

/**
 * How things stand by another brief. Its wishes take the place of those before; what is worked, the
 * pile, and what has come about with yarns stay. Rounds of the plan stay where its yarns and its
 * pieces have them still, and are open elsewhere.
 */
final class Rebriefed {

  private static final String BORDERS = "the borders' yarns";

  private static final Function<Joining, String> YARN =
      joining -> joining instanceof YarnUse use ? use.yarn() : BORDERS;

  private final Change.Rebrief wish;
  private final Brief old;
  private final Blanket before;
  private final Brief asked;

  private Rebriefed(Brief old, Change.Rebrief wish) {
    this.wish = wish;
    this.old = old;
    this.before = Blanket.ofUnjudged(old);
    this.asked = wish.brief();
  }

  /**
   * Takes another brief.
   *
   * @throws InputException if what is worked cannot stay by it
   */
  static CurrentPlan of(CurrentPlan current, Change.Rebrief wish) {
    LayoutSize was = current.brief().layout();
    LayoutSize is = wish.brief().layout();
    if (was.setting() != is.setting()
        || was.sideTriangles() != is.sideTriangles()
        || was.cornerTriangles() != is.cornerTriangles()) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.CONTRADICTS.about("layout", "layout"),
          "Its setting, sides or corners are not those of the plan",
          "Keep them, or plan the brief by itself");
    }
    Brief old = current.brief();
    Optional<Sequences> plan = current.sequences();
    if (was.across() != is.across() || was.down() != is.down()) {
      Resized resized =
          Resized.of(
              old, plan, new Change.Resize(wish.place(), is.across(), is.down(), Anchor.TOP_LEFT));
      old = resized.brief();
      plan = resized.sequences();
    }
    return new Rebriefed(old, wish).of(plan);
  }

  private CurrentPlan of(Optional<Sequences> plan) {
    tellMotifs();
    tellBegun("joining", old.joining().map(YARN), asked.joining().map(YARN), joins());
    tellBegun("edging", yarns(old.edging()), yarns(asked.edging()), edges());
    Brief bare =
        asked
            .withYarns(yarns())
            .withPile(old.pile())
            .withStitching(stitching())
            .withExtras(asked.extras().over(old.extras()))
            .withAround(old.around());
    List<Mistake> mistakes =
        BriefMistakes.ofParts(bare).stream()
            .map(
                m -> Mistake.ofWish(wish.place() + " " + m.path(), m.sort(), m.found(), m.remedy()))
            .toList();
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
    Blanket ready = Blanket.ofUnjudged(bare);
    Sequences worked = ready.locks().copy();
    Stages stages = Stages.of(ready);
    Stages were = Stages.of(before);
    for (int piece = 0; piece < before.pieceCount(); piece++) {
      if (were.stage(piece) > 0) {
        stages.set(piece, Math.max(stages.stage(piece), were.stage(piece)));
      }
      for (int round = 0; round < before.roundsWorked(piece); round++) {
        worked.set(piece, round, yarn(ready, before.locked(piece, round)));
      }
    }
    Brief noted = WorkedPieces.noted(ready, stages, worked);
    Blanket now = Blanket.ofUnjudged(noted);
    return new CurrentPlan(noted, plan.map(planned -> moved(now, planned)));
  }

  /** The plan in the yarns of the new brief; open where it does not have them. */
  private Sequences moved(Blanket now, Sequences planned) {
    Sequences moved = now.open();
    for (int piece = 0; piece < moved.pieces(); piece++) {
      boolean fits = moved.rounds(piece) == planned.rounds(piece);
      for (int round = 0; round < moved.rounds(piece); round++) {
        if (round < now.roundsWorked(piece)) {
          moved.set(piece, round, now.locked(piece, round));
        } else if (fits && planned.yarn(piece, round) != Sequences.OPEN) {
          moved.set(piece, round, yarn(now, planned.yarn(piece, round)));
        }
      }
    }
    return moved;
  }

  private int yarn(Blanket now, int yarnBefore) {
    int yarn = now.yarnIndex(before.yarn(yarnBefore).code());
    return yarn < 0 ? Sequences.OPEN : yarn;
  }

  /** What the hand takes stays where what it is held against does, and nothing else is asked. */
  private Stitching stitching() {
    Stitching is = asked.stitching();
    BigDecimal hand = old.stitching().handPercent();
    boolean stays =
        is.equals(old.stitching().withHand(is.handPercent()))
            && is.handPercent().equals(Stitching.AS_RECKONED)
            && asked.motifs().equals(old.motifs());
    return stays ? is.withHand(hand) : is;
  }

  /**
   * The brief's yarns, and behind them those that it does not name but that came since or are
   * worked in; of these what was not added since is gone.
   */
  private List<Yarn> yarns() {
    Map<String, Yarn> yarns = new LinkedHashMap<>();
    asked.yarns().forEach(yarn -> yarns.put(yarn.code(), yarn));
    TreeSet<Integer> inUse = inUse();
    for (int index = 0; index < before.yarnCount(); index++) {
      Yarn was = before.yarn(index);
      boolean kept = wish.kept().contains(was.code()) || was.counted().isPresent() || was.gone();
      Yarn now = yarns.get(was.code());
      if (now != null && kept) {
        yarns.put(was.code(), withStock(now, was));
      } else if (now == null && wish.kept().contains(was.code())) {
        yarns.put(was.code(), was);
      } else if (now == null && inUse.contains(index)) {
        yarns.put(was.code(), was.withGone(true));
      }
    }
    return List.copyOf(yarns.values());
  }

  private static Yarn withStock(Yarn now, Yarn was) {
    Yarn put = now.ball().isPresent() ? now : now.withBall(was.ball());
    return put.withLeft(was.left())
        .withBalls(was.balls())
        .withCount(was.counted())
        .withGone(was.gone());
  }

  /** Yarns that something is worked in. */
  private TreeSet<Integer> inUse() {
    TreeSet<Integer> inUse = new TreeSet<>();
    for (int piece = 0; piece < before.pieceCount(); piece++) {
      for (int round = 0; round < before.roundsWorked(piece); round++) {
        inUse.add(before.locked(piece, round));
      }
    }
    old.pile().forEach(entry -> entry.rounds().forEach(code -> inUse.add(before.yarnIndex(code))));
    return inUse;
  }

  private void tellMotifs() {
    for (PieceKind kind : PieceKind.values()) {
      Motif motif = asked.motifs().get(kind);
      List<String> worked = worked(kind);
      if (!worked.isEmpty()
          && (motif == null || motif.rounds().size() != before.motif(kind).rounds().size())) {
        throw Selections.wrong(
            wish.place(),
            MistakeCode.ALREADY_WORKED.about(worked),
            "Its motif of a %s has %s, and %s of %s are worked"
                .formatted(
                    kind.word(),
                    motif == null ? "no rounds" : Words.count(motif.rounds().size(), "round"),
                    Words.count(worked.size(), kind.word()),
                    Words.count(before.motif(kind).rounds().size(), "round")),
            "Keep as many rounds, or mark what is worked as planned");
      }
    }
  }

  private List<String> worked(PieceKind kind) {
    return before.layout().places().stream()
        .filter(place -> place.kind() == kind && before.roundsWorked(place.index()) > 0)
        .map(place -> place.name())
        .toList();
  }

  private boolean joins() {
    return Stages.of(before).anyJoined();
  }

  private boolean edges() {
    return old.edging().stream()
        .flatMap(use -> before.yarn(before.yarnIndex(use.yarn())).counted().stream())
        .anyMatch(counted -> counted.edgedPercent() > 0);
  }

  private static Optional<String> yarns(List<YarnUse> edging) {
    return edging.stream().map(YarnUse::yarn).reduce((inner, outer) -> inner + ", " + outer);
  }

  private void tellBegun(String what, Optional<String> was, Optional<String> is, boolean begun) {
    boolean another = was.isPresent() && is.isPresent() && !was.equals(is);
    if (begun && another) {
      String from = was.get();
      String to = is.get();
      boolean codes =
          Stream.of(from, to).noneMatch(each -> each.equals(BORDERS) || each.contains(","));
      throw Selections.wrong(
          wish.place(),
          MistakeCode.CONTRADICTS.about(to, from),
          "Its %s is in %s, and has been begun in %s".formatted(what, to, from),
          codes
              ? "Keep %s there, and ask for a swap of %s for %s".formatted(from, from, to)
              : "Keep %s there".formatted(from));
    }
  }
}
