package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
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
        switch (line.path().toString()) {
          case "rules.min-contrast" -> contrasts(blanket, rules);
          case "rules.copies" -> copies(blanket, rules);
          case "rules.within-piece" -> within(rules);
          case "rules.keep-back" -> keepBacks(rules);
          default -> List.of();
        };
    return rungs.isEmpty() ? List.of() : List.of(new Ladder(rungs));
  }

  /** The values at which one pair of yarns more may meet, to one decimal, down to 0. */
  private static List<Move> contrasts(Blanket blanket, Rules rules) {
    TreeSet<Double> values = new TreeSet<>(List.of(0.0));
    for (int a = 0; a < blanket.yarnCount(); a++) {
      for (int b = 0; b < a; b++) {
        double value = Math.floor(blanket.difference(a, b) * 10) / 10;
        if (value < rules.minContrast()) {
          values.add(value);
        }
      }
    }
    List<Move> rungs = new ArrayList<>();
    for (double value : values.descendingSet()) {
      int upset = CONTRAST_UPSET + (int) Math.ceil((rules.minContrast() - value) / STEP);
      String number = Words.number(value);
      rungs.add(
          move(
              "min-contrast",
              "lower min-contrast to " + number,
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
              "let " + copies + " pieces share a sequence",
              Integer.toString(copies),
              Math.min(FREE_COPIES_UPSET, COPIES_UPSET + copies - allowed),
              old -> old.withCopies(value)));
    }
    rungs.add(
        move(
            "copies",
            "let any number of pieces share a sequence",
            "free",
            FREE_COPIES_UPSET,
            old -> old.withCopies(OptionalInt.empty())));
    return rungs;
  }

  private static List<Move> within(Rules rules) {
    List<Move> rungs = new ArrayList<>();
    if (rules.withinPiece() == WithinPiece.ALL_DIFFER) {
      rungs.add(
          within(
              "let rounds of a piece that do not touch be alike",
              WithinPiece.ADJACENT_DIFFER,
              WITHIN_UPSET));
    }
    rungs.add(
        within(
            "let neighbouring rounds of a piece be alike",
            WithinPiece.FREE,
            WITHIN_UPSET * (rungs.size() + 1)));
    return rungs;
  }

  private static Move within(String words, WithinPiece value, int upset) {
    return move("within-piece", words, value.word(), upset, old -> old.withWithinPiece(value));
  }

  private static List<Move> keepBacks(Rules rules) {
    List<Move> rungs = new ArrayList<>();
    int most = (int) Math.ceil(rules.keepBackPercent()) - 1;
    for (int percent = most; percent >= 0; percent--) {
      int upset = KEEP_BACK_UPSET + (int) Math.ceil((rules.keepBackPercent() - percent) / STEP);
      double value = percent;
      String words = percent == 0 ? "keep nothing back" : "keep only " + percent + " % back";
      rungs.add(move("keep-back", words, percent + " %", upset, old -> old.withKeepBack(value)));
    }
    return rungs;
  }

  private static Move move(
      String rule, String words, String value, int upset, UnaryOperator<Rules> change) {
    return new Move(
        new Remedy.Step(words, BriefPath.of("rules", rule), Optional.of(value), List.of()),
        upset,
        brief -> brief.withRules(change.apply(brief.rules())));
  }
}
