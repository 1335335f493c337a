package lozengy.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.PilePlacement;

/**
 * Where the finished pieces of one sort go.
 *
 * @param kind what they are, as files write it
 * @param rounds codes of their yarns, centre first
 * @param at names of their places
 */
record PileLine(String kind, List<String> rounds, List<String> at) {

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

  /** The same for programs. */
  Map<String, Object> data() {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("kind", kind);
    data.put("rounds", rounds);
    data.put("at", at);
    return data;
  }
}
