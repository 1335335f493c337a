package lozengy.solver.explain.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Rules;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import org.junit.jupiter.api.Test;

/** What is asked in the rules and the look can be asked less of, line by line. */
class RelaxingTest {

  private static final int SEEDS = 300;

  /** That borders differ always holds. */
  private static final BriefPath ALWAYS = BriefPath.of("rules", "neighbour-borders");

  @Test
  void everyLineOfRulesAndLookHasARemedyThatChangesItAlone() throws Exception {
    Set<RuleId> seen = EnumSet.noneOf(RuleId.class);
    for (long seed = 1; seed <= SEEDS; seed++) {
      Brief brief = RandomLooks.of(seed, RandomBriefs.of(seed, 3, 6));
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      for (BriefLine line : RuleBook.lines(blanket)) {
        boolean rules = line.path().within(BriefPath.of("rules"));
        boolean look = line.path().within(BriefPath.of("look"));
        if (line.path().equals(ALWAYS) || !rules && !look) {
          continue;
        }
        seen.add(line.rule());
        List<Ladder> ladders = Relaxing.all(blanket, line);
        String told = "seed " + seed + ": " + line.path();
        assertEquals(1, ladders.size(), told);
        assertFalse(ladders.get(0).rungs().isEmpty(), told);
        for (Move move : ladders.get(0).rungs()) {
          Brief changed = move.change().apply(brief);
          assertEquals(
              List.of(rules ? "rules" : "look"), changes(Brief.class, brief, changed), told);
          List<String> fields =
              rules
                  ? changes(Rules.class, brief.rules(), changed.rules())
                  : changes(Look.class, brief.look(), changed.look());
          assertEquals(1, fields.size(), told + ": " + fields);
          others(blanket, Blanket.ofUnjudged(changed), line, told);
        }
      }
    }
    // lines of single pieces and yarns are no lines of the rules or the look
    Set<RuleId> others =
        EnumSet.of(RuleId.COMPLETE, RuleId.TONES, RuleId.BANS, RuleId.LOCKS, RuleId.PILE);
    assertEquals(EnumSet.complementOf(EnumSet.copyOf(others)), seen);
  }

  /** Of the same list, all other lines stay, wherever they stand then. */
  private static void others(Blanket before, Blanket after, BriefLine changed, String told) {
    List<Object> left = new ArrayList<>();
    RuleBook.rule(changed.rule()).lines(before).stream()
        .filter(line -> !line.path().equals(changed.path()))
        .forEach(line -> left.add(line.subject()));
    List<Object> now =
        RuleBook.rule(changed.rule()).lines(after).stream()
            .map(line -> (Object) line.subject())
            .toList();
    assertTrue(changed.rule() == RuleId.COUNTS || now.containsAll(left), told);
  }

  /** The components of a record that are not what they were. */
  private static List<String> changes(Class<?> type, Object before, Object after)
      throws ReflectiveOperationException {
    List<String> changed = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      Object was = component.getAccessor().invoke(before);
      if (!was.equals(component.getAccessor().invoke(after))) {
        changed.add(component.getName());
      }
    }
    return changed;
  }
}
