package lozengy.solver.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Price;
import lozengy.model.input.Nulls;
import lozengy.solver.pack.PackOptions.Attempt;
import lozengy.solver.pack.Packing.Failed;

/**
 * Finds the least pack from which an arrangement of a wanted score can be worked, or one of each of
 * several sizes, each by itself. In turns, a small model proposes a pack of least cost; the briefs
 * are solved with exactly that stock, and what speaks against the pack becomes known (a
 * decomposition in the manner of Benders, 1962; see Hooker and Ottosson, "Logic-based Benders
 * decomposition", Mathematical Programming 96, 2003).
 *
 * <p>A pack is refuted by a direct argument, by a bound on the score below the one wanted, or by
 * solving exactly; whatever has no more of any shade is refuted with it. The pack found is proved
 * the least where all that cost less are refuted; mostly by totals alone ({@link Floors}). The
 * stock of the brief plays no part: a pack is for whoever begins with nothing.
 */
public final class Packer {

  /** Packs tried in all, and those of one cost before more is spent. */
  private static final int MOST_TRIED = 24;

  private static final int TRIED_OF_A_COST = 2;
  private static final int MOST_PROPOSALS = 400;

  private final PackOptions options;
  private final List<Size> sizes;

  /** The largest first: mostly it is what a pack does not do for. */
  private final List<Size> largestFirst;

  private final Shades shades;
  private final Proposals proposals;
  private final List<Failed> failed = new ArrayList<>();
  private int tried;
  private int mostTried = MOST_TRIED;

  /** What a cheaper pack costs of which it is not proved that it does not do. */
  private long open = Long.MAX_VALUE;

  /** A pack with an arrangement of each size from it, in the order of the sizes. */
  private record Hit(int[] balls, List<Arrangement> arrangements) {}

  private Packer(List<Size> sizes, PackOptions options) {
    this.options = options;
    this.sizes = sizes;
    this.largestFirst =
        sizes.stream().sorted(Comparator.comparingLong((Size size) -> -size.rounds())).toList();
    List<Shades> each = sizes.stream().map(Size::shades).toList();
    Shades.widen(each);
    this.shades = each.get(0);
    this.proposals = new Proposals(each);
  }

  /**
   * Finds a pack.
   *
   * @param blanket the brief made ready; less than all of it is kept back; every yarn that is not
   *     gone has a put-up, and a price where that is the goal
   * @param options what it is to be good for
   * @return the pack, or why there is none; if the calling thread is interrupted, what is known by
   *     then, and the thread stays interrupted
   */
  public static Packing find(Blanket blanket, PackOptions options) {
    Nulls.refuse("blanket options", blanket, options);
    return findShared(List.of(blanket), options).get(0);
  }

  /**
   * Finds one pack for several sizes: whichever of them is worked, it suffices for that one.
   *
   * @param blankets the briefs made ready, one for each size, as {@link #find} asks of them; all of
   *     one palette
   * @param options what it is to be good for, each size by itself
   * @return for each size the same balls with an arrangement of its own; or else, where a size
   *     stands in the way, why there is none, and of the others that nothing was found
   * @throws IllegalArgumentException if there is no size, or their yarns differ in code, put-up,
   *     price or whether they are gone
   */
  public static List<Packing> findShared(List<Blanket> blankets, PackOptions options) {
    Nulls.refuse("blankets options", blankets, options);
    if (blankets.isEmpty() || blankets.stream().map(Packer::palette).distinct().count() > 1) {
      throw new IllegalArgumentException("a pack is for sizes of one palette");
    }
    List<Size> sizes = blankets.stream().map(blanket -> new Size(blanket, options)).toList();
    options.listener().accept(new Attempt(0, 0));
    List<Optional<Packing>> ends = sizes.stream().map(Size::plenty).toList();
    return ends.stream().anyMatch(Optional::isPresent)
        ? ends.stream().map(end -> end.orElseGet(Packing.Unfinished::new)).toList()
        : new Packer(sizes, options).find();
  }

  /** What of yarns must be alike in all sizes. */
  private record Packable(String code, Optional<Ball> ball, Optional<Price> price, boolean gone) {}

  private static List<Packable> palette(Blanket blanket) {
    return blanket.brief().yarns().stream()
        .map(yarn -> new Packable(yarn.code(), yarn.ball(), yarn.price(), yarn.gone()))
        .toList();
  }

