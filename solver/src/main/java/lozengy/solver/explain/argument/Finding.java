package lozengy.solver.explain.argument;

import java.util.BitSet;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Ground;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;

/**
 * What an argument found: a proof, and what it is about, so that the lines of the brief that matter
 * to it can be told.
 *
 * @param reason what it found, which alone is a proof
 * @param slots the rounds that it is about
 * @param yarns the yarns whose stock it is about
 * @param rules the rules about several rounds that it uses
 * @param shortfall by how much these yarns fall short, where that can be told
 */
public record Finding(
    Reason reason,
    Set<Slot> slots,
    BitSet yarns,
    Set<RuleId> rules,
    Optional<Shortfall> shortfall) {

  /**
   * A round of a piece.
   *
   * @param piece index of the piece
   * @param round from the centre
   */
  public record Slot(int piece, int round) {}

  /**
   * {@return a finding about some rounds}
   *
   * @param reason what was found
   * @param slots the rounds
   * @param rules the rules about several rounds that it uses
   */
  public static Finding of(Reason reason, Collection<Slot> slots, RuleId... rules) {
    Set<RuleId> used = EnumSet.noneOf(RuleId.class);
    used.addAll(List.of(rules));
    return new Finding(reason, new LinkedHashSet<>(slots), new BitSet(), used, Optional.empty());
  }

  /**
   * {@return the same, and about the stock of some yarns}
   *
   * @param stocks the yarns
   */
  public Finding withYarns(BitSet stocks) {
    return new Finding(reason, slots, stocks, rules, shortfall);
  }

  /**
   * {@return the same, and by how much these yarns fall short}
   *
   * @param how by how much
   */
  public Finding withShortfall(Shortfall how) {
    return new Finding(reason, slots, yarns, rules, Optional.of(how));
  }

  /**
   * {@return the lines that may matter to it: if they alone hold, the argument holds too, but that
   * where stock falls short locks of other rounds may matter beside them}
   *
   * @param unrestricted what rounds may take where no line holds
   * @param all all lines of the brief
   */
  public List<BriefLine> lines(RoundYarns unrestricted, List<BriefLine> all) {
    // of lines that can stand in for each other the later are left out: rather tones than stocks
    return Stream.of(true, false)
        .flatMap(stocks -> all.stream().filter(line -> stocks == ofStock(line)))
        .filter(line -> concerns(unrestricted, line))
        .toList();
  }

  private static boolean ofStock(BriefLine line) {
    return line.rule() == RuleId.YARN_TOTALS;
  }

  private boolean concerns(RoundYarns unrestricted, BriefLine line) {
    if (ofStock(line)) {
      return line.grounds(Ground.Stock.class).anyMatch(stock -> yarns.get(stock.yarn()))
          || line.grounds(Ground.Taken.class)
              .anyMatch(taken -> yarns.get(taken.yarn()) && taken.millimetres() != 0)
          || line.grounds(Ground.Seams.class).findAny().isPresent();
    }
    if (rules.contains(line.rule())) {
      return true;
    }
    RoundYarns restricted = unrestricted.copy();
    restricted.restrict(line);
    return !restricted.equals(unrestricted)
        && slots.stream()
            .anyMatch(
                slot ->
                    restricted.size(slot.piece(), slot.round())
                        < unrestricted.size(slot.piece(), slot.round()));
  }
}
