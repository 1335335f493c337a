package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.solver.explain.remedy.Relaxation.FreePieces;

/** Steps that free pieces of one note's locks, put together to one. */
final class FreedTogether {

  private FreedTogether() {}

  /** The steps, those that free pieces of one note put together; the others as they are. */
  static List<Remedy.Step> of(List<Remedy.Step> steps) {
    Map<Object, List<Remedy.Step>> byNote = new LinkedHashMap<>();
    for (Remedy.Step step : steps) {
      Object key = step.change() instanceof FreePieces ? step.path() : step;
      byNote.computeIfAbsent(key, k -> new ArrayList<>()).add(step);
    }
    return byNote.values().stream()
        .map(each -> each.size() == 1 ? each.get(0) : together(each))
        .toList();
  }

  private static Remedy.Step together(List<Remedy.Step> steps) {
    List<FreePieces> each = steps.stream().map(step -> (FreePieces) step.change()).toList();
    List<Integer> pieces = each.stream().flatMap(free -> free.pieces().stream()).toList();
    // the last of a note's pieces takes all of it out
    boolean whole = each.stream().anyMatch(FreePieces::whole);
    boolean bans = each.stream().anyMatch(FreePieces::bans);
    Remedy.Step first = steps.get(0);
    return new Remedy.Step(new FreePieces(pieces, whole, bans), first.path(), first.value());
  }
}
