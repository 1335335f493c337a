package lozengy.cli.command;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.cli.command.Verdict.Found;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.arrangement.StatedArrangement.StatedYarn;
import lozengy.model.blanket.Blanket;
import lozengy.model.score.Part;
import lozengy.model.score.Score;

/** Holds the figures that an arrangement's file states against those worked out from scratch. */
final class StatedFaults {

  /** Files state scores to six decimals. */
  private static final double SCORE_STEP = 1e-6;

  /** A bound this little above the objective proves it optimal; it may be rounded up. */
  private static final double OPTIMAL_STEP = 4e-6;

  private static final int SCORE_DECIMALS = 6;

  private StatedFaults() {}

  /** What is wrong with the stated score and bound. */
  static List<Found> ofScore(StatedArrangement stated, Score worked) {
    List<Found> faults = new ArrayList<>();
    stated
        .score()
        .ifPresent(
            said -> {
              compare(faults, "total", said.total(), Optional.of(worked.total()));
              compare(faults, "objective", said.objective(), Optional.of(worked.objective()));
              for (Part part : Part.values()) {
                Double figure = said.parts().get(part);
                if (figure != null) {
                  Optional<Double> right = Optional.ofNullable(worked.parts().get(part));
                  compare(faults, part.word(), figure, right);
                }
              }
            });
    stated
        .bound()
        .filter(bound -> bound.total() < worked.total() - SCORE_STEP)
        .ifPresent(
            bound ->
                faults.add(
                    found(
                        "stated-bound",
                        List.of(),
                        "The file states that no arrangement can exceed "
                            + score(bound.total())
                            + ", but this one reaches "
                            + score(worked.total()))));
    stated
        .solved()
        .filter(solved -> solved.proof().equals("optimal"))
        .filter(
            solved ->
                stated.bound().isEmpty()
                    || stated.bound().get().objective().orElse(stated.bound().get().total())
                        > worked.objective() + OPTIMAL_STEP)
        .ifPresent(
            solved ->
                faults.add(
                    found(
                        "stated-proof",
                        List.of(),
                        "The file states that this is proved optimal, but its bound does not say"
                            + " so")));
    return faults;
  }

  private static void compare(
      List<Found> faults, String name, double said, Optional<Double> worked) {
    if (worked.isPresent() && Math.abs(worked.get() - said) <= SCORE_STEP) {
      return;
    }
    String right = worked.map(StatedFaults::score).orElse("no part of this score");
    faults.add(
        found(
            "stated-score",
            List.of(),
            "The file states " + score(said) + " for " + name + ", but it is " + right));
  }

  /** What is wrong with the stated yarn totals. */
  static List<Found> ofYarns(StatedArrangement stated) {
    Blanket blanket = stated.blanket();
    long[] used = blanket.usedMillimetres(stated.sequences());
    List<Found> faults = new ArrayList<>();
    Set<String> told = new HashSet<>();
    for (StatedYarn said : stated.yarns()) {
      int yarn = blanket.yarnIndex(said.code());
      if (yarn < 0) {
        faults.add(
            found(
                "stated-yarns",
                List.of(),
                "The file states totals for " + said.code() + ", which is no yarn of its brief"));
      } else if (!told.add(said.code())) {
        faults.add(yarnFault(said.code(), "twice"));
      } else {
        long stock = blanket.stockMillimetres(yarn);
        compare(faults, said.code(), "available", said.availableMetres(), stock);
        compare(faults, said.code(), "used", said.usedMetres(), used[yarn]);
        compare(faults, said.code(), "left", said.leftMetres(), stock - used[yarn]);
      }
    }
    return faults;
  }

  private static void compare(
      List<Found> faults, String code, String what, Optional<Double> said, long millimetres) {
    if (said.isPresent() && Math.round(said.get() * 1000) != millimetres) {
      BigDecimal right = BigDecimal.valueOf(millimetres, 3);
      faults.add(
          yarnFault(
              code,
              BigDecimal.valueOf(said.get()).toPlainString()
                  + " m "
                  + what
                  + ", but it is "
                  + right
                  + " m"));
    }
  }

  private static Found yarnFault(String code, String words) {
    return found("stated-yarns", List.of(code), "The file states for " + code + " " + words);
  }

  private static Found found(String rule, List<String> yarns, String words) {
    return new Found(rule, List.of(), yarns, words);
  }

  private static String score(double value) {
    return BigDecimal.valueOf(value)
        .setScale(SCORE_DECIMALS, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