  private List<Packing> find() {
    Optional<Hit> hit = search();
    if (hit.isEmpty()) {
      return sizes.stream().map(size -> (Packing) new Packing.Unfinished()).toList();
    }
    int[] balls = hit.get().balls();
    long cost = shades.cost(balls);
    long floor = proposals.floor();
    boolean least = cost <= floor || proposals.complete() && open >= cost;
    Packing.Proof proof = new Packing.Proof(least, floor, failed);
    List<Packing> packed = new ArrayList<>();
    for (int at = 0; at < sizes.size(); at++) {
      packed.add(sizes.get(at).packed(balls, hit.get().arrangements().get(at), proof));
    }
    return packed;
  }

  private Optional<Hit> search() {
    int ofCost = 0;
    long step = cheapestBall();
    for (int turn = 0; turn < MOST_PROPOSALS && goesOn(); turn++) {
      Optional<int[]> proposed = proposals.next();
      if (proposed.isEmpty()) {
        break;
      }
      int[] balls = proposed.get();
      if (argued(balls)) {
        continue;
      }
      Optional<Hit> hit = settle(balls);
      if (hit.isPresent()) {
        return Optional.of(step > cheapestBall() ? withoutNeedless(hit.get()) : hit.get());
      }
      if (open < Long.MAX_VALUE && ++ofCost == TRIED_OF_A_COST) {
        long cost = shades.cost(balls);
        proposals.atLeast(cost + step);
        step *= 2;
        ofCost = 0;
      }
    }
    return passedOver() ? fullest() : Optional.empty();
  }

  /** Whether there are packs that were neither tried nor refuted. */
  private boolean passedOver() {
    return open < Long.MAX_VALUE || !proposals.complete();
  }

  /**
   * As many balls of each shade as count, which is plenty; the steps of the search grow until they
   * may lead past that.
   */
  private Optional<Hit> fullest() {
    if (sizes.get(0).stopped()) {
      return Optional.empty();
    }
    mostTried = tried + MOST_TRIED;
    int[] most = IntStream.range(0, shades.count()).map(shades::most).toArray();
    return settle(most).map(this::withoutNeedless);
  }

  private boolean goesOn() {
    return tried < mostTried && !sizes.get(0).stopped();
  }

  private long cheapestBall() {
    long cheapest = Long.MAX_VALUE;
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      cheapest = Math.min(cheapest, Math.max(1, shades.cost(yarn)));
    }
    return cheapest;
  }

  private boolean argued(int[] balls) {
    boolean argued = false;
    for (Size size : largestFirst) {
      argued |= size.argued(balls, proposals);
    }
    return argued;
  }

  /** Solves with exactly a pack; where that fails, nothing smaller is proposed any more. */
  private Optional<Hit> settle(int[] balls) {
    options.listener().accept(new Attempt(++tried, Arrays.stream(balls).sum()));
    Arrangement[] arrangements = new Arrangement[sizes.size()];
    int[] fewest = new int[balls.length];
    for (Size size : largestFirst) {
      Size.Trial trial = size.tried(balls);
      if (trial.arrangement().isEmpty()) {
        BitSet all = new BitSet();
        all.set(0, balls.length);
        proposals.refute(size.shades(), balls, all);
        failed.add(new Failed(Arrays.stream(balls).sum(), trial.refuted()));
        open = trial.refuted() ? open : Math.min(open, shades.cost(balls));
        return Optional.empty();
      }
      Arrangement arrangement = trial.arrangement().get();
      arrangements[sizes.indexOf(size)] = arrangement;
      int[] needed = size.fewest(arrangement);
      Arrays.setAll(fewest, yarn -> Math.max(fewest[yarn], needed[yarn]));
    }
    // what no arrangement begins is not packed
    return Optional.of(new Hit(fewest, List.of(arrangements)));
  }

  /** The same without balls of which it is seen that it does without. */
  private Hit withoutNeedless(Hit found) {
    Hit best = found;
    for (int yarn = 0; yarn < shades.count(); yarn++) {
      while (best.balls()[yarn] > shades.least(yarn) && goesOn()) {
        int[] fewer = best.balls().clone();
        fewer[yarn]--;
        Optional<Hit> hit = argued(fewer) ? Optional.empty() : settle(fewer);
        if (hit.isEmpty()) {
          break;
        }
        best = hit.get();
      }
    }
    return best;
  }
}
