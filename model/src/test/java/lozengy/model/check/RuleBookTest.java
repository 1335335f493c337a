package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import org.junit.jupiter.api.Test;

/** What rules say of themselves, and faults of theirs. */
class RuleBookTest extends RuleTest {

  @Test
  void aRuleIsFoundByItsId() {
    for (RuleId id : RuleId.values()) {
      assertEquals(id, RuleBook.rule(id).id());
    }
    assertEquals("neighbour-borders", RuleId.NEIGHBOUR_BORDERS.word());
  }

  @Test
  void whatLocksCannotBreakByThemselves() {
    Set<RuleId> silent =
        RuleBook.rules().stream()
            .filter(rule -> !rule.judgesLocks())
            .map(Rule::id)
            .collect(Collectors.toSet());
    assertEquals(EnumSet.of(RuleId.COMPLETE, RuleId.YARN_TOTALS), silent);
  }

  @Test
  void whatToDoInsteadOfALock() {
    String other = "Hold another yarn there";
    Map<RuleId, String> told = new EnumMap<>(RuleId.class);
    for (RuleId id : RuleId.values()) {
      told.put(id, other);
    }
    told.put(RuleId.PILE, "Leave these places open, or take pieces off the pile");
    told.put(RuleId.BANS, other + ", or lift the ban");
    told.put(RuleId.TONES, other + ", or let the motif's round take its tone");
    told.put(RuleId.ZONES, other + ", or change the zone");
    told.put(RuleId.BORDERS, other + ", or change look.borders");
    told.put(RuleId.SYMMETRY, "Give both the same yarn, or change look.symmetry");
    told.put(RuleId.NEIGHBOUR_CENTRES, other + ", or change neighbour-centres");
    told.put(RuleId.APART, other + ", or change look.apart");
    told.put(RuleId.LOTS, other + ", or change lots");
    told.put(RuleId.WITHIN_PIECE, other + ", or change within-piece");
    told.put(RuleId.COUNTS, other + ", or change look.counts");
    told.put(RuleId.COPIES, other + ", or raise copies");
    for (Rule rule : RuleBook.rules()) {
      assertEquals(told.get(rule.id()), rule.insteadOfLock());
    }
  }

  /** By the table of the guide for developers: 3 points to let dye lots meet, 4 for centres. */
  @Test
  void linesThatAreGivenUpAsAWhole() {
    Brief brief = fiveSquares(2).build().brief();
    List<Yarn> yarns =
        brief.yarns().stream()
            .map(yarn -> yarn.code().equals("BAR") ? yarn.withLotOf(Optional.of("SND")) : yarn)
            .toList();
    Brief asking =
        brief.withYarns(yarns).withRules(brief.rules().withCentresDiffer(true).withLotsApart(true));
    Blanket blanket = Blanket.ofUnjudged(asking);
    Map<RuleId, Easing> easings = new EnumMap<>(RuleId.class);
    for (BriefLine line : RuleBook.lines(blanket)) {
      RuleBook.rule(line.rule()).easing(line).ifPresent(ease -> easings.put(line.rule(), ease));
    }
    assertEquals(EnumSet.of(RuleId.NEIGHBOUR_CENTRES, RuleId.LOTS), easings.keySet());
    Easing lots = easings.get(RuleId.LOTS);
    assertEquals(Optional.of("free"), lots.value());
    assertEquals(3, lots.upset());
    assertEquals(
        asking.withRules(asking.rules().withLotsApart(false)), lots.change().apply(asking));
    Easing centres = easings.get(RuleId.NEIGHBOUR_CENTRES);
    assertEquals(Optional.of("free"), centres.value());
    assertEquals(4, centres.upset());
    assertFalse(centres.change().apply(asking).rules().centresDiffer());
  }

  @Test
  void aFaultsCode() {
    assertEquals("within-piece", fault(new Fault.Plain()).code());
    assertEquals("neighbour-borders-too-alike", fault(new Fault.TooAlike()).code());
    Look.Count count = new Look.Count("MUD", Where.BORDERS, 1, OptionalInt.of(1));
    OptionalInt one = OptionalInt.of(1);
    assertEquals(
        "counts-too-few", fault(new Fault.Counted(count, one, OptionalInt.empty())).code());
    assertEquals(
        "counts-too-many", fault(new Fault.Counted(count, OptionalInt.empty(), one)).code());
  }

  @Test
  void whatAFaultSaysOfAnyPieces() {
    Fault fault = fault(new Fault.TooAlike());
    assertEquals(
        new Fault(RuleId.WITHIN_PIECE, List.of(), List.of(0, 1), List.of(2), new Fault.TooAlike()),
        fault.ofAnyPieces());
  }

  private static Fault fault(Fault.Detail detail) {
    return new Fault(RuleId.WITHIN_PIECE, List.of(3), List.of(0, 1), List.of(2), detail);
  }
}
