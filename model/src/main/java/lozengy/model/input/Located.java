package lozengy.model.input;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.input.Mistake.Sort;

/**
 * A value of an input with its path. Its readers add a mistake and give nothing where the value is
 * not what they read; for a value that is told of already they add none.
 */
public final class Located {

  private final Node node;
  private final Located parent;
  private final Object step;
  private final Mistakes mistakes;

  private Located(Node node, Located parent, Object step, Mistakes mistakes) {
    this.node = node;
    this.parent = parent;
    this.step = step;
    this.mistakes = mistakes;
  }

  /**
   * The root of an input.
   *
   * @param node the value that all others lie in
   * @param mistakes where mistakes go
   * @return the root
   */
  public static Located root(Node node, Mistakes mistakes) {
    return new Located(node, null, "", mistakes);
  }

  /**
   * A value below this one, at a field (its name) or an item (its index); null for a missing one.
   */
  Located child(Object nameOrIndex, Node value) {
    return new Located(value, this, nameOrIndex, mistakes);
  }

  /** {@return the value} */
  public Node node() {
    return node;
  }

  /** {@return where mistakes go} */
  public Mistakes mistakes() {
    return mistakes;
  }

  /** {@return its path, such as {@code yarns[3].colour}; put together when asked for} */
  public BriefPath path() {
    BriefPath above = parent == null ? BriefPath.ROOT : parent.path();
    if (step instanceof Integer index) {
      return above.item(index);
    }
    return parent == null ? above : above.field((String) step);
  }

  /**
   * Adds a mistake about this value.
   *
   * @param sort what sort of mistake it is
   * @param found what was found
   * @param remedy what would be right
   */
  public void wrong(Sort sort, String found, String remedy) {
    if (!(node instanceof Node.Broken)) {
      mistakes.add(new Mistake(path(), node.line(), sort, found, remedy));
    }
  }

  /**
   * Adds a mistake about a value below this one, with its line.
   *
   * @param mistake the mistake, with the path from here
   */
  public void add(Mistake mistake) {
    mistakes.add(mistake.at(mistake.path().in(path()), node.lineAt(mistake.path())));
  }

  /** A mistake that is about nothing but this value. */
  private void wrong(MistakeCode code, String found, String remedy) {
    wrong(code.about(value()), found, remedy);
  }

  private String value() {
    return node instanceof Node.Scalar scalar && !scalar.empty() ? scalar.text() : null;
  }

  /** {@return whether the value stands for nothing} */
  public boolean empty() {
    return node instanceof Node.Scalar scalar && scalar.empty();
  }

  /** {@return what the value is, in words for a message} */
  public String shown() {
    if (node instanceof Node.Scalar scalar) {
      return scalar.empty() ? "Nothing" : Words.quoted(scalar.text());
    }
    return node instanceof Node.Items ? "A list" : "A mapping with fields";
  }

  /**
   * A text of one line.
   *
   * @param mostCharacters longest text allowed
   * @return the value; empty if it is wrong, which is then among the mistakes
   */
  public Optional<String> text(int mostCharacters) {
    Optional<String> text = scalar("Give a text");
    if (text.isEmpty()) {
      return text;
    }
    String stripped = text.get().strip();
    if (stripped.isEmpty()) {
      wrong(MistakeCode.EMPTY_TEXT, "An empty text stands here", "Give a text");
    } else if (stripped.codePointCount(0, stripped.length()) > mostCharacters) {
      wrong(
          MistakeCode.TEXT_TOO_LONG.about(stripped, mostCharacters),
          shown() + " is longer than " + mostCharacters + " characters",
          "Give at most " + mostCharacters + " characters");
    } else if (!Words.printable(stripped)) {
      wrong(
          MistakeCode.CONTROL_CHARACTER,
          shown() + " holds a control character",
          "Give one line of plain text");
    } else {
      return Optional.of(stripped);
    }
    return Optional.empty();
  }

  /**
   * A single value's text as written.
   *
   * @param remedy what would be right
   * @return the value; empty if it is wrong, which is then among the mistakes
   */
  public Optional<String> scalar(String remedy) {
    if (node instanceof Node.Scalar scalar && !scalar.empty()) {
      return Optional.of(scalar.text());
    }
    wrong(MistakeCode.WRONG_TYPE, shown() + " stands here", remedy);
    return Optional.empty();
  }

  /**
   * One of some words.
   *
   * @param meanings the words that are right, with their meanings
   * @param <T> what a word means
   * @return the value; empty if it is wrong, which is then among the mistakes
   */
  public <T> Optional<T> word(Map<String, T> meanings) {
    String all = "Write " + Words.or(meanings.keySet());
    Optional<String> word = scalar(all);
    if (word.isPresent() && !meanings.containsKey(word.get())) {
      String remedy =
          Nearest.to(word.get(), meanings.keySet())
              .map(near -> all + "; maybe " + near + " is meant")
              .orElse(all);
      wrong(
          MistakeCode.UNKNOWN_WORD.about(word.get(), meanings.keySet()),
          shown() + " is not known here",
          remedy);
    }
    return word.map(meanings::get);
  }

