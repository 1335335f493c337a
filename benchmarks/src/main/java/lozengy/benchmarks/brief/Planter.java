package lozengy.benchmarks.brief;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.Pairs;

/**
 * Plants an arrangement that keeps every rule but for the stock, which is then made to fit it.
 * Piece by piece in reading order, border first, each round takes the yarn that has been used the
 * least for its weight, with some chance; a piece that comes out as a copy too many is dealt again.
 * Not meant to score well.
 */
public final class Planter {

  private static final int TRIES = 2000;

  /** Draws of a border for each piece, where borders come first. */
  private static final int BORDER_TURNS = 60;

  private final Blanket blanket;
  private final double[] weights;
  private final SplittableRandom random;
  private final Set<Integer>[] seams;
  private final double[][] used;
  private final Sequences planted;
  private final Map<List<Integer>, Integer> copies = new HashMap<>();
  private boolean bordersPlanted;

  /**
   * Makes a planter.
   *
   * @param blanket a blanket; its stock is not looked at, and a lock only when its piece is dealt
   * @param weights how much of each yarn to use against the others, above 0
   * @param random source of chance
   */
  public Planter(Blanket blanket, double[] weights, SplittableRandom random) {
    this.blanket = blanket;
    this.weights = weights;
    this.random = random;
    this.seams = neighbours(blanket);
    this.used = new double[blanket.layerCount()][blanket.yarnCount()];
    this.planted = blanket.open();
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Set<Integer>[] neighbours(Blanket blanket) {
    Set<Integer>[] seams = new Set[blanket.pieceCount()];
    Arrays.setAll(seams, piece -> new HashSet<>());
    Pairs pairs = blanket.layout().seams();
    for (int i = 0; i < pairs.size(); i++) {
      seams[pairs.first()[i]].add(pairs.second()[i]);
      seams[pairs.second()[i]].add(pairs.first()[i]);
    }
    return seams;
  }

  /**
   * Plants.
   *
   * @throws IllegalStateException if a piece finds no sequence; other weights or another source of
   *     chance may help
   */
  public Sequences plant() {
    Comparator<Integer> reading = Comparator.comparing(piece -> blanket.place(piece).y());
    IntStream.range(0, blanket.pieceCount())
        .boxed()
        .sorted(reading.thenComparing(piece -> blanket.place(piece).x()))
        .forEach(this::plant);
    return planted;
  }

  /**
   * Plants all borders beforehand, where there are few yarns for them: the sides of the layout,
   * which is bipartite, take two yarns that may meet, and then single borders are drawn anew by
   * weight among those that their neighbours leave.
   *
   * @throws IllegalStateException if no two yarns may meet everywhere
   */
  void plantBorders() {
    int[] side = sides();
    int[] pair = pairThatMeets();
    for (int piece = 0; piece < side.length; piece++) {
      planted.set(piece, planted.rounds(piece) - 1, pair[side[piece]]);
    }
    for (int turn = 0; turn < BORDER_TURNS * side.length; turn++) {
      int piece = random.nextInt(side.length);
      int border = planted.rounds(piece) - 1;
      planted.set(piece, border, drawBorder(piece));
    }
    bordersPlanted = true;
  }

  private int drawBorder(int piece) {
    int border = planted.rounds(piece) - 1;
    double[] upTo = new double[weights.length];
    double sum = 0;
    for (int yarn = 0; yarn < weights.length; yarn++) {
      sum += fits(piece, border, yarn) ? weights[yarn] : 0;
      upTo[yarn] = sum;
    }
    double drawn = random.nextDouble() * sum;
    return (int) Arrays.stream(upTo).filter(each -> each <= drawn).count();
  }

  /** By piece, 0 or 1: never the same on a seam. */
  private int[] sides() {
    int[] side = new int[seams.length];
    Arrays.fill(side, -1);
    for (int first = 0; first < side.length; first++) {
      if (side[first] >= 0) {
        continue;
      }
      side[first] = 0;
      Deque<Integer> reached = new ArrayDeque<>(List.of(first));
      while (!reached.isEmpty()) {
        int piece = reached.remove();
        for (int other : seams[piece]) {
          if (side[other] < 0) {
            side[other] = 1 - side[piece];
            reached.add(other);
          }
        }
      }
    }
    return side;
  }

  private int[] pairThatMeets() {
    for (int a = 0; a < weights.length; a++) {
      for (int b = 0; b < a; b++) {
        if (!blanket.yarns().sameBorder(a, b) && mayBorder(a) && mayBorder(b)) {
          return new int[] {b, a};
        }
      }
    }
    throw new IllegalStateException("no two border yarns may meet");
  }

  private boolean mayBorder(int yarn) {
    return IntStream.range(0, planted.pieces())
        .allMatch(
            piece ->
                blanket.motifs().toneAllows(blanket.kind(piece), planted.rounds(piece) - 1, yarn));
  }

  private void plant(int piece) {
    for (int attempt = 0; attempt < TRIES; attempt++) {
      if (deal(piece, attempt)) {
        List<Integer> sequence = Arrays.stream(planted.of(piece)).boxed().toList();
        int most = blanket.brief().rules().copies().orElse(Integer.MAX_VALUE);
        if (copies.getOrDefault(sequence, 0) < most) {
          copies.merge(sequence, 1, Integer::sum);
          count(piece);
          return;
        }
      }
    }
    throw new IllegalStateException("no sequence found for " + blanket.place(piece).name());
  }

  private boolean deal(int piece, int attempt) {
    int border = planted.rounds(piece) - 1;
    int first = bordersPlanted ? border - 1 : border;
    for (int round = first; round >= 0; round--) {
      planted.set(piece, round, Sequences.OPEN);
    }
    for (int round = first; round >= 0; round--) {
      int best = Sequences.OPEN;
      double bestClaim = Double.POSITIVE_INFINITY;
      for (int yarn = 0; yarn < weights.length; yarn++) {
        // the more often in vain, the more is left to chance
        double chance = random.nextDouble() * (1.5 + attempt / 4.0);
        double claim = used[border - round][yarn] / weights[yarn] + chance;
        if (claim < bestClaim && fits(piece, round, yarn)) {
          best = yarn;
          bestClaim = claim;
        }
      }
      if (best == Sequences.OPEN) {
        return false;
      }
      planted.set(piece, round, best);
    }
    return true;
  }

  private boolean fits(int piece, int round, int yarn) {
    int locked = blanket.locked(piece, round);
    if (locked != Sequences.OPEN && locked != yarn
        || blanket.banned(piece, yarn)
        || !blanket.motifs().toneAllows(blanket.kind(piece), round, yarn)) {
      return false;
    }
    int border = planted.rounds(piece) - 1;
    if (round == border) {
      return seams[piece].stream()
          .mapToInt(planted::border)
          .noneMatch(other -> other != Sequences.OPEN && blanket.yarns().sameBorder(yarn, other));
    }
    WithinPiece within = blanket.brief().rules().withinPiece();
    int last = within == WithinPiece.ALL_DIFFER ? border : round + 1;
    for (int other = round + 1; within != WithinPiece.FREE && other <= last; other++) {
      if (planted.yarn(piece, other) == yarn) {
        return false;
      }
    }
    return true;
  }

  private void count(int piece) {
    int border = planted.rounds(piece) - 1;
    for (int round = 0; round <= border; round++) {
      used[border - round][planted.yarn(piece, round)]++;
    }
  }
}
