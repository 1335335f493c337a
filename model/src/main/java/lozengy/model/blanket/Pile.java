package lozengy.model.blanket;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import lozengy.model.brief.PileEntry;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;

/**
 * Finished pieces that have no place yet, those that are alike counted together. Immutable.
 *
 * @param stacks the pieces that go into the blanket, in the brief's order
 * @param out the pieces that stay out of it, in the brief's order
 */
public record Pile(List<Stack> stacks, List<Stack> out) {

  /**
   * Copies the lists.
   *
   * @param stacks the pieces that go into the blanket, in the brief's order
   * @param out the pieces that stay out of it, in the brief's order
   */
  public Pile {
    stacks = List.copyOf(stacks);
    out = List.copyOf(out);
  }

  /**
   * Finished pieces of one kind with the same yarns.
   *
   * @param kind what they are
   * @param yarns indices of their yarns, centre first; not to be changed
   * @param count how many, at least 1
   * @param path where the brief first names such a piece
   * @param also where else it names some of them
   */
  public record Stack(
      PieceKind kind, int[] yarns, int count, BriefPath path, List<BriefPath> also) {

    /** {@return the yarn of their borders} */
    public int border() {
      return yarns[yarns.length - 1];
    }
  }

  /**
   * Stacks a brief's pile.
   *
   * @param entries what the brief says
   * @param yarnIndex index of each yarn by its code
   */
  static Pile of(List<PileEntry> entries, Map<String, Integer> yarnIndex) {
    return new Pile(
        stacks(entries, PileEntry::laid, yarnIndex), stacks(entries, PileEntry::out, yarnIndex));
  }

  private static List<Stack> stacks(
      List<PileEntry> entries, ToIntFunction<PileEntry> count, Map<String, Integer> yarnIndex) {
    Map<List<Object>, Stack> stacks = new LinkedHashMap<>();
    for (int i = 0; i < entries.size(); i++) {
      PileEntry entry = entries.get(i);
      if (count.applyAsInt(entry) == 0) {
        continue;
      }
      int[] yarns = entry.rounds().stream().mapToInt(yarnIndex::get).toArray();
      BriefPath path = BriefPath.of("pile").item(i);
      stacks.merge(
          List.of(entry.kind(), IntBuffer.wrap(yarns)),
          new Stack(entry.kind(), yarns, count.applyAsInt(entry), path, List.of()),
          (one, more) ->
              new Stack(
                  one.kind(),
                  one.yarns(),
                  one.count() + more.count(),
                  one.path(),
                  with(one.also(), more.path())));
    }
    return new ArrayList<>(stacks.values());
  }

  private static List<BriefPath> with(List<BriefPath> paths, BriefPath more) {
    return Stream.concat(paths.stream(), Stream.of(more)).toList();
  }

  /** {@return whether no piece of it goes into the blanket} */
  public boolean isEmpty() {
    return stacks.isEmpty();
  }

  /**
   * {@return how many pieces of a kind go into the blanket}
   *
   * @param kind the kind of piece
   */
  public int count(PieceKind kind) {
    return stacks.stream().filter(s -> s.kind() == kind).mapToInt(Stack::count).sum();
  }

  /** {@return how many pieces go into the blanket} */
  public int count() {
    return stacks.stream().mapToInt(Stack::count).sum();
  }

  /**
   * By ordinal of the kind of piece, round and yarn: whether a piece shows it; null for a kind of
   * which none lies on it.
   */
  boolean[][][] shown(int yarnCount) {
    boolean[][][] shown = new boolean[PieceKind.values().length][][];
    for (Stack stack : stacks) {
      int kind = stack.kind().ordinal();
      if (shown[kind] == null) {
        shown[kind] = new boolean[stack.yarns().length][yarnCount];
      }
      for (int round = 0; round < stack.yarns().length; round++) {
        shown[kind][round][stack.yarns()[round]] = true;
      }
    }
    return shown;
  }
}