  /**
   * A number without a unit.
   *
   * @param range the numbers that are right
   * @return the value; empty if it is wrong, which is then among the mistakes
   */
  public Optional<BigDecimal> number(Range range) {
    return number(range, "Give " + range.words());
  }

  /**
   * A number without a unit.
   *
   * @param range the numbers that are right
   * @param remedy what would be right
   * @return the value; empty if it is wrong, which is then among the mistakes
   */
  public Optional<BigDecimal> number(Range range, String remedy) {
    Optional<String> text = scalar(remedy);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<BigDecimal> number = Quantity.number(text.get());
    if (number.isEmpty()) {
      wrong(
          MistakeCode.NOT_A_NUMBER,
          shown() + " is not a number",
          Quantity.pointForComma(text.get()).orElse(remedy));
    } else if (((Node.Scalar) node).quoted()) {
      wrong(MistakeCode.QUOTED_NUMBER, shown() + " is a text", remedy + ", without quotes");
    } else if (range.holds(number.get())) {
      return number;
    } else {
      wrong(range.missed(text.get()), text.get() + " is out of range", remedy);
    }
    return Optional.empty();
  }

  /**
   * A number without a unit, or a fraction such as {@code 2 1/2}, which may stand in quotes.
   *
   * @param range the numbers that are right
   * @return the value; empty if it is wrong, which is then among the mistakes
   */
  public Optional<BigDecimal> numberOrFraction(Range range) {
    return Optional.of(node)
        .filter(Node.Scalar.class::isInstance)
        .map(scalar -> ((Node.Scalar) scalar).text())
        .filter(text -> text.indexOf('/') >= 0)
        .flatMap(Quantity::bare)
        .filter(range::holds)
        .or(() -> number(range));
  }

  /**
   * A number with its unit.
   *
   * @param ranges the units that are right, with their ranges
   * @param example a right value
   * @return the value; empty if it is wrong, which is then among the mistakes
   */
  public Optional<Quantity> quantity(Map<String, Range> ranges, String example) {
    String remedy = "Give a number in " + Words.or(ranges.keySet()) + ", such as " + example;
    Optional<String> text = scalar(remedy);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<Quantity> quantity = Quantity.parse(text.get());
    if (quantity.isEmpty()) {
      wrong(
          MistakeCode.NOT_A_QUANTITY,
          shown() + " is not a number with a unit",
          Quantity.pointForComma(text.get()).orElse(remedy));
    } else if (quantity.get().unit().isEmpty()) {
      wrong(MistakeCode.NO_UNIT, shown() + " has no unit", remedy);
    } else if (!ranges.containsKey(quantity.get().unit())) {
      wrong(
          MistakeCode.UNKNOWN_UNIT.about(quantity.get().unit(), ranges.keySet()),
          "The unit " + Words.quoted(quantity.get().unit()) + " is not known here",
          remedy);
    } else if (!ranges.get(quantity.get().unit()).holds(quantity.get().number())) {
      wrong(
          ranges.get(quantity.get().unit()).missed(text.get()),
          shown() + " is out of range",
          "Give " + ranges.get(quantity.get().unit()).words() + ", such as " + example);
    } else {
      return quantity;
    }
    return Optional.empty();
  }

  /**
   * A list.
   *
   * @param what what it lists, such as {@code yarns}
   * @return the values; none if this is no list, which is then among the mistakes
   */
  public List<Located> items(String what) {
    if (node instanceof Node.Items list) {
      List<Located> items = new ArrayList<>(list.items().size());
      for (Node item : list.items()) {
        items.add(child(items.size(), item));
      }
      return items;
    }
    wrong(MistakeCode.WRONG_TYPE, shown() + " stands here", "Give a list of " + what);
    return List.of();
  }

  /**
   * A list, or a single value in its stead.
   *
   * @param what what it lists, such as {@code yarns}
   * @return the values, at least this one if it is no list
   */
  public List<Located> itemOrItems(String what) {
    return node instanceof Node.Scalar ? List.of(this) : items(what);
  }

  /**
   * Fields.
   *
   * @return the fields; empty if this is no mapping, which is then among the mistakes
   */
  public Optional<Fields> fields() {
    if (node instanceof Node.Mapping mapping) {
      return Optional.of(new Fields(mapping, this));
    }
    wrong(
        MistakeCode.WRONG_TYPE,
        shown() + " stands here",
        "Give its fields, each with its name and a colon");
    return Optional.empty();
  }
}
