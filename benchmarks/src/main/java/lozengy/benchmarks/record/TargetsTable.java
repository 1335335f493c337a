package lozengy.benchmarks.record;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import lozengy.benchmarks.record.WholeRuns.Run;

/**
 * What whole solves are to reach beside CP-SAT, and how far that is so: a line a target, worked out
 * from the rows, with the briefs where it is missed.
 */
final class TargetsTable {

  private static final String OURS = "lozengy";
  private static final String FIRST = "lozengy-first";
  private static final String PEER = "cp-sat";
  private static final double SHORT = 0.3;
  private static final double LONG = 10;

  /** Points that a bound proved by one may lie below what another reaches: both are rounded. */
  private static final double ROUNDING = 0.001;

  private final WholeRuns runs;
  private final MarkdownTable table =
      new MarkdownTable(List.of("target", "found", "briefs that reach it", "missed at"));

  private TargetsTable(WholeRuns runs) {
    this.runs = runs;
  }

  static String of(WholeRuns runs) {
    TargetsTable targets = new TargetsTable(runs);
    if (!runs.solvers().contains(OURS)) {
      return "";
    }
    targets.firstValid();
    targets.shortAgainstPeer();
    targets.ahead();
    targets.gap();
    targets.bounds();
    return targets.table.text();
  }

  /** How often a target is reached: counts briefs, and keeps the names of those that miss it. */
  private static final class Reached {
    private int briefs;
    private final List<String> missed = new ArrayList<>();

    void add(String brief, boolean reached) {
      briefs++;
      if (!reached) {
        missed.add(brief);
      }
    }

    List<String> cells() {
      return List.of(
          "%d of %d".formatted(briefs - missed.size(), briefs), String.join(", ", missed));
    }
  }

  private void row(String target, String found, Reached reached) {
    List<String> cells = new ArrayList<>(List.of(target, found));
    cells.addAll(reached.cells());
    table.row(cells);
  }

  /** Our last first valid arrangement against the peer's only or median one. */
  private void firstValid() {
    Reached reached = new Reached();
    List<Double> ours = new ArrayList<>();
    List<Double> last = new ArrayList<>();
    for (String brief : runs.briefs().keySet()) {
      List<Run> first = runs.of(brief, FIRST);
      List<Double> times = WholeRuns.present(first.stream().map(Run::firstValid).toList());
      List<Double> peers =
          WholeRuns.present(runs.of(brief, PEER).stream().map(Run::firstValid).toList());
      if (first.isEmpty()) {
        continue;
      }
      boolean all = times.size() == first.size();
      ours.addAll(times);
      if (all) {
        last.add(Collections.max(times));
      }
      reached.add(
          brief, all && (peers.isEmpty() || Collections.max(times) <= Figures.median(peers)));
    }
    if (reached.briefs > 0) {
      row(
          "first valid arrangement: the last of our seeds no later than CP-SAT's",
          ours.isEmpty()
              ? Figures.NONE
              : "median %s s, last %s"
                  .formatted(
                      Figures.number(Figures.median(ours), 3),
                      reached.briefs > last.size()
                          ? Figures.NONE
                          : Figures.number(Collections.max(last), 3) + " s"),
          reached);
    }
  }

  /** Our worst seed after a third of a second against the peer's end. */
  private void shortAgainstPeer() {
    Reached reached = new Reached();
    List<Double> differences = new ArrayList<>();
    for (String brief : runs.briefs().keySet()) {
      OptionalDouble worst = worst(runs.of(brief, OURS, SHORT));
      OptionalDouble peer = median(brief, PEER);
      if (runs.of(brief, OURS, SHORT).isEmpty() || runs.of(brief, PEER).isEmpty()) {
        continue;
      }
      reached.add(
          brief,
          worst.isPresent() && (peer.isEmpty() || worst.getAsDouble() >= peer.getAsDouble()));
      if (worst.isPresent() && peer.isPresent()) {
        differences.add(worst.getAsDouble() - peer.getAsDouble());
      }
    }
    if (reached.briefs > 0) {
      row(
          "0.3 s: our worst seed at least CP-SAT's end (%s s)".formatted(longest(PEER)),
          differences.isEmpty()
              ? Figures.NONE
              : "median difference %s, least %s"
                  .formatted(
                      Figures.number(Figures.median(differences), 2),
                      Figures.number(Collections.min(differences), 2)),
          reached);
    }
  }

