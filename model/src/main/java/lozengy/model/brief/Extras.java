package lozengy.model.brief;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Fields;
import lozengy.model.input.JsonText;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.Nulls;

/**
 * Fields of a file that are not this program's: those that begin with {@code x-}, and those of a
 * newer form. They mean nothing here and are written again as they were.
 *
 * <p>Places are told so that they outlast changes: an item of a list of yarns, pieces or notes by
 * what it is called, any other by its number. Of entries of a pile that are called alike, the
 * second and later are told by their number among these.
 *
 * @param newer second number of the form that the file states, 0 for none
 * @param fields for the place of each mapping that has some, their names and values as JSON
 */
public record Extras(int newer, Map<BriefPath, Map<String, String>> fields) {

  /** Between the name of an item and its number, where there are several of that name. */
  private static final String REPEATED = " #";

  /** None. */
  public static final Extras NONE = new Extras(0, Map.of());

  /**
   * Copies the map.
   *
   * @param newer second number of the form that the file states, 0 for none
   * @param fields for the place of each mapping that has some, their names and values as JSON
   */
  public Extras {
    Nulls.refuse("fields", fields);
    Map<BriefPath, Map<String, String>> copy = new LinkedHashMap<>();
    fields.forEach(
        (at, values) -> copy.put(at, Collections.unmodifiableMap(new LinkedHashMap<>(values))));
    fields = Collections.unmodifiableMap(copy);
  }

  /**
   * {@return what was kept of a file or a part of it}
   *
   * @param newer second number of the form that it states, 0 for none
   * @param mistakes what kept them
   * @param root the part's place
   * @param without a place in that part whose fields belong to another
   * @param names the names of items, by list
   */
  public static Extras read(
      int newer,
      Mistakes mistakes,
      BriefPath root,
      BriefPath without,
      Map<String, List<String>> names) {
    Map<BriefPath, Map<String, String>> fields = new LinkedHashMap<>();
    mistakes
        .foreign()
        .forEach(
            (path, value) -> {
              if (path.within(root) && (without.equals(root) || !path.within(without))) {
                List<BriefPath.Step> steps = path.from(root).steps();
                BriefPath at = new BriefPath(steps.subList(0, steps.size() - 1), none());
                String name = ((BriefPath.Name) steps.get(steps.size() - 1)).name();
                fields
                    .computeIfAbsent(named(at, names), each -> new LinkedHashMap<>())
                    .put(name, json(value));
              }
            });
    return newer == 0 && fields.isEmpty() ? NONE : new Extras(newer, fields);
  }

  /**
   * {@return whether a field is another program's, and not of a newer form}
   *
   * @param name its name
   */
  public static boolean foreign(String name) {
    return name.startsWith(Fields.FOREIGN);
  }

  private static Optional<String> none() {
    return Optional.empty();
  }

  private static BriefPath named(BriefPath at, Map<String, List<String>> names) {
    return replaced(
        at,
        (list, step) ->
            names.containsKey(list)
                    && step instanceof BriefPath.Item item
                    && item.index() < names.get(list).size()
                ? new BriefPath.Name(names.get(list).get(item.index()))
                : step);
  }

  /** The names with a number after each that is there before. */
  static List<String> distinct(List<String> names) {
    Map<String, Integer> times = new HashMap<>();
    return names.stream()
        .map(
            name -> {
              int time = times.merge(name, 1, Integer::sum);
              return time == 1 ? name : name + REPEATED + time;
            })
        .toList();
  }

  /** Where an item is now: with the first of its name, where it is told from that no more. */
  private static int index(List<String> names, String name) {
    int index = names.indexOf(name);
    int repeated = name.lastIndexOf(REPEATED);
    return index < 0 && repeated > 0 ? names.indexOf(name.substring(0, repeated)) : index;
  }

  /** The place with its second step, an item of the list that the first one names, told anew. */
  private static BriefPath replaced(
      BriefPath at, BiFunction<String, BriefPath.Step, BriefPath.Step> step) {
    if (at.steps().size() < 2 || !(at.steps().get(0) instanceof BriefPath.Name list)) {
      return at;
    }
    List<BriefPath.Step> steps = new ArrayList<>(at.steps());
    steps.set(1, step.apply(list.name(), steps.get(1)));
    return new BriefPath(steps, none());
  }

  /**
   * {@return the fields by the numbers of items as they are now; without those of items that are
   * there no more}
   *
   * @param names the names of items, by list, as they are now
   */
  public Map<BriefPath, Map<String, String>> placed(Map<String, List<String>> names) {
    Map<BriefPath, Map<String, String>> placed = new LinkedHashMap<>();
    fields.forEach(
        (at, values) -> {
          BriefPath now =
              replaced(
                  at,
                  (list, step) ->
                      names.containsKey(list) && step instanceof BriefPath.Name name
                          ? new BriefPath.Item(index(names.get(list), name.name()))
                          : step);
          if (now.index().orElse(0) >= 0) {
            placed.merge(now, values, Extras::joined);
          }
        });
    return placed;
  }

  private static Map<String, String> joined(Map<String, String> one, Map<String, String> more) {
    Map<String, String> both = new LinkedHashMap<>(one);
    more.forEach(both::putIfAbsent);
    return both;
  }

  /**
   * {@return these, and those of another that these do not say}
   *
   * @param other the other
   */
  public Extras over(Extras other) {
    Map<BriefPath, Map<String, String>> all = new LinkedHashMap<>();
    other.fields.forEach((at, values) -> all.put(at, new LinkedHashMap<>(values)));
    fields.forEach(
        (at, values) -> all.computeIfAbsent(at, each -> new LinkedHashMap<>()).putAll(values));
    return new Extras(Math.max(newer, other.newer), all);
  }

  /**
   * A value as JSON on one line: an unquoted scalar is a number or a truth value if it looks so.
   */
  private static String json(Node node) {
    if (node instanceof Node.Mapping mapping) {
      List<String> fields =
          mapping.fields().stream()
              .map(field -> JsonText.quoted(field.name()) + ": " + json(field.value()))
              .toList();
      return "{" + String.join(", ", fields) + "}";
    }
    if (node instanceof Node.Items list) {
      return "[" + String.join(", ", list.items().stream().map(Extras::json).toList()) + "]";
    }
    if (node instanceof Node.Scalar scalar && !scalar.empty()) {
      boolean bare =
          !scalar.quoted()
              && scalar.text().matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][-+]?\\d{1,3})?|true|false");
      return bare ? scalar.text() : JsonText.quoted(scalar.text());
    }
    return "null";
  }
}
