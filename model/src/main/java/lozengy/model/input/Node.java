package lozengy.model.input;

import java.util.List;
import java.util.OptionalInt;

/**
 * A value of a YAML or JSON file, with the line on which it stands. Both formats give the same
 * tree: scalars keep their text as written, so that {@code NO}, {@code 101} and {@code 1e3} are
 * what their reader takes them for.
 */
public sealed interface Node {

  /** {@return the line, from 1} */
  int line();

  /**
   * A single value.
   *
   * @param line its line, from 1
   * @param text its text as written, without the quotes and with escapes resolved
   * @param quoted whether it stood in quotes (or in a YAML block)
   */
  record Scalar(int line, String text, boolean quoted) implements Node {
    /** {@return whether it stands for nothing: empty, {@code ~} or {@code null}, without quotes} */
    public boolean empty() {
      return !quoted
          && (text.isEmpty()
              || text.equals("~")
              || text.length() == 4 && text.equalsIgnoreCase("null"));
    }
  }

  /**
   * A list.
   *
   * @param line the line of its field, or else of its start, from 1
   * @param items its values
   */
  record Items(int line, List<Node> items) implements Node {}

  /**
   * A set of fields with names that differ.
   *
   * @param line the line of its own field, or else of its start, from 1
   * @param fields its fields in the file's order
   */
  record Mapping(int line, List<Field> fields) implements Node {
    /**
     * {@return the value of a field, or null} O(fields).
     *
     * @param name the field's name
     */
    public Node get(String name) {
      for (Field field : fields) {
        if (field.name().equals(name)) {
          return field.value();
        }
      }
      return null;
    }
  }

  /**
   * A value that could not be read and of which a mistake tells.
   *
   * @param line its line, from 1
   */
  record Broken(int line) implements Node {}

  /**
   * A field of a mapping.
   *
   * @param line the line of its name, from 1
   * @param name its name
   * @param value its value
   */
  record Field(int line, String name, Node value) {}

  /**
   * {@return the line of a path such as {@code yarns[3].colour} below this node: that of the value
   * there, or, where it is missing, of the deepest node on the way to it} O(length of the path and
   * of the mappings on it).
   *
   * @param path where it stands
   */
  default int lineAt(BriefPath path) {
    Node node = this;
    for (BriefPath.Step step : path.steps()) {
      Node next = node.below(step);
      if (next == null) {
        break;
      }
      node = next;
    }
    return node.line();
  }

  /**
   * {@return the line of the value at a path, see {@link #lineAt}; empty where nothing stands
   * there}
   *
   * @param path where it stands
   */
  default OptionalInt lineOf(BriefPath path) {
    Node node = this;
    for (BriefPath.Step step : path.steps()) {
      node = node.below(step);
      if (node == null) {
        return OptionalInt.empty();
      }
    }
    return OptionalInt.of(node.line());
  }

  private Node below(BriefPath.Step step) {
    if (this instanceof Mapping mapping && step instanceof BriefPath.Name field) {
      return mapping.get(field.name());
    }
    if (this instanceof Items list && step instanceof BriefPath.Item item) {
      return item.index() < list.items().size() ? list.items().get(item.index()) : null;
    }
    return null;
  }
}
