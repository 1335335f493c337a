package lozengy.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * @param out how many stay out, because there are more pieces than places
 */
public record PileLine(String kind, List<String> rounds, List<String> at, int out) {

  /** What the index is called. */
  public static String title(Blanket blanket) {
    int pieces = blanket.pile().count();
    int out = out(blanket);
    return "Where the "
        + Figures.count(pieces, "finished piece")
        + " of the pile "
        + (pieces == 1 ? "goes" : "go")
        + ", by border and inwards"
        + (out == 0 ? "" : "; " + out + " more " + (out == 1 ? "stays" : "stay") + " out");
  }

  /** How many pieces of the pile stay out of the blanket. */
  private static int out(Blanket blanket) {
    return blanket.pile().out().stream().mapToInt(Stack::count).sum();
  }

  /** One for each sort of the pile: those that go somewhere first, in the brief's order. */
  static List<PileLine> of(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    PilePlacement laid = PilePlacement.of(blanket, arrangement.sequences());
    List<PileLine> lines = new ArrayList<>();
    List<Stack> stacks = blanket.pile().stacks();
    Map<List<Object>, Integer> out = new LinkedHashMap<>();
    blanket.pile().out().forEach(each -> out.put(sort(blanket, each), each.count()));
    for (int i = 0; i < stacks.size(); i++) {
      int stack = i;
      Stack each = stacks.get(i);
      lines.add(
          new PileLine(
              each.kind().word(),
              codes(blanket, each),
              IntStream.range(0, blanket.pieceCount())
                  .filter(piece -> laid.stack(piece) == stack)
                  .mapToObj(piece -> blanket.place(piece).name())
                  .toList(),
              Optional.ofNullable(out.remove(sort(blanket, each))).orElse(0)));
    }
    for (Stack each : blanket.pile().out()) {
      Integer left = out.get(sort(blanket, each));
      if (left != null) {
        lines.add(new PileLine(each.kind().word(), codes(blanket, each), List.of(), left));
      }
    }
    return lines;
  }

  private static List<Object> sort(Blanket blanket, Stack stack) {
    return List.of(stack.kind(), codes(blanket, stack));
  }

  private static List<String> codes(Blanket blanket, Stack stack) {
    return Arrays.stream(stack.yarns()).mapToObj(yarn -> blanket.yarn(yarn).code()).toList();
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

  /** Their places, and how many stay out. */
  public String places() {
    String stays = out == 1 ? " stays out" : " stay out";
    return at.isEmpty()
        ? out + stays
        : String.join(", ", at) + (out == 0 ? "" : "; " + out + " more" + stays);
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
    data.put("out", out);
    return data;
  }
}
