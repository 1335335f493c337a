package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lozengy.model.arrangement.Contradiction.Code;
import lozengy.model.arrangement.StatedArrangement.StatedYarn;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Part;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;

/**
 * Holds what follows from an arrangement, and stands in its file all the same, against what does
 * follow: the yarns' rows, the score, its bound, what is said to be proved, and what the pieces'
 * lines leave out. What the pieces' lines state wrongly the reader refuses.
 */
public final class Contradictions {

  /** Files state scores to six decimals. */
  private static final double SCORE_STEP = 1e-6;

  /** A bound this little above the objective proves it optimal; it may be rounded up. */
  private static final double OPTIMAL_STEP = 4e-6;

  private static final int SCORE_DECIMALS = 6;

  private final StatedArrangement stated;
  private final Blanket blanket;
  private final List<Contradiction> found = new ArrayList<>();

  private Contradictions(StatedArrangement stated) {
    this.stated = stated;
    this.blanket = stated.blanket();
  }

  /**
   * Finds all of them.
   *
   * @param stated what a file states
   * @return what contradicts the rest; empty if all agrees
   */
  public static List<Contradiction> of(StatedArrangement stated) {
    Contradictions all = new Contradictions(stated);
    all.pieces();
    if (stated.sequences().complete()) {
      Score worked = Scorer.score(all.blanket, stated.sequences(), stated.earlier());
      all.score(worked);
      all.proved("", stated.bound(), stated.solved(), worked);
    } else {
      all.noScore();
    }
    stated
        .diary()
        .reversal()
        .filter(reversal -> stated.sequences().complete())
        .flatMap(reversal -> reversal.from(stated.blanket(), stated.sequences()))
        .ifPresent(all::before);
    all.yarns();
    return List.copyOf(all.found);
  }

  /** Whether a bound can be one of a score that is reached. */
  static boolean bounds(Arrangement.Bound bound, Score score) {
    return bound.total() >= score.total() - SCORE_STEP
        && bound.objective().orElse(100.0) >= score.objective() - SCORE_STEP;
  }

  /**
   * Whether a bound proves that no arrangement has a higher objective: where keep is weighed in, a
   * bound of the total says nothing of that.
   */
  static boolean optimal(Optional<Arrangement.Bound> bound, Score score) {
    Optional<Double> ofObjective =
        score.parts().containsKey(Part.KEEP)
            ? bound.flatMap(Arrangement.Bound::objective)
            : bound.map(Arrangement.Bound::total);
    return ofObjective.filter(most -> most <= score.objective() + OPTIMAL_STEP).isPresent();
  }

  private void pieces() {
    stated
        .leftOut()
        .forEach(
            (field, pieces) ->
                found.add(
                    new Contradiction(
                        Code.PIECES,
                        field + " of " + Words.pieces(blanket, pieces),
                        pieces.stream().map(piece -> Words.piece(blanket, piece)).toList(),
                        List.of(),
                        Optional.empty(),
                        "what layout and brief make it")));
  }

  private void score(Score worked) {
    if (stated.formerTotal().isPresent()) {
      return;
    }
    if (stated.score().isEmpty()) {
      add(Code.SCORE, "score", Optional.empty(), "in total " + figure(worked.total()));
      return;
    }
    Score said = stated.score().get();
    figure("total", Optional.of(said.total()), Optional.of(worked.total()));
    figure("objective", Optional.of(said.objective()), Optional.of(worked.objective()));
    for (Part part : Part.values()) {
      figure(
          part.word(),
          Optional.ofNullable(said.parts().get(part)),
          Optional.ofNullable(worked.parts().get(part)));
    }
  }

  private void figure(String name, Optional<Double> said, Optional<Double> worked) {
    boolean agrees =
        said.isPresent() && worked.isPresent()
            ? Math.abs(worked.get() - said.get()) <= SCORE_STEP
            : said.isEmpty() && worked.isEmpty();
    if (!agrees) {
      String right = worked.map(Contradictions::figure).orElse("no part of this score");
      add(Code.SCORE, name, said.map(Contradictions::figure), right);
    }
  }

  private void noScore() {
    stated
        .score()
        .ifPresent(
            said ->
                add(
                    Code.SCORE,
                    "total",
                    Optional.of(figure(said.total())),
                    "none while rounds are open"));
    stated
        .bound()
        .ifPresent(
            bound ->
                add(
                    Code.BOUND,
                    "bound",
                    Optional.of(figure(bound.total())),
                    "none while rounds are open"));
  }

  private void proved(
      String before,
      Optional<Arrangement.Bound> bound,
      Optional<Arrangement.Solved> solved,
      Score worked) {
    bound
        .filter(each -> !bounds(each, worked))
        .ifPresent(
            each ->
                add(
                    Code.BOUND,
                    before + "bound",
                    Optional.of(figure(each.total())),
                    "at least " + figure(worked.total()) + ", which this arrangement reaches"));
    solved
        .filter(each -> each.proof().equals(Arrangement.Solved.OPTIMAL) && !optimal(bound, worked))
        .ifPresent(
            each ->
                add(
                    Code.PROOF,
                    before + "proof",
                    Optional.of(each.proof()),
                    "none, since its bound does not say so"));
  }

  private void before(Before before) {
    Blanket blanketThen = Blanket.ofUnjudged(before.brief());
    Score worked = Scorer.score(blanketThen, before.sequences(), stated.earlier());
    proved("diary.entries.before.", before.bound(), before.solved(), worked);
  }

  private void yarns() {
    Map<String, StatedYarn> rows = new LinkedHashMap<>();
    for (StatedYarn row : stated.yarns()) {
      if (rows.putIfAbsent(row.code(), row) != null) {
        yarn(row.code(), "the yarn", Optional.of("two rows"), "one yarn");
      } else if (blanket.yarnIndex(row.code()) < 0) {
        yarn(row.code(), "the yarn", Optional.of("a row"), "no yarn of its brief");
      }
    }
    long[] used = blanket.usedMillimetres(stated.sequences());
    for (int yarn = 0; yarn < used.length; yarn++) {
      String code = blanket.yarn(yarn).code();
      StatedYarn row = rows.get(code);
      if (row == null) {
        yarn(code, "the yarn", Optional.empty(), "a yarn of its brief");
        continue;
      }
      long stock = blanket.yarn(yarn).stockMillimetres();
      if (!row.name().equals(Optional.of(blanket.yarn(yarn).name()))) {
        yarn(code, "name of", row.name(), blanket.yarn(yarn).name());
      }
      metres(code, "available_m of", row.availableMetres(), stock);
      metres(code, "used_m of", row.usedMetres(), used[yarn]);
      metres(code, "left_m of", row.leftMetres(), stock - used[yarn]);
    }
  }

  private void metres(String code, String what, Optional<Double> said, long millimetres) {
    if (said.isEmpty() || Math.round(said.get() * 1000) != millimetres) {
      Function<Double, String> plain = each -> BigDecimal.valueOf(each).toPlainString() + " m";
      yarn(code, what, said.map(plain), BigDecimal.valueOf(millimetres, 3) + " m");
    }
  }

  private void yarn(String code, String what, Optional<String> said, String right) {
    found.add(
        new Contradiction(Code.YARNS, what + " " + code, List.of(), List.of(code), said, right));
  }

  private void add(Code code, String what, Optional<String> said, String right) {
    found.add(new Contradiction(code, what, List.of(), List.of(), said, right));
  }

  private static String figure(double value) {
    return BigDecimal.valueOf(value)
        .setScale(SCORE_DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
