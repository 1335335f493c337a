package lozengy.solver.explain.shortage;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.RuleId;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Finding.Slot;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.argument.Shortfall;
import lozengy.solver.explain.argument.StockReason.YarnShort;
import org.junit.jupiter.api.Test;

/** Sums of rounds against stock: by hand, and against all sets of yarns of tiny blankets. */
class CapacityTest {

  private static final long PLENTY = 1_000_000;
  private static final int A = 0;
  private static final int B = 1;
  private static final int C = 2;
  private static final int D = 3;

  /** Four squares of a light round of 1 m and a dark border of 2 m. */
  private static BlanketBuilder twoByTwo() {
    return BlanketBuilder.straight(2, 2)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(2000, Tone.DARK));
  }

  private static List<Finding> found(Capacity capacity, Blanket blanket) {
    return capacity.findings(Requirements.all(blanket));
  }

  private static Map<PieceKind, Map<Integer, List<Integer>>> squares(int round, Integer... pieces) {
    return Map.of(PieceKind.SQUARE, Map.of(round, List.of(pieces)));
  }

  private static Set<Slot> slots(int round, int... pieces) {
    Set<Slot> slots = new HashSet<>();
    IntStream.of(pieces).forEach(piece -> slots.add(new Slot(piece, round)));
    return slots;
  }

  private static BitSet set(int... yarns) {
    BitSet set = new BitSet();
    IntStream.of(yarns).forEach(set::set);
    return set;
  }

  @Test
  void darksThatFallShort() {
    Blanket enough = twoByTwo().yarns(2, Tone.DARK, 4_000).yarns(2, Tone.LIGHT, PLENTY).build();
    Blanket less = twoByTwo().yarns(2, Tone.DARK, 3_900).yarns(2, Tone.LIGHT, PLENTY).build();
    assertEquals(List.of(), found(Capacity.STOCK, enough));
    Finding finding = found(Capacity.STOCK, less).get(0);
    assertEquals(
        new YarnShort(
            squares(1, 0, 1, 2, 3),
            List.of(A, B),
            List.of(),
            false,
            Optional.of(new YarnShort.Amounts(8_000, 7_800, 0, 200)),
            100.0 * 8_000 / 7_800),
        finding.reason());
    assertEquals(slots(1, 0, 1, 2, 3), finding.slots());
    assertEquals(set(A, B), finding.yarns());
    assertEquals(Set.of(), finding.rules());
    // a ball holds 100 m and more, but all rounds together take 12 m
    assertEquals(
        Optional.of(new Shortfall(200, Map.of(A, 12_001L, B, 12_001L))), finding.shortfall());
    assertEquals(1, Capacity.STOCK.fewestOpen(less, finding));
    assertEquals(0, Capacity.WHOLE_ROUNDS.fewestOpen(less, finding));
  }

  @Test
  void eachSetOfYarnsIsToldByItself() {
    Blanket blanket =
        twoByTwo()
            .yarns(2, Tone.DARK, 3_900)
            .yarns(2, Tone.LIGHT, 1_500)
            .yarns(1, Tone.MID, PLENTY)
            .build();
    Set<YarnShort> told = new HashSet<>();
    found(Capacity.STOCK, blanket).forEach(finding -> told.add((YarnShort) finding.reason()));
    assertEquals(
        Set.of(
            new YarnShort(
                squares(0, 0, 1, 2, 3),
                List.of(C, D),
                List.of(),
                false,
                Optional.of(new YarnShort.Amounts(4_000, 3_000, 0, 1_000)),
                100.0 * 4_000 / 3_000),
            new YarnShort(
                squares(1, 0, 1, 2, 3),
                List.of(A, B),
                List.of(),
                false,
                Optional.of(new YarnShort.Amounts(8_000, 7_800, 0, 200)),
                100.0 * 8_000 / 7_800)),
        told);
  }

  /** The other three can only be A, for B is locked away from them; joining takes of it too. */
  @Test
  void onlyTheRoundsThatCanTakeNothingElseCount() {
    Blanket blanket =
        twoByTwo()
            .yarn(Tone.DARK, 6_999)
            .yarn(Tone.DARK, PLENTY)
            .yarns(2, Tone.LIGHT, PLENTY)
            .ban("r1c1", "B")
            .ban("r1c2", "B")
            .ban("r2c1", "B")
            .joining("A", 2.5)
            .build();
    // four seams of 10 cm at 2.5 m a metre take 1 m
    YarnShort told = (YarnShort) found(Capacity.STOCK, blanket).get(0).reason();
    assertEquals(squares(1, 0, 1, 2), told.served());
    assertEquals(List.of(A), told.whole());
    assertEquals(Optional.of(new YarnShort.Amounts(6_000, 5_999, 0, 1)), told.amounts());
  }

  /** Two borders can only be of the one yarn, which has 3 m of 4; the other is short with it. */
  @Test
  void yarnsThatCanBeLeftOutAreNotTold() {
    for (int only : new int[] {A, B}) {
      String other = only == A ? "B" : "A";
      Blanket blanket =
          twoByTwo()
              .yarn(Tone.DARK, only == A ? 3_000 : 3_900)
              .yarn(Tone.DARK, only == A ? 3_900 : 3_000)
              .yarns(2, Tone.LIGHT, PLENTY)
              .ban("r1c1", other)
              .ban("r1c2", other)
              .build();
      List<Finding> found = found(Capacity.STOCK, blanket);
      YarnShort told = (YarnShort) found.get(0).reason();
      assertEquals(List.of(only), told.whole());
      assertEquals(squares(1, 0, 1), told.served());
      assertEquals(Optional.of(new YarnShort.Amounts(4_000, 3_000, 0, 1_000)), told.amounts());
      assertEquals(1, found.size());
    }
  }

  /** Joining four seams of 10 cm at 30 m a metre takes 12 m: of A's 10 m nothing is left. */
  @Test
  void anOverdrawnYarnHasNothingRatherThanLess() {
    Blanket blanket =
        twoByTwo()
            .yarn(Tone.DARK, 10_000)
            .yarn(Tone.DARK, 3_900)
            .yarns(2, Tone.LIGHT, PLENTY)
            .joining("A", 30)
            .build();
    YarnShort told = (YarnShort) found(Capacity.STOCK, blanket).get(0).reason();
    assertEquals(Optional.of(new YarnShort.Amounts(8_000, 3_900, 0, 4_100)), told.amounts());
  }

  @Test
  void piecesOfAllGroupsAreToldInTheirOrder() {
    BlanketBuilder less = twoByTwo().yarns(2, Tone.DARK, 3_900).yarns(2, Tone.LIGHT, PLENTY);
    YarnShort told =
        (YarnShort) found(Capacity.STOCK, less.ban("r1c2", "A").build()).get(0).reason();
    assertEquals(squares(1, 0, 1, 2, 3), told.served());
    Blanket none = twoByTwo().yarns(2, Tone.DARK, 0).yarns(2, Tone.LIGHT, PLENTY).build();
    YarnShort nothing = (YarnShort) found(Capacity.STOCK, none).get(0).reason();
    assertEquals(Double.POSITIVE_INFINITY, nothing.percentNeeded());
  }

  /** Centres of A beside borders of A: what limits borders leaves the rounds within alone. */
  @Test
  void onlyBordersAreLimitedBySeams() {
    Blanket blanket =
        BlanketBuilder.straight(4, 2)
            .motif(PieceKind.SQUARE, round(1000), round(1000))
            .yarn(Tone.DARK, PLENTY)
            .yarn(Tone.DARK, 8_000)
            .build();
    assertEquals(List.of(), found(Capacity.BORDER_LIMITS, blanket));
  }

  @Test
  void remaindersThatNoWholeRoundCanUse() {
    Blanket blanket =
        twoByTwo()
            .yarn(Tone.DARK, 5_900)
            .yarn(Tone.DARK, 3_900)
            .yarns(2, Tone.LIGHT, PLENTY)
            .build();
    assertEquals(List.of(), found(Capacity.STOCK, blanket));
    Finding finding = found(Capacity.WHOLE_ROUNDS, blanket).get(0);
    assertEquals(
        new YarnShort(
            squares(1, 0, 1, 2, 3),
            List.of(A, B),
            List.of(),
            true,
            Optional.of(new YarnShort.Amounts(8_000, 6_000, 0, 2_000)),
            100.0 * 8_000 / 6_000),
        finding.reason());
    assertEquals(Optional.empty(), finding.shortfall());
    // a lock is there already: it leaves 3.9 m of A for one round more
    Blanket locked =
        twoByTwo()
            .yarn(Tone.DARK, 5_900)
            .yarn(Tone.DARK, 3_900)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c1", PieceState.PLANNED, null, "A")
            .build();
    YarnShort told = (YarnShort) found(Capacity.WHOLE_ROUNDS, locked).get(0).reason();
    assertEquals(Optional.of(new YarnShort.Amounts(8_000, 6_000, 0, 2_000)), told.amounts());
  }

  /** A could be on half of the eight borders at most, B has yarn for three. */
  @Test
  void bordersThatOneYarnCannotGive() {
    Blanket blanket =
        BlanketBuilder.straight(4, 2)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.DARK, PLENTY)
            .yarn(Tone.DARK, 3_000)
            .build();
    assertEquals(List.of(), found(Capacity.STOCK, blanket));
    assertEquals(List.of(), found(Capacity.WHOLE_ROUNDS, blanket));
    Finding finding = found(Capacity.BORDER_LIMITS, blanket).get(0);
    assertEquals(
        new YarnShort(
            squares(0, 0, 1, 2, 3, 4, 5, 6, 7),
            List.of(B),
            List.of(A),
            true,
            Optional.of(new YarnShort.Amounts(8_000, 3_000, 4_000, 1_000)),
            100.0 * 8_000 / 7_000),
        finding.reason());
    assertEquals(Set.of(RuleId.NEIGHBOUR_BORDERS), finding.rules());
    Blanket enough =
        BlanketBuilder.straight(4, 2)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(2, Tone.DARK, 4_000)
            .build();
    assertEquals(List.of(), found(Capacity.BORDER_LIMITS, enough));
    // of two squares one can be A, unless they are joined already
    BlanketBuilder two =
        BlanketBuilder.straight(2, 1).motif(PieceKind.SQUARE, round(1000)).yarn(Tone.DARK, PLENTY);
    YarnShort told = (YarnShort) found(Capacity.BORDER_LIMITS, two.build()).get(0).reason();
    assertEquals(Optional.of(new YarnShort.Amounts(2_000, 0, 1_000, 1_000)), told.amounts());
    two.note("r1c1", PieceState.JOINED, "A").note("r1c2", PieceState.JOINED, "A");
    assertEquals(List.of(), found(Capacity.BORDER_LIMITS, two.build()));
  }

  /** Rounds by weight: 10 g are 20 m of A (100 m a ball) and 22 m of B (110 m a ball). */
  @Test
  void weighedRoundsAreMeasuredInPartsOfTheWhole() {
    BlanketBuilder weighed =
        BlanketBuilder.straight(2, 2)
            .motif(PieceKind.SQUARE, new Round(Set.of(Tone.DARK), new YarnAmount.Weight(10_000)));
    Blanket fits = weighed.yarn(Tone.DARK, 40_000).yarn(Tone.DARK, 44_000).build();
    assertEquals(List.of(), found(Capacity.STOCK, fits));
    Blanket less =
        BlanketBuilder.straight(2, 2)
            .motif(PieceKind.SQUARE, new Round(Set.of(Tone.DARK), new YarnAmount.Weight(10_000)))
            .yarn(Tone.DARK, 49_980)
            .yarn(Tone.DARK, 22_000)
            .build();
    Finding finding = found(Capacity.STOCK, less).get(0);
    YarnShort told = (YarnShort) finding.reason();
    assertEquals(Optional.empty(), told.amounts());
    // 40 g needed, 24.99 g and 10 g there
    assertEquals(100 * 40 / 34.99, told.percentNeeded(), 1e-6);
    assertEquals(0, Capacity.STOCK.fewestOpen(less, finding));
    // a ball of 50 g would do for all
    assertEquals(1, finding.shortfall().orElseThrow().fewestBalls());
  }

  /** A set of yarns is short where the rounds that may take no other take more than it has. */
  @Test
  void whatIsToldIsAShortSetOfWhichNoneCanBeLeftOut() {
    int told = 0;
    int none = 0;
    for (long seed = 0; seed < 400; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      Requirements asked = Requirements.all(blanket);
      boolean lengths = true;
      for (PieceKind kind : PieceKind.values()) {
        lengths &=
            blanket.brief().motifs().get(kind) == null
                || blanket.motif(kind).rounds().stream()
                    .allMatch(each -> each.amount() instanceof YarnAmount.Length);
      }
      if (!lengths) {
        continue;
      }
      List<Finding> found = Capacity.STOCK.findings(asked);
      boolean any = false;
      for (int yarns = 1; yarns < 1 << blanket.yarnCount(); yarns++) {
        any |= missing(asked, yarns) > 0;
      }
      assertEquals(any, !found.isEmpty(), "seed " + seed);
      none += any ? 0 : 1;
      for (Finding finding : found) {
        YarnShort reason = (YarnShort) finding.reason();
        int yarns = reason.whole().stream().mapToInt(yarn -> 1 << yarn).sum();
        assertEquals(missing(asked, yarns), reason.amounts().orElseThrow().missing());
        assertEquals(missing(asked, yarns), finding.shortfall().orElseThrow().missing());
        for (int yarn : reason.whole()) {
          assertTrue(missing(asked, yarns & ~(1 << yarn)) <= 0, "seed " + seed);
        }
        told++;
      }
    }
    assertTrue(told > 20 && none > 20, told + " told, " + none + " none");
  }

  private static long missing(Requirements asked, int yarns) {
    Blanket blanket = asked.blanket();
    long missing = 0;
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      long has = blanket.yarns().usableMillimetres(yarn) - blanket.fixedUse().millimetres(yarn);
      missing -= (yarns >> yarn & 1) == 1 ? Math.max(0, has) : 0;
    }
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        int[] may = asked.direct().yarnsOf(piece, round);
        boolean only = may.length > 0 && IntStream.of(may).allMatch(y -> (yarns >> y & 1) == 1);
        missing += only ? blanket.motifs().needMillimetres(blanket.kind(piece), round, may[0]) : 0;
      }
    }
    return missing;
  }
}
