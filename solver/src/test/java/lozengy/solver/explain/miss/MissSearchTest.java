package lozengy.solver.explain.miss;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Check;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import org.junit.jupiter.api.Test;

/** A plan with open rounds breaks no rule, whichever rules a brief has. */
class MissSearchTest {

  private static final int SEEDS = 250;
  private static final int TURNS = 500;

  @Test
  void aNearestMissExistsWhereWhatIsWorkedBreaksNoRule() {
    Map<RuleId, Integer> asked = new EnumMap<>(RuleId.class);
    for (long seed = 1; seed <= SEEDS; seed++) {
      Brief brief = RandomLooks.of(seed, RandomBriefs.of(seed, 3, 5));
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      boolean sound =
          Check.faults(blanket, worked(blanket)).stream()
              .allMatch(fault -> fault.rule() == RuleId.COMPLETE);
      if (sound) {
        AtomicInteger turns = new AtomicInteger();
        assertTrue(
            MissSearch.of(blanket, 0, seed, () -> turns.incrementAndGet() > TURNS).isPresent(),
            "seed " + seed);
        RuleBook.lines(blanket).stream()
            .map(BriefLine::rule)
            .distinct()
            .forEach(rule -> asked.merge(rule, 1, Integer::sum));
      }
    }
    for (RuleId rule : RuleId.values()) {
      boolean needed = rule != RuleId.COMPLETE && rule != RuleId.PILE;
      assertTrue(!needed || asked.getOrDefault(rule, 0) >= 5, rule + " is asked too seldom");
    }
  }

  private static Sequences worked(Blanket blanket) {
    Sequences worked = blanket.open();
    for (int piece = 0; piece < worked.pieces(); piece++) {
      for (int round = 0; round < blanket.roundsWorked(piece); round++) {
        worked.set(piece, round, blanket.locked(piece, round));
      }
    }
    return worked;
  }
}
