package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Orbits;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.check.RuleId;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.ConstraintModel;
import lozengy.solver.constraint.IndependentSets;
import lozengy.solver.explain.argument.CountReason.Lack;
import lozengy.solver.explain.argument.Finding.Slot;

/**
 * More pieces that are to show a yarn than can, by their rounds, by seams or by stock; and fewer
 * that may than must; and numbers that a symmetry rules out. Every count by itself, and the least
 * numbers of counts that speak of the same one round of the same pieces together.
 */
final class StuckCounts implements Argument {

  private static final RuleId[] NONE = {};

  @Override
  public List<Finding> findings(Requirements asked) {
    List<Finding> findings = new ArrayList<>();
    List<ReadyCount> counts = ReadyCount.of(asked.blanket());
    for (ReadyCount count : counts) {
      if (asked.paths().contains(count.atLeastPath())) {
        tooFew(asked, count).ifPresent(findings::add);
      }
      if (asked.paths().contains(count.atMostPath())) {
        tooMany(asked, count).ifPresent(findings::add);
      }
      images(asked, count).ifPresent(findings::add);
    }
    if (findings.isEmpty()) {
      together(asked, counts, findings);
    }
    return findings;
  }

  private static Optional<Finding> tooFew(Requirements asked, ReadyCount count) {
    int[] able =
        IntStream.of(count.pieces())
            .filter(
                piece -> rounds(asked, count, piece).anyMatch(r -> allows(asked, count, piece, r)))
            .toArray();
    if (able.length < count.atLeast()) {
      return Optional.of(few(asked, count, Lack.ROUNDS, able.length, NONE));
    }
    long apart = apart(asked, count, able);
    if (apart < count.atLeast()) {
      return Optional.of(few(asked, count, Lack.SEAMS, apart, RuleId.NEIGHBOUR_BORDERS));
    }
    int enough = enough(asked, count, able);
    if (enough < count.atLeast()) {
      BitSet yarns = new BitSet();
      yarns.set(count.yarn());
      return Optional.of(few(asked, count, Lack.STOCK, enough, NONE).withYarns(yarns));
    }
    return Optional.empty();
  }

  private static IntStream rounds(Requirements asked, ReadyCount count, int piece) {
    int rounds = asked.direct().rounds(piece);
    return IntStream.range(0, rounds).filter(round -> count.covers(round, rounds));
  }

  private static boolean allows(Requirements asked, ReadyCount count, int piece, int round) {
    return asked.direct().allows(piece, round, count.yarn());
  }

  private static boolean must(Requirements asked, ReadyCount count, int piece, int round) {
    return allows(asked, count, piece, round) && asked.direct().size(piece, round) == 1;
  }

  private static Finding few(
      Requirements asked, ReadyCount count, Lack lack, long can, RuleId... rules) {
    long left = Math.max(0, asked.loads().get(count.yarn()).capacity());
    Reason reason = new CountReason.CountTooFew(count.asked(), count.yarn(), lack, can, left);
    return finding(asked, count, reason, rules);
  }

  private static Finding finding(
      Requirements asked, ReadyCount count, Reason reason, RuleId... rules) {
    List<Slot> slots = new ArrayList<>();
    for (int piece : count.pieces()) {
      rounds(asked, count, piece).forEach(round -> slots.add(new Slot(piece, round)));
    }
    RuleId[] used =
        Stream.concat(Stream.of(RuleId.COUNTS), Arrays.stream(rules)).toArray(RuleId[]::new);
    return Finding.of(reason, slots, used);
  }

  /** How many of the pieces can show the yarn in their borders, where only these count. */
  private static long apart(Requirements asked, ReadyCount count, int[] able) {
    Blanket blanket = asked.blanket();
    boolean bordersOnly =
        IntStream.of(able)
            .allMatch(
                piece ->
                    rounds(asked, count, piece)
                        .filter(round -> allows(asked, count, piece, round))
                        .allMatch(round -> round == blanket.roundCount(piece) - 1));
    if (!bordersOnly || !asked.bordersDiffer() || !ConstraintModel.fits(blanket)) {
      return able.length;
    }
    long[] weights = new long[blanket.pieceCount()];
    IntStream.of(able).forEach(piece -> weights[piece] = 1);
    return IndependentSets.heaviest(
        blanket.layout().seams().without(blanket::bordersMayMatch), weights);
  }

  /** For how many of the pieces the yarn suffices, the shortest round of each. */
  private static int enough(Requirements asked, ReadyCount count, int[] able) {
    long[] lengths =
        IntStream.of(able)
            .mapToLong(
                piece ->
                    rounds(asked, count, piece)
                        .filter(round -> allows(asked, count, piece, round))
                        .mapToLong(
                            round ->
                                must(asked, count, piece, round)
                                    ? 0
                                    : asked.takenMillimetres(piece, round, count.yarn()))
                        .min()
                        .orElse(0))
            .sorted()
            .toArray();
    long left = asked.loads().get(count.yarn()).openCapacity();
    int enough = 0;
    while (enough < lengths.length && lengths[enough] <= left) {
      left -= lengths[enough++];
    }
    return enough;
  }

