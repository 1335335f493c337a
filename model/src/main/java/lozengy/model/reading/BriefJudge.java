package lozengy.model.reading;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;

/** Judges a brief whole: its parts, and what it holds of single pieces against the rules. */
public final class BriefJudge {

  private static final PieceNote SILENT =
      new PieceNote(List.of("all"), List.of(), PieceState.PLANNED, Set.of());

  private BriefJudge() {}

  /**
   * Finds all mistakes of a brief. Locks are held against the rules as far as the parts fit
   * together: a note with a mistake of its own holds nothing there.
   *
   * @param brief the brief
   * @return the mistakes with their paths and without lines, in the brief's order; empty if none
   */
  public static List<Mistake> mistakes(Brief brief) {
    List<Mistake> mistakes = new ArrayList<>(BriefMistakes.ofParts(brief));
    mistakes.addAll(ofLocks(brief, mistakes.stream().map(Mistake::path).toList()));
    return mistakes;
  }

  /**
   * Finds locks that break a rule. Where more is wrong than single notes on pieces, none is looked
   * for.
   *
   * @param wrong paths of other mistakes; a note that is wrong itself holds nothing here
   */
  static List<Mistake> ofLocks(Brief brief, Collection<BriefPath> wrong) {
    Set<Integer> notes = new HashSet<>();
    for (BriefPath path : wrong) {
      if (!path.inItem("pieces")) {
        return List.of();
      }
      notes.add(path.index().getAsInt());
    }
    return LockMistakes.of(without(brief, notes));
  }

  /** The brief with some notes that say nothing; the others keep their places. */
  private static Brief without(Brief brief, Set<Integer> silent) {
    List<PieceNote> notes = new ArrayList<>(brief.pieces());
    silent.forEach(i -> notes.set(i, SILENT));
    return silent.isEmpty() ? brief : brief.withPieces(notes);
  }
}
