package lozengy.report.substitute;

import static lozengy.report.TextTable.NONE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.progress.Upset;
import lozengy.model.score.Score;
import lozengy.model.yarn.Purchase;
import lozengy.model.yarn.Substitute;
import lozengy.report.Amount;
import lozengy.report.Figures;
import lozengy.report.Paragraph;
import lozengy.report.PlainText;
import lozengy.report.TextTable;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveResult;
import lozengy.solver.substitute.Substitution;
import lozengy.solver.substitute.Substitution.Mixture;
import lozengy.solver.substitute.Substitution.Shade;
import lozengy.solver.substitute.Substitution.Trial;
import lozengy.solver.substitute.Substitution.Tried;

/** Tells a person what may stand in for shades that are gone. */
public final class SubstituteText {

  private static final int WIDEST_NAME = 18;

  /** A narrower screen gets lines for each shade in place of a row. */
  private static final int LEAST_FOR_TABLE = 72;

  /** Points that say little. */
  private static final double LITTLE = 0.5;

  private static final String INDENT = "  ";

  private final Substitution found;
  private final Blanket blanket;
  private final int columns;
  private final List<String> lines = new ArrayList<>();

  private SubstituteText(Substitution found, int columns) {
    this.found = found;
    this.blanket = found.blanket();
    this.columns = columns;
  }

  /**
   * What was found.
   *
   * @param columns how many characters fit on a line
   */
  public static List<String> lines(Substitution found, int columns) {
    SubstituteText text = new SubstituteText(found, columns);
    text.write();
    return text.lines;
  }

  private void write() {
    say(
        PlainText.oneLine(blanket.brief().title())
            + found
                .before()
                .map(score -> ": score " + points(score) + (found.again() ? " as it stands" : ""))
                .orElse(": with what is gone nothing fits, or nothing was found"));
    for (Shade shade : found.shades()) {
      lines.add("");
      shade(shade);
    }
    found.without().ifPresent(this::without);
    legend();
  }

  private void shade(Shade shade) {
    String name = Words.yarn(blanket, shade.yarn());
    if (shade.needMillimetres() == 0) {
      say(name + " is in nothing that is still to be worked: nothing has to stand in for it.");
      return;
    }
    say(
        "In place of "
            + name
            + ", "
            + blanket.yarns().tone(shade.yarn()).word()
            + ", "
            + Amount.metres(shade.needMillimetres())
            + " still to be worked:");
    if (shade.tried().isEmpty()) {
      say("No other shade is " + blanket.yarns().tone(shade.yarn()).word() + ".");
      return;
    }
    if (columns >= LEAST_FOR_TABLE) {
      table(shade);
    } else {
      shade.tried().forEach(this::stacked);
    }
    shortOnes(shade);
    shade.mixture().ifPresent(each -> mixture(shade, each));
    tooLittle(shade);
    untried(shade);
  }

  private void table(Shade shade) {
    TextTable table = new TextTable(2, WIDEST_NAME);
    row(table, "", "shade", "differs", "to be had", "score", "change", "pieces", "besides");
    for (Tried each : shade.tried()) {
      Optional<Upset> upset = each.trial().upset();
      row(
          table,
          blanket.yarn(each.substitute().yarn()).code(),
          blanket.yarn(each.substitute().yarn()).name(),
          Figures.fixed(each.substitute().difference(), 1),
          toBeHad(each.substitute()),
          each.trial().score().map(SubstituteText::points).orElse("none"),
          change(each.trial()).orElse(NONE),
          upset.map(u -> Integer.toString(u.pieces().size())).orElse(NONE),
          upset.map(u -> Integer.toString(each.trial().beyondPieces())).orElse(NONE));
    }
    table.lines().forEach(row -> lines.add(INDENT + row));
    for (Tried each : shade.tried()) {
      if (each.trial().score().isEmpty()) {
        say(blanket.yarn(each.substitute().yarn()).code() + ": " + outcome(each.trial()));
      }
    }
  }

  /** Without a plan there is nothing that changes. */
  private void row(TextTable table, String... cells) {
    table.row(found.again() ? cells : Arrays.copyOf(cells, cells.length - 2));
  }

  private void stacked(Tried each) {
    Substitute substitute = each.substitute();
    say(Words.yarn(blanket, substitute.yarn()));
    indented(
        "differs "
            + Figures.fixed(substitute.difference(), 1)
            + ", to be had "
            + toBeHad(substitute));
    indented(outcome(each.trial()));
  }

  private String toBeHad(Substitute each) {
    if (each.toBuy()) {
      return balls(each.ballsToTake())
          .map(balls -> "buy " + balls)
          .orElseGet(() -> "buy " + Amount.metres(each.wholeMillimetres(blanket)));
    }
    return found.plenty() ? "plenty" : Amount.metres(each.spareMillimetres());
  }

  private static Optional<String> balls(OptionalLong balls) {
    return balls.isPresent()
        ? Optional.of(Figures.count(balls.getAsLong(), "ball"))
        : Optional.empty();
  }

  /** What came of a trial, in words. */
  private String outcome(Trial trial) {
    return outcome(trial, true);
  }

  private String outcome(Trial trial, boolean apart) {
    if (trial.score().isEmpty()) {
      return notFound(trial);
    }
    String moved = change(trial).map(each -> " (" + each + ")").orElse("");
    return "score "
        + points(trial.score().get())
        + moved
        + trial
            .upset()
            .map(
                upset ->
                    ", "
                        + Figures.count(upset.pieces().size(), "piece")
                        + (upset.pieces().size() == 1 ? " changes" : " change")
                        + (apart ? besides(trial) : ""))
            .orElse("");
  }

