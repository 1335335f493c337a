package lozengy.model.progress;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Diary.YarnEvent.Weighed;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Counted;
import lozengy.model.brief.Yarn;
import lozengy.model.unit.Ratio;
import lozengy.model.yarn.UncutRounds;
import lozengy.model.yarn.YarnWork;

/**
 * What counts in mid-work tell of the hand: what is gone of a yarn since its stock was told,
 * against what was worked of it by then. Rounds that went on in the yarn of the round before are
 * taken to have needed no cut.
 */
final class Weighings {

  private final Blanket told;
  private final List<YarnWork> work;
  private final long[] uncut;
  private final Optional<Mark.Edged> edged;

  private Weighings(Blanket told, Sequences sequences, Optional<Mark.Edged> edged) {
    this.told = told;
    this.work = YarnWork.of(told, sequences);
    this.uncut = UncutRounds.savedSinceTold(told, sequences);
    this.edged = edged;
  }

  /**
   * What counts tell; O(rounds).
   *
   * @param told the blanket with all that is worked now, and the stocks as they were told before
   * @param sequences its pieces' yarns, as worked
   * @param mark the counts, of yarns that there are, whose weights have put-ups
   * @return by code of the yarn; without yarns of which nothing was worked since
   */
  static Map<String, Weighed> of(Blanket told, Sequences sequences, Mark mark) {
    Map<String, Weighed> weighed = new LinkedHashMap<>();
    if (!mark.counts().isEmpty()) {
      Weighings all = new Weighings(told, sequences, mark.edged());
      mark.counts()
          .forEach(count -> all.of(count).ifPresent(each -> weighed.put(count.code(), each)));
    }
    return weighed;
  }

  private Optional<Weighed> of(Mark.Count count) {
    int index = told.yarnIndex(count.code());
    Yarn yarn = told.yarn(index);
    long left = count.left().millimetresIn(yarn.ball().orElse(null)).down();
    long worked =
        told.yarn(index).stockMillimetres()
            - work.get(index).atHandMillimetres()
            - uncut[index]
            + edgedSince(yarn);
    long reckoned =
        Ratio.of(BigDecimal.valueOf(worked).movePointRight(2))
            .dividedBy(told.brief().stitching().handPercent())
            .down();
    return yarn.gone() || reckoned <= 0
        ? Optional.empty()
        : Optional.of(new Weighed(told.yarn(index).stockMillimetres() - left, reckoned));
  }

  /** What of the edging was worked since, as the count says with it. */
  private long edgedSince(Yarn yarn) {
    if (edged.isEmpty()) {
      return 0;
    }
    double before = yarn.counted().map(Counted::edgedPercent).orElse(0.0);
    return Math.round(
        told.fixedUse().wholeEdgingMillimetres(told.yarnIndex(yarn.code()))
            * (edged.get().percent() - before)
            / 100);
  }
}
