package lozengy.model.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Brief;
import lozengy.model.input.BriefPath;

/**
 * No yarn runs out: the rounds in it, joining and edging take at most the stock less what is kept
 * back. Always counts every piece, worked or not. O(pieces x rounds + yarns).
 */
public final class YarnTotalsRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.YARN_TOTALS;
  }

  /** One line for each yarn, and what is taken off all of them: joining, edging, keep-back. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      long settled = blanket.fixedUse().settledMillimetres(yarn);
      long stock = blanket.yarn(yarn).stockMillimetres();
      Subject subject = new Subject.Stock(yarn, stock, settled);
      long beside =
          blanket.fixedUse().pileBeyondMillimetres(yarn)
              - blanket.fixedUse().pileOutMillimetres(yarn);
      Ground all = new Ground.Stock(yarn, stock + settled + beside);
      lines.add(new BriefLine(id(), BriefPath.of("yarns").item(yarn), subject, List.of(all)));
    }
    Brief brief = blanket.brief();
    brief
        .joiningInOneYarn()
        .ifPresent(
            use -> {
              int yarn = blanket.yarnIndex(use.yarn());
              long taken = blanket.fixedUse().joiningMillimetres();
              lines.add(
                  taken(BriefPath.of("joining"), new Subject.Joining(yarn, taken), yarn, taken));
            });
    if (brief.joiningInBorders().isPresent()) {
      Subject subject = new Subject.JoiningInBorders();
      lines.add(new BriefLine(id(), BriefPath.of("joining"), subject, List.of(new Ground.Seams())));
    }
    Set<Integer> edges = new HashSet<>();
    for (int i = 0; i < brief.edging().size(); i++) {
      int yarn = blanket.yarnIndex(brief.edging().get(i).yarn());
      if (edges.add(yarn)) {
        long taken = blanket.fixedUse().edgingMillimetres(yarn);
        Subject subject = new Subject.Edging(yarn, taken);
        lines.add(taken(brief.edgingPath(i), subject, yarn, taken));
      }
    }
    double percent = brief.rules().keepBackPercent();
    if (percent > 0) {
      BriefPath path = BriefPath.of("rules", "keep-back");
      lines.add(new BriefLine(id(), path, new Subject.KeepBack(percent), keptBack(blanket)));
    }
    return lines;
  }

  private BriefLine taken(BriefPath path, Subject subject, int yarn, long millimetres) {
    Ground taken = new Ground.Taken(yarn, millimetres);
    return new BriefLine(id(), path, subject, List.of(taken));
  }

  private static List<Ground> keptBack(Blanket blanket) {
    List<Ground> kept = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      long millimetres =
          blanket.yarn(yarn).stockMillimetres() - blanket.yarns().usableMillimetres(yarn);
      kept.add(new Ground.Taken(yarn, millimetres));
    }
    return kept;
  }

  /** Whether locks overdraw a yarn depends on the other rounds too: a solver says it. */
  @Override
  public boolean judgesLocks() {
    return false;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    long[] used = blanket.usedMillimetres(sequences);
    for (int yarn = 0; yarn < used.length; yarn++) {
      long usable = blanket.yarns().usableMillimetres(yarn);
      if (used[yarn] > usable) {
        faults.add(
            new Fault(
                id(), List.of(), List.of(), List.of(yarn), new Fault.RunsOut(used[yarn], usable)));
      }
    }
    return faults;
  }
}
