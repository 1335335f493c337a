package lozengy.model.yarn;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.PieceKind;
import lozengy.model.unit.Ratio;

/**
 * A shade that may stand in for one that is gone: of the same tone, and by its length. A put-up is
 * converted by what is on a ball, never by what it weighs; a round that the brief gives by weight
 * takes another length in each yarn, as everywhere.
 *
 * @param yarn its index, from 0
 * @param difference how far its colour is from the one that is gone (CIEDE2000), 0 or more
 * @param needMillimetres length in mm that it takes to stand in for all that is still to be worked
 * @param spareMillimetres length in mm that may be used of it beyond what the plan takes of it, 0
 *     or more; as much as is needed where it is yet to be bought
 * @param toBuy whether as much of it can be had as is needed
 * @param ballsToTake whole balls that hold what it takes, with what is kept back; empty where no
 *     put-up is stated
 */
public record Substitute(
    int yarn,
    double difference,
    long needMillimetres,
    long spareMillimetres,
    boolean toBuy,
    OptionalLong ballsToTake) {

  /**
   * What may stand in for a shade, the nearest first. O(rounds + yarns x kinds x rounds of a kind).
   *
   * @param blanket the blanket, of which less than all is kept back
   * @param plan the plan so far; where there is none, needs go by {@link ShadeNeed}
   * @param gone index of the shade
   * @param toBuy yarns of which as much can be had as is needed
   * @return the other yarns of its tone that are not gone
   */
  public static List<Substitute> of(
      Blanket blanket, Optional<Sequences> plan, int gone, BitSet toBuy) {
    Needs needs = needs(blanket, plan, gone);
    List<Substitute> found = new ArrayList<>();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      boolean there = yarn != gone && !blanket.yarn(yarn).gone();
      if (there && blanket.yarns().tone(yarn) == blanket.yarns().tone(gone)) {
        found.add(of(blanket, needs, gone, yarn, toBuy));
      }
    }
    found.sort(
        Comparator.comparingDouble(Substitute::difference).thenComparingInt(Substitute::yarn));
    return found;
  }

  /**
   * {@return one yarn in another's place, of whatever tone}
   *
   * @param blanket the blanket, of which less than all is kept back
   * @param plan the plan so far; where there is none, needs go by {@link ShadeNeed}
   * @param gone index of the shade that is gone
   * @param yarn index of the one in its place
   * @param toBuy yarns of which as much can be had as is needed
   */
  public static Substitute of(
      Blanket blanket, Optional<Sequences> plan, int gone, int yarn, BitSet toBuy) {
    return of(blanket, needs(blanket, plan, gone), gone, yarn, toBuy);
  }

  private static Needs needs(Blanket blanket, Optional<Sequences> plan, int gone) {
    return plan.map(each -> planned(blanket, each, gone)).orElseGet(() -> shared(blanket));
  }

  private static Substitute of(Blanket blanket, Needs needs, int gone, int yarn, BitSet toBuy) {
    long need = needs.of(gone, yarn);
    boolean open = toBuy.get(yarn);
    long spare = Math.max(0, blanket.yarns().usableMillimetres(yarn) - needs.taken()[yarn]);
    Ratio whole = Purchase.withKeptBack(need, blanket.brief().rules().keepBackPercent());
    return new Substitute(
        yarn,
        blanket.yarns().difference(gone, yarn),
        need,
        open ? need : spare,
        open,
        Purchase.balls(whole, blanket.yarn(yarn).ball()));
  }

  /**
   * {@return the length in mm of a shade that is still to be worked}
   *
   * @param blanket the blanket
   * @param plan the plan so far; where there is none, {@link ShadeNeed} says it
   * @param yarn index of the shade
   */
  public static long needMillimetres(Blanket blanket, Optional<Sequences> plan, int yarn) {
    return plan.map(each -> YarnWork.of(blanket, each).get(yarn).toWorkMillimetres())
        .orElseGet(() -> ShadeNeed.of(blanket).get(yarn).millimetres());
  }

  /** {@return whether it can stand in for all by itself} */
  public boolean enough() {
    return spareMillimetres >= needMillimetres;
  }

  /**
   * {@return what must be bought of it so that it can; empty where there is enough}
   *
   * @param blanket the blanket
   */
  public Optional<Purchase> lacks(Blanket blanket) {
    return enough()
        ? Optional.empty()
        : Optional.of(
            Purchase.of(
                needMillimetres - spareMillimetres,
                blanket.brief().rules().keepBackPercent(),
                blanket.yarn(yarn).ball()));
  }

  /**
   * {@return the length in mm that is to be had of it, with what is kept back}
   *
   * @param blanket the blanket
   */
  public long wholeMillimetres(Blanket blanket) {
    return Purchase.withKeptBack(needMillimetres, blanket.brief().rules().keepBackPercent()).up();
  }

  /** What other yarns would take in a yarn's place, and what the plan takes of each. */
  private interface Needs {
    long of(int gone, int yarn);

    long[] taken();
  }

  private record Shared(long[] taken) implements Needs {
    @Override
    public long of(int gone, int yarn) {
      return taken[gone];
    }
  }

  /**
   * Rounds by kind, halves of seams that their borders take, and what joining in one yarn and
   * edging take, whose length no yarn changes.
   */
  private record Planned(
      Blanket blanket,
      Map<PieceKind, long[]> rounds,
      long halves,
      long fixedMillimetres,
      long[] taken)
      implements Needs {
    @Override
    public long of(int gone, int yarn) {
      long sum = fixedMillimetres + halves * blanket.borderSeams().halfMillimetres(yarn);
      for (Map.Entry<PieceKind, long[]> each : rounds.entrySet()) {
        for (int round = 0; round < each.getValue().length; round++) {
          long count = each.getValue()[round];
          sum +=
              count == 0 ? 0 : count * blanket.motifs().needMillimetres(each.getKey(), round, yarn);
        }
      }
      return sum;
    }
  }

  private static Needs shared(Blanket blanket) {
    return new Shared(ShadeNeed.of(blanket).stream().mapToLong(ShadeNeed::millimetres).toArray());
  }

  private static Needs planned(Blanket blanket, Sequences plan, int gone) {
    Map<PieceKind, long[]> rounds = new EnumMap<>(PieceKind.class);
    PilePlacement laid = PilePlacement.of(blanket, plan);
    long halves = 0;
    for (int piece = 0; piece < plan.pieces(); piece++) {
      int border = blanket.roundCount(piece) - 1;
      boolean open = laid.roundsWorked(piece) <= border;
      halves += open && plan.border(piece) == gone ? blanket.borderSeams().halves(piece) : 0;
      for (int round = laid.roundsWorked(piece); round < plan.rounds(piece); round++) {
        if (plan.yarn(piece, round) == gone) {
          int all = blanket.roundCount(piece);
          rounds.computeIfAbsent(blanket.kind(piece), kind -> new long[all])[round]++;
        }
      }
    }
    long[] taken = blanket.usedMillimetres(plan);
    long toWork = YarnWork.of(blanket, plan).get(gone).toWorkMillimetres();
    Planned alone = new Planned(blanket, rounds, halves, 0, taken);
    return new Planned(blanket, rounds, halves, toWork - alone.of(gone, gone), taken);
  }
}
