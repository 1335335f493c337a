package lozengy.model.input;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What reading YAML and JSON have in common: the limits, and fields given twice. */
final class TreeBuilder {

  static final String REMEDY_EMPTY =
      "Give a brief or an arrangement; its first line names the format";

  /** Deeper than any brief or arrangement. */
  private static final int MOST_DEEP = 32;

  /** The arrangement of the largest layout, all of it worked, solved from another, holds fewer. */
  private static final int MOST_VALUES = 12_000_000;

  /** Up to so many, comparing each with each is quicker than hashing. */
  private static final int FEW_FIELDS = 12;

  private static final int MOST_SHARED = 10_000;
  private static final int MOST_SHARED_LENGTH = 16;

  private final Mistakes mistakes;
  private final Map<String, String> shared = new HashMap<>();
  private final Object[] steps = new Object[MOST_DEEP + 1];
  private int depth;
  private int values;

  TreeBuilder(Mistakes mistakes) {
    this.mistakes = mistakes;
  }

  Mistakes mistakes() {
    return mistakes;
  }

  /** Begins a list or mapping; {@link #step} then says where in it the reading stands. */
  void enter(int line) {
    steps[++depth] = null;
    if (depth == MOST_DEEP) {
      throw mistakes.fatal(
          line,
          MistakeCode.TOO_LARGE.about("depth", MOST_DEEP - 1),
          "The input is nested " + MOST_DEEP + " deep or more",
          "Check that it is a brief or an arrangement; those are at most 8 deep");
    }
    count(line, 1);
  }

  /** The reading stands at a field (its name) or an item (its index) of the innermost container. */
  void step(Object nameOrIndex) {
    steps[depth] = nameOrIndex;
  }

  /** The path at which the reading stands. */
  BriefPath path() {
    BriefPath path = BriefPath.ROOT;
    for (int i = 1; i <= depth; i++) {
      if (steps[i] instanceof String name) {
        path = path.field(name);
      } else if (steps[i] != null) {
        path = path.item((Integer) steps[i]);
      }
    }
    return path;
  }

  Node.Items items(int line, List<Node> items) {
    depth--;
    return new Node.Items(line, List.copyOf(items));
  }

  Node.Mapping mapping(int line, List<Node.Field> fields) {
    count(line, fields.size());
    List<Node.Field> once = repeats(fields) ? withoutRepeats(fields) : fields;
    depth--;
    return new Node.Mapping(line, List.copyOf(once));
  }

  private static boolean repeats(List<Node.Field> fields) {
    if (fields.size() > FEW_FIELDS) {
      Set<String> names = new HashSet<>();
      fields.forEach(field -> names.add(field.name()));
      return names.size() < fields.size();
    }
    for (int i = 1; i < fields.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (fields.get(i).name().equals(fields.get(j).name())) {
          return true;
        }
      }
    }
    return false;
  }

  private List<Node.Field> withoutRepeats(List<Node.Field> fields) {
    Set<String> names = new HashSet<>();
    List<Node.Field> once = new ArrayList<>();
    for (Node.Field field : fields) {
      if (names.add(field.name())) {
        once.add(field);
      } else {
        step(field.name());
        mistakes.add(
            new Mistake(
                path(),
                field.line(),
                MistakeCode.FIELD_TWICE.about(field.name()),
                "The field " + Words.quoted(field.name()) + " is given twice",
                "Keep one of the two"));
      }
    }
    return once;
  }

  Node.Scalar scalar(int line, String text, boolean quoted) {
    count(line, 1);
    return new Node.Scalar(line, share(text), quoted);
  }

  /** One text object for equal texts: codes and words come again and again. */
  private String share(String text) {
    if (text.length() > MOST_SHARED_LENGTH || shared.size() >= MOST_SHARED) {
      return text;
    }
    String earlier = shared.putIfAbsent(text, text);
    return earlier == null ? text : earlier;
  }

  private void count(int line, int more) {
    values += more;
    if (values > MOST_VALUES) {
      throw mistakes.fatal(
          line,
          MistakeCode.TOO_LARGE.about("values", MOST_VALUES),
          "The input holds more than " + Words.number(MOST_VALUES) + " values and fields",
          "Check that it is a brief or an arrangement");
    }
  }
}
