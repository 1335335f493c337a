package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.YarnUse;
import lozengy.model.check.BriefLine;
import lozengy.model.input.BriefPath;

/** Joins or edges in another yarn, or leaves the edging out. */
final class FinishRelaxing implements Relaxing {

  private static final int OTHER_EDGING_UPSET = 3;
  private static final int OTHER_JOINING_UPSET = 4;
  private static final int NO_EDGING_UPSET = 6;

  /** Yarns to try, those with the most at hand. */
  private static final int MOST_YARNS = 2;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    List<Ladder> ladders = new ArrayList<>();
    if (line.path().equals(BriefPath.of("edging"))) {
      others(blanket, blanket.brief().edging().orElseThrow())
          .forEach(yarn -> ladders.add(inYarn(blanket, true, yarn, OTHER_EDGING_UPSET)));
      ladders.add(
          Ladder.of(
              new Move(
                  new Remedy.Step(new Relaxation.DropEdging(), line.path(), Optional.empty()),
                  NO_EDGING_UPSET,
                  brief -> brief.withEdging(Optional.empty()))));
    } else if (line.path().equals(BriefPath.of("joining"))) {
      others(blanket, blanket.brief().joiningInOneYarn().orElseThrow())
          .forEach(yarn -> ladders.add(inYarn(blanket, false, yarn, OTHER_JOINING_UPSET)));
    }
    return ladders;
  }

  private static List<Integer> others(Blanket blanket, YarnUse use) {
    return IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> !blanket.yarn(yarn).code().equals(use.yarn()))
        .boxed()
        .sorted(Comparator.comparingLong(yarn -> -blanket.stockMillimetres(yarn)))
        .limit(MOST_YARNS)
        .toList();
  }

  private static Ladder inYarn(Blanket blanket, boolean edging, int yarn, int upset) {
    String code = blanket.yarn(yarn).code();
    Relaxation change = edging ? new Relaxation.EdgeIn(yarn) : new Relaxation.JoinIn(yarn);
    BriefPath path = BriefPath.of(edging ? "edging" : "joining", "yarn");
    return Ladder.of(
        new Move(
            new Remedy.Step(change, path, Optional.of(code)),
            upset,
            brief -> edging ? edged(brief, code) : joined(brief, code)));
  }

  private static Brief edged(Brief brief, String code) {
    return brief.withEdging(brief.edging().map(use -> in(brief, use, code)));
  }

  private static Brief joined(Brief brief, String code) {
    return brief.withJoining(brief.joiningInOneYarn().map(use -> in(brief, use, code)));
  }

  private static YarnUse in(Brief brief, YarnUse use, String code) {
    return brief.yarns().stream()
        .filter(yarn -> yarn.code().equals(use.yarn()))
        .findFirst()
        .map(yarn -> use.in(code, yarn.ball()))
        .orElseThrow();
  }
}
