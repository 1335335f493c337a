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
import org.junit.jupiter.api.Test;

/** Least imbalance of whole pieces against all ways to part the pieces of each kind. */
class WholeCountsTest {

  private static final int YARNS = 3;

  @Test
  void theLeastOfAllWaysToPartThePiecesIsFound() {
    int unbalanced = 0;
    for (long seed = 1; seed <= 180; seed++) {
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
    assertTrue(unbalanced > 20, "only " + unbalanced + " had to be unbalanced");
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
      double used = blanket.fixedUseMillimetres(yarn);
      for (PieceKind kind : blanket.brief().motifs().keySet()) {
        used += counts[yarn][kind.ordinal()] * (double) blanket.needMillimetres(kind, 0, yarn);
      }
      if (used > blanket.usableMillimetres(yarn)) {
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
