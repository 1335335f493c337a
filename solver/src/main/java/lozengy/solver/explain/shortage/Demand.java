package lozengy.solver.explain.shortage;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RoundYarns;
import lozengy.solver.constraint.RoundClass;
import lozengy.solver.constraint.YarnLoad;
import lozengy.solver.explain.argument.Requirements;

/**
 * What the rounds ask for, grouped by class and by the yarns that they may take, in amounts that do
 * not depend on the yarn.
 *
 * <p>Where every round takes the same length in every yarn, amounts are millimetres. Where rounds
 * are weighed, a round is longer in a thinner yarn; then each yarn is measured by what the whole
 * blanket would take in it, in parts of {@link #WHOLE}, rounds rounded down and stock rounded up,
 * and a round counts with the least that it takes in any of its yarns. What is short by this
 * measure is short in truth, for every sum of true lengths is at least as long.
 */
final class Demand {

  /**
   * Rounds of one class that may take the same yarns.
   *
   * @param rounds the class
   * @param yarns the yarns
   * @param pieces the pieces
   * @param each what one round takes, in the demand's unit
   */
  record Group(RoundClass rounds, BitSet yarns, List<Integer> pieces, long each) {

    /** What they take together. */
    long amount() {
      return each * pieces.size();
    }
  }

  private static final BigInteger WHOLE = BigInteger.ONE.shiftLeft(45);

  private final Blanket blanket;
  private final RoundYarns domains;
  private final boolean seams;
  private final List<YarnLoad> loads;
  private final List<Group> groups = new ArrayList<>();
  private final long[] wholeBlanket;
  private final boolean inMillimetres;

  private Demand(Requirements asked) {
    this.blanket = asked.blanket();
    this.domains = asked.direct();
    this.seams = asked.seams();
    this.loads = asked.loads();
    List<RoundClass> classes = RoundClass.of(blanket);
    this.wholeBlanket =
        IntStream.range(0, blanket.yarnCount())
            .mapToLong(
                yarn -> classes.stream().mapToLong(c -> length(c, yarn) * c.pieces().length).sum())
            .toArray();
    this.inMillimetres =
        classes.stream()
            .allMatch(
                c ->
                    IntStream.range(0, blanket.yarnCount())
                            .mapToLong(yarn -> length(c, yarn))
                            .distinct()
                            .count()
                        <= 1);
    classes.forEach(this::addGroups);
  }

  static Demand of(Requirements asked) {
    return new Demand(asked);
  }

  private long length(RoundClass rounds, int yarn) {
    return rounds.millimetres(blanket, yarn, seams);
  }

  private void addGroups(RoundClass rounds) {
    Map<BitSet, List<Integer>> byYarns = new LinkedHashMap<>();
    for (int piece : rounds.pieces()) {
      BitSet yarns = new BitSet();
      IntStream.of(domains.yarnsOf(piece, rounds.round())).forEach(yarns::set);
      byYarns.computeIfAbsent(yarns, y -> new ArrayList<>()).add(piece);
    }
    byYarns.forEach(
        (yarns, pieces) -> {
          // an empty round is told elsewhere
          if (!yarns.isEmpty()) {
            long each = yarns.stream().mapToLong(y -> down(length(rounds, y), y)).min().orElse(0);
            groups.add(new Group(rounds, yarns, pieces, each));
          }
        });
  }

  private long down(long millimetres, int yarn) {
    return inMillimetres ? millimetres : parts(millimetres, yarn)[0].longValueExact();
  }

  /** A length of a yarn in the demand's unit, rounded up; at most the whole blanket. */
  long up(long millimetres, int yarn) {
    if (millimetres <= 0) {
      return 0;
    }
    long most = Math.min(millimetres, wholeBlanket[yarn]);
    if (inMillimetres || most == 0) {
      return most;
    }
    BigInteger[] parts = parts(most, yarn);
    return parts[0].longValueExact() + parts[1].signum();
  }

  private BigInteger[] parts(long millimetres, int yarn) {
    return BigInteger.valueOf(millimetres)
        .multiply(WHOLE)
        .divideAndRemainder(BigInteger.valueOf(Math.max(1, wholeBlanket[yarn])));
  }

  Blanket blanket() {
    return blanket;
  }

  List<Group> groups() {
    return groups;
  }

  int yarns() {
    return wholeBlanket.length;
  }

  /** Whether amounts are millimetres. */
  boolean inMillimetres() {
    return inMillimetres;
  }

  /** What the rounds may ask of each yarn. */
  List<YarnLoad> loads() {
    return loads;
  }

  /** Whether a group's rounds are borders. */
  boolean border(Group group) {
    return group.rounds().round() == blanket.motif(group.rounds().kind()).rounds().size() - 1;
  }

  /** What the pieces' borders would take, by piece, of those that may take a yarn. */
  long[] borderWeights(int yarn) {
    long[] weights = new long[blanket.pieceCount()];
    for (Group group : groups) {
      if (border(group) && group.yarns().get(yarn)) {
        group.pieces().forEach(piece -> weights[piece] = group.each());
      }
    }
    return weights;
  }

  /** What all rounds take together. */
  long total() {
    return groups.stream().flatMapToLong(g -> LongStream.of(g.amount())).sum();
  }
}
