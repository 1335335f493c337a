package lozengy.report.tables;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A column of a table.
 *
 * @param name its name, in lower case with underscores; a unit stands at the end
 * @param type what its cells hold
 * @param description what they mean
 * @param constraints what holds for every cell, in the words of Table Schema
 */
record Column(String name, Type type, String description, Map<String, Object> constraints) {

  private static final String REQUIRED = "required";

  /** What cells hold, with the word that Table Schema has for it. */
  enum Type {
    STRING("string", String.class),
    INTEGER("integer", Long.class),
    NUMBER("number", BigDecimal.class),
    BOOLEAN("boolean", Boolean.class);

    private final String word;
    private final Class<?> cells;

    Type(String word, Class<?> cells) {
      this.word = word;
      this.cells = cells;
    }

    String word() {
      return word;
    }

    boolean holds(Object cell) {
      return cells.isInstance(cell);
    }
  }

  static Column text(String name, String description) {
    return new Column(name, Type.STRING, description, Map.of(REQUIRED, true));
  }

  static Column whole(String name, String description, int least) {
    return new Column(name, Type.INTEGER, description, with("minimum", least));
  }

  /** Whole numbers, below 0 too. */
  static Column integer(String name, String description) {
    return new Column(name, Type.INTEGER, description, Map.of(REQUIRED, true));
  }

  static Column number(String name, String description) {
    return new Column(name, Type.NUMBER, description, Map.of(REQUIRED, true));
  }

  static Column flag(String name, String description) {
    return new Column(name, Type.BOOLEAN, description, Map.of(REQUIRED, true));
  }

  /** Text that is one of a few words. */
  static Column word(String name, String description, List<String> words) {
    return new Column(name, Type.STRING, description, with("enum", words));
  }

  /** The same column with cells that may be empty. */
  Column optional() {
    Map<String, Object> rest = new LinkedHashMap<>(constraints);
    rest.remove(REQUIRED);
    return new Column(name, type, description, rest);
  }

  /** Whether a cell may stand in this column; null is an empty cell. */
  boolean takes(Object cell) {
    return cell == null ? !constraints.containsKey(REQUIRED) : type.holds(cell);
  }

  private static Map<String, Object> with(String constraint, Object value) {
    Map<String, Object> constraints = new LinkedHashMap<>();
    constraints.put(REQUIRED, true);
    constraints.put(constraint, value);
    return constraints;
  }
}
