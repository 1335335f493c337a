package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PileEntry;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;

/** Leaves finished pieces of the pile out of the blanket. */
final class PileRelaxing implements Relaxing {

  /** As much as working a piece anew. */
  private static final int PIECE_UPSET = 8;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    if (line.rule() != RuleId.PILE) {
      return List.of();
    }
    int index = Relaxing.index(line);
    PileEntry entry = blanket.brief().pile().get(index);
    // an entry keeps a piece at least, so that the others keep their places in the brief
    List<Move> rungs =
        IntStream.range(1, entry.count()).mapToObj(fewer -> move(index, entry, fewer)).toList();
    return rungs.isEmpty() ? List.of() : List.of(new Ladder(rungs));
  }

  private static Move move(int index, PileEntry entry, int fewer) {
    int left = entry.count() - fewer;
    Remedy.Step step =
        new Remedy.Step(
            new Relaxation.LeavePieces(entry, fewer),
            BriefPath.of("pile").item(index).field("count"),
            Optional.of(Integer.toString(left)));
    return new Move(
        step,
        PIECE_UPSET * fewer,
        brief -> {
          List<PileEntry> pile = new ArrayList<>(brief.pile());
          pile.set(index, entry.withCount(left));
          return brief.withPile(pile);
        });
  }
}
