package lozengy.solver.constraint;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;

/** Borders of planned pieces have the yarn that the look gives them: one line. */
final class BordersPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.BORDERS;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<String> borders = blanket.brief().look().borders();
    if (borders.isEmpty()) {
      return List.of();
    }
    Subject subject = new Subject.GivenBorders(borders);
    int[] planned =
        IntStream.range(0, blanket.pieceCount())
            .filter(piece -> blanket.state(piece) == PieceState.PLANNED)
            .toArray();
    return List.of(
        new BriefLine(
            rule(), BriefPath.of("look", "borders"), subject, new Given(blanket, planned)));
  }

  private record Given(Blanket blanket, int[] planned) implements BriefLine.Content {
    @Override
    public void restrict(Domains domains) {
      for (int piece : planned) {
        domains.keepOnly(piece, domains.rounds(piece) - 1, blanket.look().border(piece));
      }
    }
  }
}