  private static String besides(Trial trial) {
    return trial.beyondPieces() == 0 ? "" : ", " + trial.beyondPieces() + " of them besides";
  }

  private static String notFound(Trial trial) {
    boolean proved = trial.result() instanceof SolveResult.Impossible;
    List<String> reasons =
        trial.result() instanceof SolveResult.Impossible impossible
            ? new Wording(trial.blanket()).of(impossible)
            : List.of();
    return (proved ? "no arrangement fits, proved" : "no arrangement was found, nothing is proved")
        + (reasons.isEmpty() ? "" : ": " + reasons.get(0));
  }

  private Optional<String> change(Trial trial) {
    Optional<Score> before = found.before();
    return before.isEmpty() || trial.score().isEmpty()
        ? Optional.empty()
        : Optional.of(signed(trial.score().get().total() - before.get().total()));
  }

  private static String signed(double points) {
    String figure = Figures.fixed(points, 1);
    return figure.startsWith("-") || figure.equals("0.0") ? figure : "+" + figure;
  }

  private static String points(Score score) {
    return Figures.fixed(score.total(), 1);
  }

  /** Which of them lacks how much, and whether it was found to do nevertheless. */
  private void shortOnes(Shade shade) {
    List<String> lacking = new ArrayList<>();
    for (Tried each : shade.tried()) {
      each.substitute().lacks(blanket).ifPresent(more -> lacking.add(lack(each, more)));
    }
    if (!lacking.isEmpty()) {
      say(
          "Not enough to stand in for all: "
              + String.join("; ", lacking)
              + ". Where a score is given, other shades take the rest.");
    }
  }

  private String lack(Tried each, Purchase more) {
    return blanket.yarn(each.substitute().yarn()).code()
        + " lacks "
        + Amount.metres(more.toldMillimetres())
        + balls(more.balls()).map(balls -> ", " + balls).orElse("");
  }

  private void mixture(Shade shade, Mixture mixture) {
    String codes = codes(mixture, " and ");
    say(
        "None has enough alone; "
            + codes
            + " have it together: "
            + outcome(mixture.trial())
            + ". Take them with "
            + take(shade, codes(mixture, ","))
            + ".");
  }

  /** Where all of them together have not enough. */
  private void tooLittle(Shade shade) {
    List<Substitute> all = new ArrayList<>(shade.untried());
    shade.tried().forEach(each -> all.add(each.substitute()));
    boolean taken = found.without().isEmpty();
    if (taken || shade.mixture().isPresent() || all.stream().anyMatch(Substitute::enough)) {
      return;
    }
    long sum = all.stream().mapToLong(Substitute::spareMillimetres).sum();
    say(
        "All shades of this tone together have "
            + Amount.metres(sum)
            + " to spare, and that is not enough.");
  }

  private String take(Shade shade, String codes) {
    return "--take " + blanket.yarn(shade.yarn()).code() + "=" + codes;
  }

  private String codes(Mixture mixture, String between) {
    return mixture.parts().stream()
        .map(each -> blanket.yarn(each.yarn()).code())
        .collect(Collectors.joining(between));
  }

  private void untried(Shade shade) {
    if (shade.untried().isEmpty()) {
      return;
    }
    Substitute next = shade.untried().get(0);
    int count = shade.untried().size();
    say(
        Figures.count(count, "more shade")
            + (count == 1 ? " of this tone was" : " of this tone were")
            + " not tried, "
            + (count == 1 ? "" : "the next of them ")
            + Words.yarn(blanket, next.yarn())
            + ", "
            + Figures.fixed(next.difference(), 1)
            + " away; --try tries more.");
  }

  private void without(Trial trial) {
    lines.add("");
    long gone = found.shades().size();
    say(
        "With nothing in "
            + (gone == 1 ? "its" : "their")
            + " place: "
            + outcome(trial, false)
            + ".");
  }

  private void legend() {
    boolean many = found.shades().stream().filter(each -> !each.tried().isEmpty()).count() > 1;
    if (many && found.without().isPresent()) {
      say(
          "While one is tried, the others that are gone have the nearest in their place that has"
              + " enough.");
    }
    if (found.shades().stream().allMatch(each -> each.tried().isEmpty())) {
      return;
    }
    hint();
    lines.add("");
    say(
        "differs: from the colour that is gone (CIEDE2000). to be had: what may be used of it, by"
            + " its length, beyond what is planned with it.");
    say(
        found.again()
            ? "pieces: that change, those that take the new shade for the old included; besides: those"
                + " that change in other ways too."
            : "Each is solved afresh: half a point more or less says little.");
  }

  /** How to go on with the first of those that are as good as the best, to half a point. */
  private void hint() {
    if (found.without().isEmpty()) {
      return;
    }
    List<String> takes = new ArrayList<>();
    for (Shade shade : found.shades()) {
      double best = shade.tried().stream().mapToDouble(SubstituteText::total).max().orElse(0);
      shade.tried().stream()
          .filter(each -> total(each) >= Math.max(0, best - LITTLE))
          .findFirst()
          .ifPresent(each -> takes.add(take(shade, blanket.yarn(each.substitute().yarn()).code())));
    }
    if (!takes.isEmpty()) {
      say("To take one and go on: " + String.join(" ", takes));
    }
  }

  private static double total(Tried tried) {
    return tried.trial().score().map(Score::total).orElse(-1.0);
  }

  private void say(String words) {
    lines.addAll(Paragraph.lines(Math.max(1, columns - 1), "", INDENT, words));
  }

  private void indented(String words) {
    lines.addAll(Paragraph.lines(Math.max(1, columns - 1), INDENT, INDENT + INDENT, words));
  }
}
