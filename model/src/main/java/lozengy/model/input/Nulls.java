package lozengy.model.input;

import java.util.Collection;
import java.util.Map;
import java.util.stream.Stream;

/** Refuses null where a program hands it in, rather than where it is met much later. */
public final class Nulls {

  private Nulls() {}

  /**
   * Makes sure that nothing is null, nor any element of a collection, key or value of a map.
   *
   * @param names what the values are called, apart by blanks
   * @param values as many values, in the same order
   * @throws NullPointerException naming the first that is null or holds null
   */
  public static void refuse(String names, Object... values) {
    String[] each = names.split(" ");
    if (each.length != values.length) {
      throw new IllegalArgumentException(values.length + " values called " + names);
    }
    for (int i = 0; i < values.length; i++) {
      refuse(each[i], values[i]);
    }
  }

  private static void refuse(String name, Object value) {
    if (value == null) {
      throw new NullPointerException(name + " is null");
    }
    Stream<?> elements = Stream.of();
    if (value instanceof Collection<?> several) {
      elements = several.stream();
    } else if (value instanceof Map<?, ?> map) {
      elements = map.entrySet().stream().flatMap(e -> Stream.of(e.getKey(), e.getValue()));
    }
    if (elements.anyMatch(element -> element == null)) {
      throw new NullPointerException(name + " holds null");
    }
  }
}
