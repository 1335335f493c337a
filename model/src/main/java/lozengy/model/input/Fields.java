package lozengy.model.input;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The fields of a mapping. Those that are asked for are known; {@link #tellUnknown} afterwards adds
 * a mistake for each other one.
 */
public final class Fields {

  private final Node.Mapping mapping;
  private final String path;
  private final Mistakes mistakes;
  private final Set<String> known = new LinkedHashSet<>();

  Fields(Node.Mapping mapping, String path, Mistakes mistakes) {
    this.mapping = mapping;
    this.path = path;
    this.mistakes = mistakes;
  }

  /** The path of a field. */
  public String path(String name) {
    return path.isEmpty() ? name : path + "." + name;
  }

  /** A field that may be missing; one that stands for nothing counts as missing. */
  public Optional<Located> get(String name) {
    known.add(name);
    Node value = mapping.get(name);
    Located located = new Located(value, path(name), mistakes);
    return value == null || located.empty() ? Optional.empty() : Optional.of(located);
  }

  /**
   * A field that must be there.
   *
   * @param example a right line for it
   */
  public Optional<Located> need(String name, String example) {
    Optional<Located> found = get(name);
    if (found.isEmpty()) {
      Node value = mapping.get(name);
      mistakes.add(
          path(name),
          value == null ? mapping.line() : value.line(),
          "The field " + name + (value == null ? " is missing" : " is empty"),
          "Add it, such as " + example);
    }
    return found;
  }

  /** Adds a mistake for each field that was not asked for. */
  public void tellUnknown() {
    for (Node.Field field : mapping.fields()) {
      if (!known.contains(field.name())) {
        mistakes.add(
            path(field.name()),
            field.line(),
            "The field " + Words.quoted(field.name()) + " is not known here",
            remedy(field.name()));
      }
    }
  }

  private String remedy(String name) {
    if (name.matches("\\d+")) {
      return "A comma ends the value before it: write decimals with a point";
    }
    return Nearest.to(name, known)
        .map(near -> "Maybe " + near + " is meant")
        .orElse("Known here are " + String.join(", ", known));
  }

  /** Adds a mistake about the mapping as a whole, to be mended by a field. */
  public void lacks(String name, String found, String remedy) {
    mistakes.add(path(name), mapping.line(), found, remedy);
  }
}
