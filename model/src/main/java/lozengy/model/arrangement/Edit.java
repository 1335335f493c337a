package lozengy.model.arrangement;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Neighbours in a list that give way to others.
 *
 * @param <T> what the list holds
 * @param from where in the list as it was, from 0
 * @param out what stands there; may be none
 * @param in what comes in its place; may be none
 */
public record Edit<T>(int from, List<T> out, List<T> in) {

  /**
   * Copies the lists.
   *
   * @param from where in the list as it was, from 0
   * @param out what stands there; may be none
   * @param in what comes in its place; may be none
   */
  public Edit {
    out = List.copyOf(out);
    in = List.copyOf(in);
  }

  /**
   * {@return the edits that make one list of another, ascending; few where most items stay in their
   * order, though not always the fewest} O(items), with hashing.
   *
   * @param list the list
   * @param other the list that is to come of it
   * @param <T> what the lists hold
   */
  static <T> List<Edit<T>> between(List<T> list, List<T> other) {
    Map<T, Deque<Integer>> places = new HashMap<>();
    for (int i = 0; i < list.size(); i++) {
      places.computeIfAbsent(list.get(i), item -> new ArrayDeque<>()).add(i);
    }
    List<Edit<T>> edits = new ArrayList<>();
    int from = 0;
    List<T> in = new ArrayList<>();
    for (T item : other) {
      Deque<Integer> at = places.getOrDefault(item, new ArrayDeque<>());
      while (!at.isEmpty() && at.peek() < from) {
        at.remove();
      }
      if (at.isEmpty()) {
        in.add(item);
      } else {
        int kept = at.remove();
        add(edits, list, from, kept, in);
        from = kept + 1;
      }
    }
    add(edits, list, from, list.size(), in);
    return edits;
  }

  private static <T> void add(List<Edit<T>> edits, List<T> list, int from, int to, List<T> in) {
    if (from < to || !in.isEmpty()) {
      edits.add(new Edit<>(from, list.subList(from, to), in));
      in.clear();
    }
  }

  /**
   * {@return the list with edits made; empty where it is not the list that they were found for}
   *
   * @param list the list
   * @param edits the edits, ascending
   * @param <T> what the list holds
   */
  static <T> Optional<List<T>> apply(List<T> list, List<Edit<T>> edits) {
    List<T> made = new ArrayList<>();
    int from = 0;
    for (Edit<T> edit : edits) {
      int to = edit.from() + edit.out().size();
      if (edit.from() < from
          || to > list.size()
          || !list.subList(edit.from(), to).equals(edit.out())) {
        return Optional.empty();
      }
      made.addAll(list.subList(from, edit.from()));
      made.addAll(edit.in());
      from = to;
    }
    made.addAll(list.subList(from, list.size()));
    return Optional.of(made);
  }
}
