package lozengy.solver.constraint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Ground;
import lozengy.model.check.Rule;
import lozengy.model.check.RuleBook;
import org.junit.jupiter.api.Test;

class KindPostingsTest {

  @Test
  void everyKindIsPostedOrSaidByTheVariablesAndLoads() {
    Set<Class<?>> said = Set.of(Ground.May.class, Ground.Taken.class, Ground.Seams.class);
    assertEquals(
        Arrays.stream(Ground.class.getPermittedSubclasses()).collect(Collectors.toSet()),
        Stream.concat(KindPostings.kinds().stream(), said.stream()).collect(Collectors.toSet()));
  }

  @Test
  void linesHavePathsOfTheirOwnAndTheRuleThatTheyComeFrom() {
    for (long seed = 0; seed < 100; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      Set<Object> paths = new HashSet<>();
      for (Rule rule : RuleBook.rules()) {
        for (BriefLine line : rule.lines(blanket)) {
          assertEquals(rule.id(), line.rule());
          assertTrue(paths.add(line.path()), "seed " + seed + ": twice " + line.path());
        }
      }
    }
  }
}
