package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import org.junit.jupiter.api.Test;

class RulePostingsTest {

  @Test
  void everyRuleHasOnePosting() {
    List<RuleId> rules = RulePostings.all().stream().map(RulePosting::rule).toList();
    assertEquals(RuleId.values().length, rules.size());
    assertEquals(EnumSet.allOf(RuleId.class), EnumSet.copyOf(rules));
  }

  @Test
  void linesHavePathsOfTheirOwnAndTheRuleOfTheirPosting() {
    for (long seed = 0; seed < 100; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      Set<BriefPath> paths = new HashSet<>();
      for (RulePosting posting : RulePostings.all()) {
        for (BriefLine line : posting.lines(blanket)) {
          assertEquals(posting.rule(), line.rule());
          assertTrue(paths.add(line.path()), "seed " + seed + ": twice " + line.path());
        }
      }
    }
  }
}
