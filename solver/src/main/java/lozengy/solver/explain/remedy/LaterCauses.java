package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lozengy.model.check.BriefLine;
import lozengy.model.input.BriefPath;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Reason;

/**
 * Causes that come to light once others are mended, and are no part of these: neither do they say
 * what was said before, nor are they about a stock that another was about.
 */
final class LaterCauses {

  private final Set<Object> said = new HashSet<>();
  private final Set<List<BriefPath>> lines = new HashSet<>();
  private final BitSet stocks = new BitSet();
  private final List<Cause> causes = new ArrayList<>();

  /**
   * Starts with what is known at first.
   *
   * @param findings all findings against the brief
   * @param first the causes that are told of them
   */
  LaterCauses(Map<Argument, List<Finding>> findings, List<Cause> first) {
    know(findings, first);
  }

  /** The causes that are new, in the order in which they came to light. */
  List<Cause> causes() {
    return causes;
  }

  /** Adds causes of a brief in which others are mended. */
  void add(Map<Argument, List<Finding>> findings, List<Cause> found) {
    found.stream().filter(this::isNew).forEach(causes::add);
    know(findings, found);
  }

  private boolean isNew(Cause cause) {
    return cause.first().map(Reason::matter).filter(said::contains).isEmpty()
        && !lines.contains(paths(cause))
        && !cause.stocks().intersects(stocks);
  }

  private void know(Map<Argument, List<Finding>> findings, List<Cause> told) {
    findings.values().forEach(all -> all.forEach(finding -> said.add(finding.reason().matter())));
    for (Cause cause : told) {
      lines.add(paths(cause));
      stocks.or(cause.stocks());
    }
  }

  private static List<BriefPath> paths(Cause cause) {
    return cause.conflict().lines().stream().map(BriefLine::path).toList();
  }
}
