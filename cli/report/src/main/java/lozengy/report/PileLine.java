package lozengy.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.layout.PieceKind;

/**
 * Where the finished pieces of one sort go.
 *
 * @param kind what they are, as files write it
 * @param rounds codes of their yarns, centre first
 * @param at names of their places
 */
public record PileLine(String kind, List<String> rounds, List<String> at) {

  /** What the index is called. */
  public static String title(Blanket blanket) {
    int pieces = blanket.pile().count();
    return "Where the "
        + Figures.count(pieces, "finished piece")
        + " of the pile "
        + (pieces == 1 ? "goes" : "go")
        + ", by border and inwards";
  }

  /** One for each sort of the pile, in the brief's order. */
  static List<PileLine> of(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    PilePlacement laid = PilePlacement.of(blanket, arrangement.sequences());
    List<PileLine> lines = new ArrayList<>();
    List<Stack> stacks = blanket.pile().stacks();
    for (int i = 0; i < stacks.size(); i++) {
      int stack = i;
      lines.add(
          new PileLine(
              stacks.get(i).kind().word(),
              Arrays.stream(stacks.get(i).yarns())
                  .mapToObj(yarn -> blanket.yarn(yarn).code())
                  .toList(),
              IntStream.range(0, blanket.pieceCount())
                  .filter(piece -> laid.stack(piece) == stack)
                  .mapToObj(piece -> blanket.place(piece).name())
                  .toList()));
    }
    return lines;
  }

  /**
   * The same as an index from the piece in hand to its place: by kind, then by border and inwards,
   * in the order of the brief's yarns.
   */
  public static List<PileLine> index(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    List<String> kinds = Arrays.stream(PieceKind.values()).map(PieceKind::word).toList();
    List<PileLine> lines = new ArrayList<>(of(arrangement));
    lines.sort(
        Comparator.<PileLine>comparingInt(line -> kinds.indexOf(line.kind()))
            .thenComparing(
                line -> line.inwards().stream().map(blanket::yarnIndex).toList(),
                PileLine::inOrder));
    return lines;
  }

  private static int inOrder(List<Integer> first, List<Integer> second) {
    return Arrays.compare(
        first.stream().mapToInt(Integer::intValue).toArray(),
        second.stream().mapToInt(Integer::intValue).toArray());
  }

  /** Codes of their yarns, the border first. */
  public List<String> inwards() {
    List<String> inwards = new ArrayList<>(rounds);
    Collections.reverse(inwards);
    return inwards;
  }

  /** The same for programs. */
  Map<String, Object> data() {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("kind", kind);
    data.put("rounds", rounds);
    data.put("at", at);
    return data;
  }
}
