package lozengy.model.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.blanket.ReadyLook;
import lozengy.model.layout.PieceKind;

/**
 * How often each layer should show each yarn. Within a layer, the rounds that allow the same yarns
 * by tone and by the look's zones and borders, and that the same of its counts speak of, form a
 * group; a group's rounds are dealt to its yarns by their shares, by largest remainder; a layer's
 * target for a yarn is the sum over its groups. Of equal remainders the larger share comes first,
 * then the code that is earlier in the alphabet, so that the order of the yarns in a brief makes no
 * difference. Where all yarns of a group have share 0 they count as equal; rounds that no yarn's
 * tone fits are dealt to none. Locks, bans and stock change no target. What a count of the look
 * makes of this is told at {@link CountedDeal}.
 *
 * <p>O(pieces + layers x kinds x yarns) and sorting, in exact arithmetic; with counts also O(pieces
 * x counts).
 *
 * @param pieces pieces that have the layer, by layer
 * @param counts wanted count by layer and yarn
 */
public record Targets(int[] pieces, int[][] counts) {

  /**
   * Rounds that are dealt together.
   *
   * @param layer their layer
   * @param yarns the yarns that they allow
   * @param counts numbers of the look's counts that speak of them
   */
  record Group(int layer, BitSet yarns, BitSet counts) {}

  /**
   * Rounds of a layer that are dealt together, and how many of them each yarn gets.
   *
   * @param layer the layer, from 0 at the border
   * @param kinds how many pieces of each kind they are of
   * @param counts how many of them each yarn gets
   */
  public record Dealt(int layer, int[] kinds, int[] counts) {}

  /**
   * {@return the targets of a blanket}
   *
   * @param blanket the blanket
   */
  public static Targets of(Blanket blanket) {
    int[] pieces = new int[blanket.layerCount()];
    int[][] counts = new int[blanket.layerCount()][blanket.yarnCount()];
    for (Dealt dealt : dealt(blanket)) {
      pieces[dealt.layer()] += Arrays.stream(dealt.kinds()).sum();
      for (int yarn = 0; yarn < counts[dealt.layer()].length; yarn++) {
        counts[dealt.layer()][yarn] += dealt.counts()[yarn];
      }
    }
    return new Targets(pieces, counts);
  }

  /**
   * {@return what the targets are the sums of}
   *
   * @param blanket the blanket
   */
  public static List<Dealt> dealt(Blanket blanket) {
    List<ReadyCount> asked = ReadyCount.of(blanket);
    Map<Group, int[]> groups = new LinkedHashMap<>();
    for (Alike alike : alike(blanket, asked)) {
      int piece = alike.pieces().get(0);
      int rounds = blanket.roundCount(piece);
      for (int layer = 0; layer < rounds; layer++) {
        int round = rounds - 1 - layer;
        BitSet counted = new BitSet();
        alike.counts().stream()
            .filter(i -> asked.get(i).covers(round, rounds))
            .forEach(counted::set);
        Group group = new Group(layer, allowed(blanket, piece, round), counted);
        groups
                .computeIfAbsent(group, each -> new int[PieceKind.values().length])[
                blanket.kind(piece).ordinal()] +=
            alike.pieces().size();
      }
    }
    Map<Group, Integer> sizes = new LinkedHashMap<>();
    groups.forEach((group, kinds) -> sizes.put(group, Arrays.stream(kinds).sum()));
    List<Dealt> dealt = new ArrayList<>();
    CountedDeal.of(blanket, asked, sizes)
        .forEach((group, counts) -> dealt.add(new Dealt(group.layer(), groups.get(group), counts)));
    return dealt;
  }

  /**
   * Pieces of one kind of which the look asks the same.
   *
   * @param pieces the pieces
   * @param counts numbers of the look's counts that speak of them
   */
  private record Alike(List<Integer> pieces, BitSet counts) {}

  private static Collection<Alike> alike(Blanket blanket, List<ReadyCount> asked) {
    BitSet[] counts = new BitSet[blanket.pieceCount()];
    for (int i = 0; i < asked.size(); i++) {
      for (int piece : asked.get(i).pieces()) {
        counts[piece] = counts[piece] == null ? new BitSet() : counts[piece];
        counts[piece].set(i);
      }
    }
    BitSet none = new BitSet();
    Map<List<Object>, Alike> alike = new LinkedHashMap<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      long look = blanket.look().border(piece) + 1L << 32 | blanket.look().zoneGroup(piece);
      long key = look * PieceKind.values().length + blanket.kind(piece).ordinal();
      BitSet counted = counts[piece] == null ? none : counts[piece];
      alike
          .computeIfAbsent(List.of(key, counted), k -> new Alike(new ArrayList<>(), counted))
          .pieces()
          .add(piece);
    }
    return alike.values();
  }

  private static BitSet allowed(Blanket blanket, int piece, int round) {
    ReadyLook look = blanket.look();
    int rounds = blanket.roundCount(piece);
    BitSet yarns = new BitSet();
    if (look.givesBorders() && round == rounds - 1) {
      yarns.set(look.border(piece));
      return yarns;
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      yarns.set(
          yarn,
          blanket.motifs().toneAllows(blanket.kind(piece), round, yarn)
              && look.allows(piece, round, rounds, yarn));
    }
    return yarns;
  }
}
