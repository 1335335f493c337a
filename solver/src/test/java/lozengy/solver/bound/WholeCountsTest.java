package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Round;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.score.Targets;
import lozengy.solver.JoinedInBorders;
import lozengy.solver.constraint.BlanketBuilder;
import org.junit.jupiter.api.Test;

/** Least imbalance of whole pieces against all ways to part the pieces of each kind. */
class WholeCountsTest {

  private static final int YARNS = 3;

  @Test
  void theLeastOfAllWaysToPartThePiecesIsFound() {
    int unbalanced = hold(13, 180);
    assertTrue(unbalanced > 20, "only " + unbalanced + " had to be unbalanced");
  }

  @Test
  void theLeastOfAFewIsFound() {
    assertTrue(hold(1, 12) > 1, "none had to be unbalanced");
  }

  /** How many of some seeds had to be unbalanced. */
  private static int hold(long first, long last) {
    int unbalanced = 0;
    for (long seed = first; seed <= last; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Blanket blanket = blanket(random);
      WholeCounts whole = new WholeCounts(blanket, Targets.of(blanket), 0);
      int least = leastOfAll(blanket);
      if (least < Integer.MAX_VALUE) {
        assertEquals(least, whole.over(), "seed " + seed);
        unbalanced += least > 0 ? 1 : 0;
      } else {
        assertTrue(whole.over() > 0, "seed " + seed + ": nothing fits");
      }
    }
    return unbalanced;
  }

  private static BlanketBuilder row(int pieces, long ofA) {
    return BlanketBuilder.straight(1, pieces)
        .motif(PieceKind.SQUARE, BlanketBuilder.round(1000), BlanketBuilder.round(500))
        .yarn(Tone.MID, ofA)
        .yarns(1, Tone.MID, 1_000_000);
  }

  private static int over(Blanket blanket, int layer) {
    return new WholeCounts(blanket, Targets.of(blanket), layer).over();
  }

  /** Of six pieces each yarn should have three in each layer. */
  @Test
  void anEvenRowIsAsUnevenAsItsStock() {
    for (int pieces = 0; pieces <= 3; pieces++) {
      assertEquals(3 - pieces, over(row(6, 1000L * pieces).build(), 1));
      assertEquals(3 - pieces, over(row(6, 1000L * pieces + 999).build(), 1));
      assertEquals(3 - pieces, over(row(6, 500L * pieces).build(), 0));
    }
    assertEquals(0, over(row(6, 1_000_000).build(), 1));
    // what is fixed is taken off: two are made with it
    BlanketBuilder made = row(6, 1_000_000);
    for (int piece = 1; piece <= 5; piece++) {
      made.note("r" + piece + "c1", PieceState.MADE, "A", "A");
    }
    assertEquals(2, over(made.build(), 1));
    // banned from four, A has two at most
    BlanketBuilder banned = row(6, 1_000_000);
    for (int piece = 1; piece <= 4; piece++) {
      banned.ban("r" + piece + "c1", "A");
    }
    assertEquals(1, over(banned.build(), 0));
    // banned from all, nobody has its three
    banned.ban("r5c1", "A").ban("r6c1", "A");
    assertEquals(3, over(banned.build(), 1));
    // of five seams' ten ends each, a border takes one at the least
    Blanket joined = JoinedInBorders.of(row(6, 4000).build(), 0);
    long half = joined.borderSeams().halfMillimetres(0);
    int fewest = joined.borderSeams().halves(0);
    for (int piece = 1; piece < 6; piece++) {
      fewest = Math.min(fewest, joined.borderSeams().halves(piece));
    }
    long each = 500 + fewest * half;
    for (int pieces = 1; pieces <= 2; pieces++) {
      Blanket tight = JoinedInBorders.of(row(6, each * pieces).build(), 0);
      assertEquals(3 - pieces, over(tight, 0));
      assertEquals(4 - pieces, over(JoinedInBorders.of(row(6, each * pieces - 1).build(), 0), 0));
    }
    assertEquals(0, over(JoinedInBorders.of(row(6, 3000).build(), 0), 1));
  }

  /** Where there are too many steps to go, what was settled so far is told. */
  @Test
  void manyPiecesAreSettledAsFarAsTheStepsGo() {
    int over =
        over(
            BlanketBuilder.straight(12, 12)
                .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
                .yarn(Tone.MID, 5_000)
                .yarns(1, Tone.MID, 1_000_000)
                .build(),
            0);
    assertEquals(47, over);
  }

  /** One square and its four corners, tried one by one. */
  @Test
  void aSquareAndItsCornersAreSettledTogether() {
    int unbalanced = 0;
    for (long seed = 1; seed <= 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      BlanketBuilder builder =
          BlanketBuilder.filled(1, 1)
              .motif(PieceKind.SQUARE, BlanketBuilder.round(400 + random.nextInt(900)))
              .motif(PieceKind.CORNER_TRIANGLE, BlanketBuilder.round(400 + random.nextInt(900)));
      for (int yarn = 0; yarn < YARNS; yarn++) {
        builder.yarn(Tone.MID, 500 + random.nextInt(2500));
      }
      if (seed % 3 == 0) {
        builder.ban("r1c1", "B");
      }
      Blanket blanket = builder.build();
      int least = leastOfAll(blanket, new int[5], 0);
      int over = over(blanket, 0);
      assertEquals(least == Integer.MAX_VALUE ? over : least, over, "seed " + seed);
      assertTrue(least < Integer.MAX_VALUE || over > 2, "seed " + seed + ": " + over);
      unbalanced += least > 0 ? 1 : 0;
    }
    assertTrue(unbalanced > 20, "only " + unbalanced);
  }

