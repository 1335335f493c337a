package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.Check;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.remedy.Remedy.Instead;

/**
 * Which shades of the same tone would do in place of those that are bought, each of them tried: by
 * an arrangement that is known, by one with the two yarns exchanged, else by solving.
 */
final class OtherShades {

  /** So many mixtures of balls are tried at most. */
  private static final int MOST_MIXTURES = 20;

  private final Blanket blanket;
  private final ConsistencyOracle oracle;
  private final List<Sequences> known = new ArrayList<>();

  private OtherShades(Blanket blanket, ConsistencyOracle oracle, Sequences witness) {
    this.blanket = blanket;
    this.oracle = oracle;
    known.add(witness);
  }

  /**
   * What would do instead.
   *
   * @param blanket the brief made ready, without what is bought
   * @param oracle settles whether others do
   * @param bought what is bought
   * @return for each shade that is bought and that others can stand in for, these
   */
  static List<Instead> of(Blanket blanket, ConsistencyOracle oracle, Balls.Bought bought) {
    OtherShades others = new OtherShades(blanket, oracle, bought.witness());
    int[] balls = bought.balls();
    return IntStream.range(0, balls.length)
        .filter(yarn -> balls[yarn] > 0)
        .mapToObj(yarn -> others.insteadOf(yarn, balls))
        .filter(instead -> !instead.yarns().isEmpty())
        .toList();
  }

  private Instead insteadOf(int yarn, int[] balls) {
    List<Integer> others = new ArrayList<>();
    for (int other = 0; other < balls.length; other++) {
      if (balls[other] == 0
          && !blanket.yarn(other).gone()
          && blanket.yarns().tone(other) == blanket.yarns().tone(yarn)) {
        int[] instead = balls.clone();
        instead[other] = instead[yarn];
        instead[yarn] = 0;
        if (does(instead, yarn, other)) {
          others.add(other);
        }
      }
    }
    return new Instead(yarn, others, mixed(yarn, others, balls));
  }

  /** Whether any mixture of these shades does that has as many balls. */
  private boolean mixed(int yarn, List<Integer> others, int[] balls) {
    int count = balls[yarn];
    List<Integer> shades = new ArrayList<>(List.of(yarn));
    shades.addAll(others);
    if (count < 2 || others.isEmpty() || mixtures(count, shades.size()) > MOST_MIXTURES) {
      return false;
    }
    int[] bare = balls.clone();
    bare[yarn] = 0;
    return all(bare, shades, 0, count);
  }

  /** Deals so many balls to the shades from one on, in all ways; whether all of them do. */
  private boolean all(int[] balls, List<Integer> shades, int from, int count) {
    if (from == shades.size() - 1) {
      int[] dealt = balls.clone();
      dealt[shades.get(from)] = count;
      return does(dealt, shades.get(0), shades.get(from));
    }
    for (int here = 0; here <= count; here++) {
      int[] dealt = balls.clone();
      dealt[shades.get(from)] = here;
      if (!all(dealt, shades, from + 1, count - here)) {
        return false;
      }
    }
    return true;
  }

  /** In how many ways balls can be dealt to shades; a large number where they are many. */
  private static long mixtures(int balls, int shades) {
    long ways = 1;
    for (int i = 1; i < shades && ways <= MOST_MIXTURES; i++) {
      ways = ways * (balls + i) / i;
    }
    return ways;
  }

  private boolean does(int[] balls, int yarn, int other) {
    Blanket bought = StockRelaxing.with(blanket, balls);
    if (known.stream().anyMatch(sequences -> valid(bought, sequences))
        || valid(bought, exchanged(known.get(0), yarn, other))) {
      return true;
    }
    if (oracle.stop().getAsBoolean()) {
      return false;
    }
    Optional<Sequences> found = oracle.settle(bought).witness();
    found.ifPresent(known::add);
    return found.isPresent();
  }

  private static boolean valid(Blanket blanket, Sequences sequences) {
    return Check.faults(blanket, sequences).isEmpty();
  }

  private static Sequences exchanged(Sequences sequences, int yarn, int other) {
    Sequences exchanged = sequences.copy();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int now = sequences.yarn(piece, round);
        if (now == yarn || now == other) {
          exchanged.set(piece, round, now == yarn ? other : yarn);
        }
      }
    }
    return exchanged;
  }
}