  /** How far ahead of the peer's end we are after ten seconds. */
  private void ahead() {
    Reached reached = new Reached();
    List<Double> differences = new ArrayList<>();
    for (String brief : runs.briefs().keySet()) {
      List<Run> ours = runs.of(brief, OURS, LONG);
      OptionalDouble peer = median(brief, PEER);
      List<Double> scores = WholeRuns.present(ours.stream().map(Run::score).toList());
      if (peer.isPresent() && !ours.isEmpty()) {
        boolean all = scores.size() == ours.size();
        double difference = all ? Figures.median(scores) - peer.getAsDouble() : Double.NaN;
        reached.add(brief, difference >= 0);
        if (all) {
          differences.add(difference);
        }
      }
    }
    if (!differences.isEmpty()) {
      row(
          "10 s: our median over CP-SAT's end, where it has one (%s s)".formatted(longest(PEER)),
          "median over the set %s, least %s"
              .formatted(
                  Figures.number(Figures.median(differences), 2),
                  Figures.number(Collections.min(differences), 2)),
          reached);
    }
  }

  /** How far our bound lies above our score after ten seconds. */
  private void gap() {
    List<Double> gaps = new ArrayList<>();
    Reached bounded = new Reached();
    for (String brief : runs.briefs().keySet()) {
      List<Run> ours = runs.of(brief, OURS, LONG);
      List<Double> here = new ArrayList<>();
      for (Run run : ours) {
        if (run.score().isPresent() && run.bound().isPresent()) {
          here.add(run.bound().getAsDouble() - run.score().getAsDouble());
        }
      }
      if (!ours.isEmpty()) {
        bounded.add(brief, here.size() == ours.size() && Collections.min(here) >= -ROUNDING);
      }
      if (!here.isEmpty()) {
        gaps.add(Figures.median(here));
      }
    }
    if (!gaps.isEmpty()) {
      row(
          "10 s: every run ends with a bound, none below its score",
          "bound over score: median of the set %s, largest %s points"
              .formatted(
                  Figures.number(Figures.median(gaps), 2),
                  Figures.number(Collections.max(gaps), 2)),
          bounded);
    }
  }

  /** No bound of ours below anything that any solver reached, and none of the peer's below ours. */
  private void bounds() {
    Reached ours = new Reached();
    Reached tighter = new Reached();
    for (String brief : runs.briefs().keySet()) {
      double best =
          runs.solvers().stream()
              .flatMap(solver -> runs.of(brief, solver).stream())
              .map(Run::score)
              .filter(OptionalDouble::isPresent)
              .mapToDouble(OptionalDouble::getAsDouble)
              .max()
              .orElse(Double.NEGATIVE_INFINITY);
      List<Double> bounds =
          WholeRuns.present(runs.of(brief, OURS).stream().map(Run::bound).toList());
      List<Double> peers =
          WholeRuns.present(runs.of(brief, PEER).stream().map(Run::bound).toList());
      if (bounds.isEmpty()) {
        continue;
      }
      ours.add(brief, Collections.min(bounds) >= best - ROUNDING);
      List<Double> last =
          WholeRuns.present(
              runs.of(brief, OURS, runs.longest(OURS)).stream().map(Run::bound).toList());
      if (!peers.isEmpty() && !last.isEmpty()) {
        tighter.add(brief, Figures.median(last) <= Collections.min(peers));
      }
    }
    row("no bound of ours below what any solver reached", "", ours);
    if (tighter.briefs > 0) {
      row("our bound at most CP-SAT's own, where it has one", "", tighter);
    }
  }

  private String longest(String solver) {
    return Figures.plain(runs.longest(solver));
  }

  /** The worst of all; none where one brought nothing valid. */
  private static OptionalDouble worst(List<Run> of) {
    List<Double> scores = WholeRuns.present(of.stream().map(Run::score).toList());
    return scores.isEmpty() || scores.size() < of.size()
        ? OptionalDouble.empty()
        : OptionalDouble.of(Collections.min(scores));
  }

  private OptionalDouble median(String brief, String solver) {
    List<Double> scores =
        WholeRuns.present(
            runs.of(brief, solver, runs.longest(solver)).stream().map(Run::score).toList());
    return scores.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Figures.median(scores));
  }
}