  private static int leastOfAll(Blanket blanket, int[] shown, int piece) {
    int least = Integer.MAX_VALUE;
    if (piece == shown.length) {
      int[][] counts = new int[YARNS][PieceKind.values().length];
      for (int each = 0; each < shown.length; each++) {
        counts[shown[each]][blanket.kind(each).ordinal()]++;
      }
      return over(blanket, counts);
    }
    for (int yarn = 0; yarn < YARNS; yarn++) {
      if (blanket.domains().mayShow(piece, 0, yarn)) {
        shown[piece] = yarn;
        least = Math.min(least, leastOfAll(blanket, shown, piece + 1));
      }
    }
    return least;
  }

  /** Parts the kinds one after the other; counts by yarn and kind. */
  private static int leastOfAll(Blanket blanket) {
    int[] pieces = new int[PieceKind.values().length];
    int[][] least = new int[YARNS][pieces.length];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      pieces[blanket.kind(piece).ordinal()]++;
      int yarn = blanket.locked(piece, 0);
      if (yarn >= 0) {
        least[yarn][blanket.kind(piece).ordinal()]++;
      }
    }
    return part(blanket, pieces, least, new int[YARNS][pieces.length], 0);
  }

  private static int part(Blanket blanket, int[] pieces, int[][] least, int[][] counts, int kind) {
    if (kind == pieces.length) {
      return over(blanket, counts);
    }
    int best = Integer.MAX_VALUE;
    for (int one = least[0][kind]; one <= pieces[kind]; one++) {
      for (int two = least[1][kind]; one + two <= pieces[kind]; two++) {
        counts[0][kind] = one;
        counts[1][kind] = two;
        counts[2][kind] = pieces[kind] - one - two;
        if (counts[2][kind] >= least[2][kind]) {
          best = Math.min(best, part(blanket, pieces, least, counts, kind + 1));
        }
      }
    }
    return best;
  }

  private static int over(Blanket blanket, int[][] counts) {
    int[] wanted = Targets.of(blanket).counts()[0];
    int over = 0;
    for (int yarn = 0; yarn < YARNS; yarn++) {
      double used = blanket.fixedUse().millimetres(yarn);
      for (PieceKind kind : blanket.brief().motifs().keySet()) {
        used +=
            counts[yarn][kind.ordinal()] * (double) blanket.motifs().needMillimetres(kind, 0, yarn);
      }
      if (used > blanket.yarns().usableMillimetres(yarn)) {
        return Integer.MAX_VALUE;
      }
      over += Math.max(0, Arrays.stream(counts[yarn]).sum() - wanted[yarn]);
    }
    return over;
  }

  private static Blanket blanket(SplittableRandom random) {
    LayoutSize size =
        new LayoutSize(Setting.ON_POINT, 2, 1 + random.nextInt(2), true, random.nextBoolean());
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    long[] need = new long[PieceKind.values().length];
    for (PieceKind kind : PieceKind.values()) {
      need[kind.ordinal()] = 1000 + 500L * random.nextInt(8);
      Round round =
          new Round(EnumSet.allOf(Tone.class), new YarnAmount.Length(need[kind.ordinal()]));
      boolean square = kind == PieceKind.SQUARE;
      motifs.put(
          kind, new Motif(square ? OptionalDouble.of(10) : OptionalDouble.empty(), List.of(round)));
    }
    Blanket ample = Blanket.of(brief(size, motifs, 1_000_000, new long[YARNS]));
    long total = 0;
    for (int piece = 0; piece < ample.pieceCount(); piece++) {
      total += need[ample.kind(piece).ordinal()];
    }
    long[] less = random.longs(YARNS, 0, total / 4).toArray();
    return Blanket.of(brief(size, motifs, total / 2, less));
  }

  private static Brief brief(
      LayoutSize size, Map<PieceKind, Motif> motifs, long stock, long[] less) {
    List<Yarn> yarns = new ArrayList<>();
    for (int i = 0; i < YARNS; i++) {
      yarns.add(
          Yarn.of("Y" + i, new Srgb(i * 100, 200, 50))
              .withName("Yarn " + i)
              .withLeft(Optional.of(new YarnAmount.Length(stock - less[i])))
              .withShare(1 + i % 2));
    }
    PieceNote lock =
        new PieceNote(List.of("r1c1"), List.of(Optional.of("Y2")), PieceState.PLANNED, Set.of());
    return Brief.of("Whole", size, motifs, yarns)
        .withPrefer(new Preferences(Map.of()))
        .withPieces(List.of(lock));
  }
}