  private static Optional<Finding> tooMany(Requirements asked, ReadyCount count) {
    Blanket blanket = asked.blanket();
    int[] certain =
        IntStream.of(count.pieces())
            .filter(
                piece -> rounds(asked, count, piece).anyMatch(r -> must(asked, count, piece, r)))
            .toArray();
    if (certain.length > count.atMost()) {
      Reason reason = new CountReason.CountTooMany(count.asked(), count.yarn(), certain.length, 0);
      return Optional.of(finding(asked, count, reason));
    }
    int worked =
        (int)
            IntStream.of(certain)
                .filter(
                    piece ->
                        rounds(asked, count, piece)
                            .anyMatch(
                                r -> blanket.worked(piece, r) && must(asked, count, piece, r)))
                .count();
    int ofPile = ofPile(asked, count);
    if (worked + ofPile > count.atMost()) {
      Reason reason = new CountReason.CountTooMany(count.asked(), count.yarn(), worked, ofPile);
      return Optional.of(finding(asked, count, reason, RuleId.PILE));
    }
    return Optional.empty();
  }

  /** How many pieces of the pile with the yarn find no place that the count does not speak of. */
  private static int ofPile(Requirements asked, ReadyCount count) {
    Blanket blanket = asked.blanket();
    Set<Integer> spokenOf = IntStream.of(count.pieces()).boxed().collect(Collectors.toSet());
    int all = 0;
    for (PieceKind kind : PieceKind.values()) {
      int showing = 0;
      for (Stack stack : blanket.pile().stacks()) {
        int rounds = stack.yarns().length;
        boolean shows =
            asked.paths().contains(stack.path())
                && stack.kind() == kind
                && IntStream.range(0, rounds)
                    .anyMatch(r -> stack.yarns()[r] == count.yarn() && count.covers(r, rounds));
        showing += shows ? stack.count() : 0;
      }
      long elsewhere =
          IntStream.range(0, blanket.pieceCount())
              .filter(
                  p ->
                      blanket.kind(p) == kind
                          && blanket.domains().takesPile(p)
                          && !spokenOf.contains(p))
              .count();
      all += (int) Math.max(0, showing - elsewhere);
    }
    return all;
  }

  /** Pieces that are each other's images come together, which leaves only some numbers. */
  private static Optional<Finding> images(Requirements asked, ReadyCount count) {
    Orbits orbits = asked.blanket().orbits();
    if (!orbits.any() || !asked.rules().contains(RuleId.SYMMETRY)) {
      return Optional.empty();
    }
    int least = asked.paths().contains(count.atLeastPath()) ? count.atLeast() : 0;
    int most = asked.paths().contains(count.atMostPath()) ? count.atMost() : count.pieces().length;
    Map<Integer, Integer> together = new TreeMap<>();
    IntStream.of(count.pieces()).forEach(p -> together.merge(orbits.lead(p), 1, Integer::sum));
    BitSet reachable = new BitSet();
    reachable.set(0);
    for (int images : together.values()) {
      for (int sum = count.pieces().length - images; sum >= 0; sum--) {
        if (reachable.get(sum)) {
          reachable.set(sum + images);
        }
      }
    }
    int next = reachable.nextSetBit(least);
    if (next >= 0 && next <= most) {
      return Optional.empty();
    }
    int below = reachable.previousSetBit(Math.max(0, least - 1));
    OptionalInt above = next < 0 ? OptionalInt.empty() : OptionalInt.of(next);
    Reason reason =
        new CountReason.CountOfImages(count.asked(), count.yarn(), least, most, below, above);
    return Optional.of(finding(asked, count, reason, RuleId.SYMMETRY));
  }

  /** Least numbers of several yarns in one and the same round of the same pieces. */
  private static void together(
      Requirements asked, List<ReadyCount> counts, List<Finding> findings) {
    for (int i = 0; i < counts.size(); i++) {
      ReadyCount first = counts.get(i);
      boolean oneRound =
          IntStream.of(first.pieces()).allMatch(piece -> rounds(asked, first, piece).count() == 1);
      List<ReadyCount> same = new ArrayList<>();
      for (ReadyCount other : counts.subList(i, counts.size())) {
        boolean again = same.stream().anyMatch(before -> before.yarn() == other.yarn());
        if (!again
            && asked.paths().contains(other.atLeastPath())
            && other.asked().where().equals(first.asked().where())) {
          same.add(other);
        }
      }
      int sum = same.stream().mapToInt(ReadyCount::atLeast).sum();
      if (oneRound && sum > first.pieces().length) {
        Reason reason =
            new CountReason.CountsTogether(
                first.asked().where(),
                first.pieces().length,
                same.stream().map(ReadyCount::yarn).toList(),
                same.stream().map(ReadyCount::atLeast).toList());
        findings.add(finding(asked, first, reason));
        return;
      }
    }
  }
}
