package lozengy.report;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.progress.LeastUpset;
import lozengy.model.progress.Upset;
import lozengy.model.score.Score;

/** Writes for a terminal what planning again has come to. */
public final class ReplanText {

  private static final int WIDEST = 2000;
  private static final String INDENT = "  ";

  private final ReplanComparison again;
  private final Blanket blanket;
  private final StringBuilder text = new StringBuilder();

  private ReplanText(ReplanComparison again) {
    this.again = again;
    this.blanket = again.arrangement().blanket();
  }

  /** The lines, each with a line break. */
  public static String of(ReplanComparison again) {
    ReplanText writer = new ReplanText(again);
    writer.pieces();
    writer.afresh();
    writer.score();
    return writer.text.toString();
  }

  private void pieces() {
    Upset upset = again.upset();
    line("What has changed: " + changed(upset));
    TextTable table = new TextTable(5, WIDEST);
    PilePlacement laid = PilePlacement.of(blanket, again.arrangement().sequences());
    for (Upset.Piece piece : upset.pieces()) {
      table.row(
          blanket.place(piece.piece()).name(),
          codes(piece.before()),
          "->",
          codes(piece.after()),
          laid.holds(piece.piece()) ? "from the pile" : "");
    }
    table.lines().forEach(row -> line(INDENT + row));
    if (upset.changedRounds() > 0) {
      line(least(again.least(), upset.changedRounds()));
    }
  }

  private static String least(LeastUpset least, int changed) {
    if (least.exact()) {
      return (least.rounds() == 0 ? "None" : least.rounds())
          + " had to change, "
          + changed
          + " did.";
    }
    if (least.rounds() == 0) {
      return "That any had to change is not proved; " + changed + " did.";
    }
    return "At least " + least.rounds() + " must change; " + changed + " did.";
  }

  private static String changed(Upset upset) {
    String added =
        upset.newRounds() == 0
            ? ""
            : "; " + Figures.count(upset.newRounds(), "round") + " had no yarn before";
    if (upset.pieces().isEmpty()) {
      return "nothing" + added;
    }
    String held =
        upset.heldRounds() == 0
            ? ""
            : " and " + Figures.count(upset.heldRounds(), "round") + " that locks hold now";
    return upset.changedRounds()
        + " of "
        + Figures.count(upset.freeRounds(), "free round")
        + held
        + ", in "
        + Figures.count(upset.pieces().size(), "piece")
        + added;
  }

  private String codes(List<Integer> yarns) {
    return yarns.stream()
        .map(yarn -> yarn == Sequences.OPEN ? "~" : blanket.yarn(yarn).code())
        .collect(Collectors.joining(" "));
  }

  private void afresh() {
    again
        .afresh()
        .ifPresent(
            afresh ->
                line(
                    "Solved afresh it would have been "
                        + afresh.upset().changedRounds()
                        + ". The score would be "
                        + Figures.fixed(afresh.total(), 1)
                        + "; it is "
                        + Figures.fixed(again.arrangement().score().total(), 1)
                        + "."));
  }

  private void score() {
    if (again.scoreBefore().isEmpty()) {
      return;
    }
    line("Why the score has moved (as if all had been kept, and now):");
    TextTable table = new TextTable(1, WIDEST);
    table.row("", "before", "now", "weight", "points");
    for (Part part : Part.OF_TOTAL) {
      Double now = again.arrangement().score().parts().get(part);
      double weight = blanket.brief().prefer().weight(part);
      if (now != null && weight > 0) {
        double before = again.scoreBefore().get().parts().get(part);
        table.row(
            part.word(),
            Figures.fixed(before, 1),
            Figures.fixed(now, 1),
            Figures.shortest(weight, 2),
            signed(again.points(part)));
      }
    }
    Score before = again.scoreBefore().get();
    Score now = again.arrangement().score();
    row(table, "total", before.total(), now.total());
    double weight = blanket.brief().prefer().weight(Part.KEEP);
    if (weight > 0) {
      table.row(
          Part.KEEP.word(),
          Figures.fixed(before.parts().get(Part.KEEP), 1),
          Figures.fixed(now.parts().get(Part.KEEP), 1),
          Figures.shortest(weight, 2),
          "");
      row(table, "with keep", before.objective(), now.objective());
    }
    table.lines().forEach(row -> line(INDENT + row));
  }

  private static void row(TextTable table, String name, double before, double now) {
    table.row(name, Figures.fixed(before, 1), Figures.fixed(now, 1), "", signed(now - before));
  }

  private static String signed(double points) {
    String figure = Figures.fixed(points, 2);
    return figure.startsWith("-") || figure.equals("0.00") ? figure : "+" + figure;
  }

  private void line(String words) {
    text.append(words).append('\n');
  }
}
