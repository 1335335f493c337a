package lozengy.model.progress;

import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.LastMark;
import lozengy.model.blanket.Blanket;
import lozengy.model.score.Scorer;

/** Marks an arrangement, so that the mark can be taken back. */
public final class MarkedArrangement {

  private MarkedArrangement() {}

  /**
   * The arrangement with a mark. A bound is no longer stated: facts may break what it was proved
   * from. How it was found stays stated as long as its yarns are those that were found.
   *
   * @param before the arrangement as it was
   * @param mark what has come about
   * @return the arrangement itself where nothing is new
   * @throws lozengy.model.input.InputException with all mistakes of the mark
   */
  public static Arrangement of(Arrangement before, Mark mark) {
    Marked marked = Marking.apply(before.blanket(), before.sequences(), mark);
    if (marked.nothingNew()) {
      return before;
    }
    LastMark lastMark =
        new LastMark(before.blanket().brief(), before.sequences(), before.bound(), before.solved());
    boolean asFound = marked.yarns().isEmpty() && marked.counted().isEmpty();
    return new Arrangement(
        marked.blanket(),
        marked.sequences(),
        before.earlier(),
        Scorer.score(marked.blanket(), marked.sequences(), before.earlier()),
        Optional.empty(),
        asFound ? before.solved().map(Arrangement.Solved::unproved) : Optional.empty(),
        Optional.of(lastMark));
  }

  /**
   * {@return the arrangement as it was before its last mark; empty if there is none}
   *
   * @param marked an arrangement that may have been marked
   */
  public static Optional<Arrangement> undone(Arrangement marked) {
    return marked.lastMark().map(mark -> undone(marked, mark));
  }

  private static Arrangement undone(Arrangement marked, LastMark mark) {
    Blanket blanket = Blanket.ofUnjudged(mark.brief());
    return new Arrangement(
        blanket,
        mark.sequences(),
        marked.earlier(),
        Scorer.score(blanket, mark.sequences(), marked.earlier()),
        mark.bound(),
        mark.solved());
  }
}
