package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.BorderJoining;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Joining;
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
    Brief brief = blanket.brief();
    for (int i = 0; i < brief.edging().size(); i++) {
      if (line.path().equals(brief.edgingPath(i))) {
        int at = i;
        others(blanket, brief.edging().get(i).yarn())
            .forEach(yarn -> ladders.add(edgedIn(blanket, at, yarn)));
        ladders.add(
            Ladder.of(
                new Move(
                    new Remedy.Step(
                        new Relaxation.DropEdging(), BriefPath.of("edging"), Optional.empty()),
                    NO_EDGING_UPSET,
                    whole -> whole.withEdging(List.of()))));
      }
    }
    if (line.path().equals(BriefPath.of("joining"))) {
      String without = brief.joiningInOneYarn().map(YarnUse::yarn).orElse("");
      others(blanket, without).forEach(yarn -> ladders.add(joinedIn(blanket, yarn)));
    }
    return ladders;
  }

  private static List<Integer> others(Blanket blanket, String without) {
    return IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> !blanket.yarn(yarn).code().equals(without))
        .boxed()
        .sorted(Comparator.comparingLong(yarn -> -blanket.yarn(yarn).stockMillimetres()))
        .limit(MOST_YARNS)
        .toList();
  }

  private static Ladder edgedIn(Blanket blanket, int at, int yarn) {
    String code = blanket.yarn(yarn).code();
    BriefPath path = blanket.brief().edgingPath(at).field("yarn");
    return Ladder.of(
        new Move(
            new Remedy.Step(new Relaxation.EdgeIn(yarn), path, Optional.of(code)),
            OTHER_EDGING_UPSET,
            brief -> {
              List<YarnUse> edging = new ArrayList<>(brief.edging());
              edging.set(at, in(brief, edging.get(at), code));
              return brief.withEdging(edging);
            }));
  }

  private static Ladder joinedIn(Blanket blanket, int yarn) {
    String code = blanket.yarn(yarn).code();
    return Ladder.of(
        new Move(
            new Remedy.Step(
                new Relaxation.JoinIn(yarn), BriefPath.of("joining", "yarn"), Optional.of(code)),
            OTHER_JOINING_UPSET,
            brief -> brief.withJoining(brief.joining().map(joining -> in(brief, joining, code)))));
  }

  private static Joining in(Brief brief, Joining joining, String code) {
    return joining instanceof BorderJoining borders
        ? new YarnUse(code, borders.rate(), 1, borders.minutesPerMetre())
        : in(brief, (YarnUse) joining, code);
  }

  private static YarnUse in(Brief brief, YarnUse use, String code) {
    return brief.yarns().stream()
        .filter(yarn -> yarn.code().equals(use.yarn()))
        .findFirst()
        .map(yarn -> use.in(code, yarn.ball()))
        .orElseThrow();
  }
}
