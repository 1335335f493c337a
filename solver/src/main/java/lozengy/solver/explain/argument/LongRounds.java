package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.RoundYarns;
import lozengy.solver.constraint.RoundClass;
import lozengy.solver.constraint.YarnLoad;
import lozengy.solver.explain.argument.Finding.Slot;

/** Rounds that take more than any yarn that they may take has left. */
final class LongRounds implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    RoundYarns direct = asked.direct();
    RoundYarns left = direct.copy();
    filter(asked, left);
    List<Finding> findings = new ArrayList<>();
    for (RoundClass rounds : RoundClass.of(blanket)) {
      int round = rounds.round();
      Map<List<Integer>, List<Integer>> alike = new LinkedHashMap<>();
      for (int piece : rounds.pieces()) {
        // an empty round is told elsewhere
        if (left.size(piece, round) == 0 && direct.size(piece, round) > 0) {
          List<Integer> yarns = IntStream.of(direct.yarnsOf(piece, round)).boxed().toList();
          alike.computeIfAbsent(yarns, y -> new ArrayList<>()).add(piece);
        }
      }
      alike.forEach(
          (yarns, pieces) -> {
            BitSet stocks = new BitSet();
            yarns.forEach(stocks::set);
            List<Slot> slots = pieces.stream().map(piece -> new Slot(piece, round)).toList();
            Reason reason = reason(blanket, asked.seams(), rounds, yarns, pieces);
            findings.add(Finding.of(reason, slots).withYarns(stocks));
          });
    }
    return findings;
  }

  /** Takes out of the domains the yarns of which not even one such round can be worked. */
  static void filter(Requirements asked, RoundYarns domains) {
    RoundYarns before = domains.copy();
    List<RoundClass> classes = RoundClass.of(asked.blanket());
    for (YarnLoad load : asked.loads()) {
      for (YarnLoad.Term term : load.terms()) {
        if (term.length() > load.openCapacity()) {
          remove(classes.get(term.index()), load.yarn(), before, domains);
        }
      }
    }
  }

  private static void remove(RoundClass rounds, int yarn, RoundYarns before, RoundYarns domains) {
    for (int piece : rounds.pieces()) {
      if (before.size(piece, rounds.round()) > 1) {
        domains.remove(piece, rounds.round(), yarn);
      }
    }
  }

  private static Reason reason(
      Blanket blanket,
      boolean seams,
      RoundClass rounds,
      List<Integer> yarns,
      List<Integer> pieces) {
    long least =
        yarns.stream()
            .mapToLong(yarn -> rounds.millimetres(blanket, yarn, seams))
            .min()
            .orElseThrow();
    return new StockReason.RoundTooLong(List.copyOf(pieces), rounds.round(), yarns, least);
  }
}
