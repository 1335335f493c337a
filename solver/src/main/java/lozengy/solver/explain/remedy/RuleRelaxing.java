package lozengy.solver.explain.remedy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.BriefLine;
import lozengy.model.input.BriefPath;

/** Asks less of a rule: less contrast, more copies, fewer rounds that differ, less kept back. */
final class RuleRelaxing implements Relaxing {

  private static final int CONTRAST_UPSET = 3;
  private static final int COPIES_UPSET = 3;
  private static final int FREE_COPIES_UPSET = 10;
  private static final int WITHIN_UPSET = 6;
  private static final int KEEP_BACK_UPSET = 1;

  /** Points of contrast, or per cent kept back, that upset by one more point. */
  private static final int STEP = 5;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    Rules rules = blanket.brief().rules();
    List<Move> rungs =
        line.path().equals(BriefPath.of("rules", "min-contrast"))
            ? contrasts(blanket, rules)
            : switch (line.rule()) {
              case COPIES -> copies(blanket, rules);
              case WITHIN_PIECE -> within(rules);
              case YARN_TOTALS ->
                  line.path().equals(BriefPath.of("rules", "keep-back"))
                      ? keepBacks(rules)
                      : List.of();
              default -> List.of();
            };
    return rungs.isEmpty() ? List.of() : List.of(new Ladder(rungs));
  }

  /** The values at which one pair of yarns more may meet, to one decimal, down to 0. */
  private static List<Move> contrasts(Blanket blanket, Rules rules) {
    TreeSet<Double> values = new TreeSet<>(List.of(0.0));
    for (int a = 0; a < blanket.yarnCount(); a++) {
      for (int b = 0; b < a; b++) {
        double value = Math.floor(blanket.yarns().difference(a, b) * 10) / 10;
        if (value < rules.minContrast()) {
          values.add(value);
        }
      }
    }
    List<Move> rungs = new ArrayList<>();
    for (double value : values.descendingSet()) {
      int upset = CONTRAST_UPSET + (int) Math.ceil((rules.minContrast() - value) / STEP);
      String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
      rungs.add(
          move(
              "min-contrast",
              new Relaxation.LowerContrast(value),
              number,
              upset,
              old -> old.withMinContrast(value)));
    }
    return rungs;
  }

  private static List<Move> copies(Blanket blanket, Rules rules) {
    List<Move> rungs = new ArrayList<>();
    int allowed = rules.copies().orElseThrow();
    for (int copies = allowed + 1; copies < blanket.pieceCount(); copies++) {
      OptionalInt value = OptionalInt.of(copies);
      rungs.add(
          move(
              "copies",
              new Relaxation.RaiseCopies(value),
              Integer.toString(copies),
              Math.min(FREE_COPIES_UPSET, COPIES_UPSET + copies - allowed),
              old -> old.withCopies(value)));
    }
    rungs.add(
        move(
            "copies",
            new Relaxation.RaiseCopies(OptionalInt.empty()),
            "free",
            FREE_COPIES_UPSET,
            old -> old.withCopies(OptionalInt.empty())));
    return rungs;
  }

  private static List<Move> within(Rules rules) {
    List<Move> rungs = new ArrayList<>();
    if (rules.withinPiece() == WithinPiece.ALL_DIFFER) {
      rungs.add(within(WithinPiece.ADJACENT_DIFFER, WITHIN_UPSET));
    }
    rungs.add(within(WithinPiece.FREE, WITHIN_UPSET * (rungs.size() + 1)));
    return rungs;
  }

  private static Move within(WithinPiece value, int upset) {
    return move(
        "within-piece",
        new Relaxation.LetRoundsMatch(value),
        value.word(),
        upset,
        old -> old.withWithinPiece(value));
  }

  private static List<Move> keepBacks(Rules rules) {
    List<Move> rungs = new ArrayList<>();
    int most = (int) Math.ceil(rules.keepBackPercent()) - 1;
    for (int percent = most; percent >= 0; percent--) {
      int upset = KEEP_BACK_UPSET + (int) Math.ceil((rules.keepBackPercent() - percent) / STEP);
      double value = percent;
      rungs.add(
          move(
              "keep-back",
              new Relaxation.KeepLessBack(value),
              percent + " %",
              upset,
              old -> old.withKeepBack(value)));
    }
    return rungs;
  }

  private static Move move(
      String rule, Relaxation what, String value, int upset, UnaryOperator<Rules> change) {
    return new Move(
        new Remedy.Step(what, BriefPath.of("rules", rule), Optional.of(value)),
        upset,
        brief -> brief.withRules(change.apply(brief.rules())));
  }
}
