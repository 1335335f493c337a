package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.check.BriefLine;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.LayoutSize;
import lozengy.model.reading.BriefJudge;

/** Works fewer rows, where yarn is short and nothing is said of pieces that would go. */
final class SizeRelaxing implements Relaxing {

  private static final int ROW_UPSET = 12;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    if (!line.path().inItem("yarns")) {
      return List.of();
    }
    List<Move> rungs = new ArrayList<>();
    LayoutSize size = blanket.brief().layout();
    // a blanket of half its length is another blanket
    for (int down = size.down() - 1; down > size.down() / 2; down--) {
      LayoutSize smaller =
          new LayoutSize(
              size.setting(), size.across(), down, size.sideTriangles(), size.cornerTriangles());
      if (!fits(blanket.brief(), smaller)) {
        break;
      }
      int rows = size.down() - down;
      rungs.add(
          new Move(
              new Remedy.Step(
                  new Relaxation.WorkFewerRows(rows, down),
                  BriefPath.of("layout", "down"),
                  Optional.of(Integer.toString(down))),
              ROW_UPSET * rows,
              brief -> brief.withLayout(smaller)));
    }
    return rungs.isEmpty() ? List.of() : List.of(new Ladder(rungs));
  }

  private static boolean fits(Brief brief, LayoutSize smaller) {
    boolean held = brief.pieces().stream().anyMatch(note -> !note.rounds().isEmpty());
    return !held && BriefJudge.mistakes(brief.withLayout(smaller)).isEmpty();
  }
}
