package lozengy.model.input;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import lozengy.model.input.Mistake.Sort;

/**
 * The fields of a mapping. Those that are asked for are known; {@link #tellUnknown} afterwards adds
 * a mistake for each other one, but for those that other programs may have added.
 */
public final class Fields {

  /** Fields that begin like this are other programs', whatever they hold. */
  public static final String FOREIGN = "x-";

  private final Node.Mapping mapping;
  private final Located at;
  private final Set<String> known = new LinkedHashSet<>();

  Fields(Node.Mapping mapping, Located at) {
    this.mapping = mapping;
    this.at = at;
  }

  private BriefPath path(String name) {
    return at.child(name, null).path();
  }

  /**
   * A field that may be missing; one that stands for nothing counts as missing.
   *
   * @param name the field's name
   * @return the value; empty if it is missing
   */
  public Optional<Located> get(String name) {
    known.add(name);
    Node value = mapping.get(name);
    if (value == null) {
      return Optional.empty();
    }
    Located located = at.child(name, value);
    return located.empty() ? Optional.empty() : Optional.of(located);
  }

  /**
   * A field that must be there.
   *
   * @param name the field's name
   * @param example a right line for it
   * @return the value; empty if it is missing, which is then among the mistakes
   */
  public Optional<Located> need(String name, String example) {
    Optional<Located> found = get(name);
    if (found.isEmpty()) {
      Node value = mapping.get(name);
      at.mistakes()
          .add(
              new Mistake(
                  path(name),
                  value == null ? mapping.line() : value.line(),
                  (value == null ? MistakeCode.FIELD_MISSING : MistakeCode.FIELD_EMPTY).about(name),
                  "The field " + name + (value == null ? " is missing" : " is empty"),
                  "Add it, such as " + example));
    }
    return found;
  }

  /**
   * Adds a mistake for each field that was not asked for. What begins with {@code x-} is kept
   * instead, and where the input states a newer form, so is what does not look like a known field
   * with a typing mistake.
   */
  public void tellUnknown() {
    for (Node.Field field : mapping.fields()) {
      if (known.contains(field.name())) {
        continue;
      }
      if (field.name().startsWith(FOREIGN) || at.mistakes().isNewer() && unlike(field.name())) {
        at.mistakes().keep(path(field.name()), field.value());
        continue;
      }
      at.mistakes()
          .add(
              new Mistake(
                  path(field.name()),
                  field.line(),
                  MistakeCode.FIELD_UNKNOWN.about(field.name()),
                  "The field " + Words.quoted(field.name()) + " is not known here",
                  remedy(field.name())));
    }
  }

  private boolean unlike(String name) {
    return Nearest.to(name, known).isEmpty();
  }

  private String remedy(String name) {
    if (name.matches("\\d+\\s*\\D{0,6}")) {
      return "A comma ends the value before it: write decimals with a point";
    }
    return Nearest.to(name, known)
        .map(near -> "Maybe " + near + " is meant")
        .orElse("Known here are " + String.join(", ", known));
  }

  /**
   * Adds a mistake about the mapping as a whole, to be mended by a field.
   *
   * @param name the field's name
   * @param found what was found
   * @param remedy what would be right
   */
  public void lacks(String name, String found, String remedy) {
    Sort sort = MistakeCode.FIELD_MISSING.about(name);
    at.mistakes().add(path(name), mapping.line(), sort, found, remedy);
  }
}
