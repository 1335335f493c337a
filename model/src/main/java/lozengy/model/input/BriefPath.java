package lozengy.model.input;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A place in a file: the fields, by name, and items of lists, by index, that lead to it. Printed as
 * messages write it, such as {@code yarns[3].colour}.
 *
 * @param steps the steps from the file as a whole; none for the file itself
 * @param part what of that place is meant, where it speaks of several things, such as one piece of
 *     a note on many: {@code pieces[2] r3c2}
 */
public record BriefPath(List<Step> steps, Optional<String> part) {

  /** The file as a whole. */
  public static final BriefPath ROOT = new BriefPath(List.of(), Optional.empty());

  /** A step from a value to one that lies in it. */
  public sealed interface Step {}

  /**
   * To a field.
   *
   * @param name its name
   */
  public record Name(String name) implements Step {}

  /**
   * To an item of a list.
   *
   * @param index its index, from 0
   */
  public record Item(int index) implements Step {}

  /**
   * Copies the steps.
   *
   * @param steps the steps from the file as a whole; none for the file itself
   * @param part what of that place is meant, where it speaks of several things
   */
  public BriefPath {
    steps = List.copyOf(steps);
  }

  /**
   * {@return the place of a field, through the fields that it lies in}
   *
   * @param names the fields' names, the outermost first
   */
  public static BriefPath of(String... names) {
    List<Step> steps = new ArrayList<>();
    Arrays.stream(names).map(Name::new).forEach(steps::add);
    return new BriefPath(steps, Optional.empty());
  }

  /**
   * {@return the place of a field in this one}
   *
   * @param name the field's name
   */
  public BriefPath field(String name) {
    return with(new Name(name));
  }

  /**
   * {@return the place of an item in this list}
   *
   * @param index the item's index, from 0
   */
  public BriefPath item(int index) {
    return with(new Item(index));
  }

  /**
   * {@return the place of an item in this list; this itself where one value may stand for the list
   * and does}
   *
   * @param index the item's index, from 0
   * @param size how many the list holds
   */
  public BriefPath itemOf(int index, int size) {
    return size == 1 ? this : item(index);
  }

  private BriefPath with(Step step) {
    List<Step> more = new ArrayList<>(steps);
    more.add(step);
    return new BriefPath(more, Optional.empty());
  }

  /**
   * {@return one of the things that this place speaks of}
   *
   * @param name its name, such as a piece's
   */
  public BriefPath part(String name) {
    return new BriefPath(steps, Optional.of(name));
  }

  /** {@return the place without the part of it that is meant} */
  public BriefPath whole() {
    return new BriefPath(steps, Optional.empty());
  }

  /**
   * {@return the same place in a file that holds this one's file at a place of its own}
   *
   * @param outer where it holds it
   */
  public BriefPath in(BriefPath outer) {
    List<Step> all = new ArrayList<>(outer.steps);
    all.addAll(steps);
    return new BriefPath(all, part);
  }

  /**
   * {@return whether this is another place, or lies in it}
   *
   * @param outer the other place
   */
  public boolean within(BriefPath outer) {
    int length = outer.steps.size();
    return steps.size() >= length && steps.subList(0, length).equals(outer.steps);
  }

  /**
   * {@return whether this is an item of a list of the file, or lies in one}
   *
   * @param list the names that lead to the list
   */
  public boolean inItem(String... list) {
    return within(of(list)) && itemAt(list.length).isPresent();
  }

  /**
   * {@return this place as seen from another, which it lies in; itself where it does not}
   *
   * @param outer the other place
   */
  public BriefPath from(BriefPath outer) {
    return within(outer)
        ? new BriefPath(steps.subList(outer.steps.size(), steps.size()), part)
        : this;
  }

  /** {@return the first field on the way, such as {@code yarns}} */
  public Optional<String> first() {
    return !steps.isEmpty() && steps.get(0) instanceof Name name
        ? Optional.of(name.name())
        : Optional.empty();
  }

  /** {@return the first index on the way, such as 3 of {@code yarns[3].balls}} */
  public OptionalInt index() {
    for (int i = 0; i < steps.size(); i++) {
      if (itemAt(i).isPresent()) {
        return itemAt(i);
      }
    }
    return OptionalInt.empty();
  }

  private OptionalInt itemAt(int step) {
    return step < steps.size() && steps.get(step) instanceof Item item
        ? OptionalInt.of(item.index())
        : OptionalInt.empty();
  }

  /** {@return the way as messages write it, such as {@code yarns[3].colour}} */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (Step step : steps) {
      if (step instanceof Item item) {
        text.append('[').append(item.index()).append(']');
      } else {
        text.append(text.length() == 0 ? "" : ".").append(((Name) step).name());
      }
    }
    part.ifPresent(name -> text.append(' ').append(name));
    return text.toString();
  }
}
