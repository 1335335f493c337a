package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.Rule;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.constraint.TinyPiles;
import org.junit.jupiter.api.Test;

/** Each rule says the same twice: by its check, and by what its lines come down to. */
class GroundingTest {

  private static final int SEEDS = 400;
  private static final int TRIES = 40;

  /** How often each rule was kept and broken, so that neither goes untested. */
  private final Map<RuleId, int[]> seen = new EnumMap<>(RuleId.class);

  @Test
  void everyRulesCheckSaysWhatItsLinesComeDownTo() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      for (Blanket blanket : blankets(seed)) {
        Map<RuleId, List<BriefLine>> lines = new EnumMap<>(RuleId.class);
        RuleBook.rules().forEach(rule -> lines.put(rule.id(), rule.lines(blanket)));
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < TRIES; i++) {
          agree(blanket, sequences(blanket, random, i % 4), lines, "seed " + seed + ", " + i);
        }
      }
    }
    for (Rule rule : RuleBook.rules()) {
      if (rule.id() == RuleId.COMPLETE) {
        continue;
      }
      int[] kept = seen.getOrDefault(rule.id(), new int[2]);
      assertTrue(
          kept[0] > 20, rule.id() + " was kept " + kept[0] + " times where it asks for something");
      assertTrue(kept[1] > 20, rule.id() + " was broken " + kept[1] + " times");
    }
  }

  @Test
  void onlyCompletenessAsksForNothingLineByLine() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      for (Blanket blanket : blankets(seed)) {
        for (Rule rule : RuleBook.rules()) {
          for (BriefLine line : rule.lines(blanket)) {
            assertFalse(line.grounds().isEmpty(), "seed " + seed + ": " + line.path());
            assertFalse(rule.id() == RuleId.COMPLETE);
          }
        }
      }
    }
  }

  private void agree(
      Blanket blanket, Sequences sequences, Map<RuleId, List<BriefLine>> all, String told) {
    for (Rule rule : RuleBook.rules()) {
      List<BriefLine> lines = all.get(rule.id());
      boolean kept = rule.faults(blanket, sequences).isEmpty();
      assertEquals(kept, GroundJudge.holds(blanket, sequences, lines), told + ": " + rule.id());
      if (!lines.isEmpty()) {
        seen.computeIfAbsent(rule.id(), id -> new int[2])[kept ? 0 : 1]++;
      }
    }
  }

  private static List<Blanket> blankets(long seed) {
    List<Blanket> blankets = new ArrayList<>();
    blankets.add(TinyBlankets.of(seed));
    blankets.add(TinyPiles.of(seed));
    blankets.add(TinyPiles.looked(seed));
    Brief brief = RandomLooks.of(seed, RandomBriefs.of(seed, 3, 6));
    if (BriefJudge.mistakes(brief).isEmpty()) {
      blankets.add(Blanket.of(brief));
    }
    return blankets;
  }

  /**
   * Random yarns: any, or what single rounds may take, in one of two colours or the same in pieces
   * that are images; and now and then a piece of the pile.
   */
  private static Sequences sequences(Blanket blanket, SplittableRandom random, int how) {
    Sequences sequences = blanket.open();
    RoundYarns direct = RoundYarns.direct(blanket);
    int few = 1 + random.nextInt(blanket.yarnCount());
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int[] may = direct.yarnsOf(piece, round);
        boolean any = how == 0 || may.length == 0;
        int yarn = any ? random.nextInt(few) : may[random.nextInt(may.length)];
        int lead = blanket.orbits().lead(piece);
        boolean image = how == 2 && lead < piece;
        sequences.set(piece, round, image ? sequences.yarn(lead, round) : yarn);
      }
      if (how == 3 && blanket.domains().takesPile(piece)) {
        PieceKind kind = blanket.kind(piece);
        List<int[]> stacks =
            blanket.pile().stacks().stream()
                .filter(stack -> stack.kind() == kind)
                .map(stack -> stack.yarns())
                .toList();
        int[] stack = stacks.get(random.nextInt(stacks.size()));
        for (int round = 0; round < stack.length; round++) {
          sequences.set(piece, round, stack[round]);
        }
      }
    }
    return sequences;
  }
}
