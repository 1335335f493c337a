package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Words;
import lozengy.model.layout.GroupedNames;
import lozengy.model.layout.Layout;

/** Steps that free pieces of one note's locks, told as one. */
final class FreedTogether {

  /** The option of {@code solve} that such steps are. */
  static final String OPTION = "--free";

  private FreedTogether() {}

  /** The steps, those that free pieces of one note put together; the others as they are. */
  static List<Remedy.Step> of(Layout layout, List<Remedy.Step> steps) {
    Map<Object, List<Remedy.Step>> byNote = new LinkedHashMap<>();
    for (Remedy.Step step : steps) {
      Object key = frees(step) ? step.path() : step;
      byNote.computeIfAbsent(key, k -> new ArrayList<>()).add(step);
    }
    return byNote.values().stream()
        .map(each -> each.size() == 1 ? each.get(0) : together(layout, each))
        .toList();
  }

  private static boolean frees(Remedy.Step step) {
    return !step.options().isEmpty() && step.options().get(0).equals(OPTION);
  }

  private static Remedy.Step together(Layout layout, List<Remedy.Step> steps) {
    List<String> pieces = steps.stream().map(step -> step.options().get(1)).toList();
    List<String> names = GroupedNames.of(layout, layout.select(pieces));
    // the last of a note's pieces takes all of it out
    Optional<String> whole =
        steps.stream()
            .flatMap(s -> s.value().stream())
            .filter(v -> !v.endsWith(" of it"))
            .findAny();
    String value = whole.orElse("leave " + String.join(", ", names) + " out of it");
    return new Remedy.Step(
        "free " + Words.list(names) + (names.size() == 1 ? " of its lock" : " of their locks"),
        steps.get(0).path(),
        Optional.of(value),
        List.of(OPTION, String.join(",", names)));
  }
}
