package lozengy.model.brief;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import lozengy.model.input.Nulls;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Place;

/**
 * A note's selectors parted in two. A group's word stays where all of its pieces fall on one side,
 * and gives way to names where they do not.
 *
 * @param chosen selectors of the pieces that were chosen
 * @param others selectors of the others
 */
public record NoteParts(List<String> chosen, List<String> others) {

  /**
   * Copies the lists.
   *
   * @param chosen selectors of the pieces that were chosen
   * @param others selectors of the others
   */
  public NoteParts {
    Nulls.refuse("chosen others", chosen, others);
    chosen = List.copyOf(chosen);
    others = List.copyOf(others);
  }

  /**
   * Parts a note's selectors; O(pieces that they stand for).
   *
   * @param layout the layout
   * @param note the note
   * @param isChosen tells of a place whether it is chosen
   * @return its selectors in two parts
   */
  public static NoteParts of(Layout layout, PieceNote note, Predicate<Place> isChosen) {
    Set<String> chosen = new LinkedHashSet<>();
    Set<String> others = new LinkedHashSet<>();
    for (String selector : note.at()) {
      List<Place> places = layout.select(selector);
      long count = places.stream().filter(isChosen).count();
      if (count == 0 || count == places.size()) {
        (count == 0 ? others : chosen).add(selector);
      } else {
        places.forEach(place -> (isChosen.test(place) ? chosen : others).add(place.name()));
      }
    }
    return new NoteParts(List.copyOf(chosen), List.copyOf(others));
  }

  /**
   * {@return notes with nothing held in some pieces: locks and states are gone there, bans stay}
   *
   * @param layout the layout
   * @param notes the notes
   * @param isChosen tells of a note and a place whether the note holds no more there
   */
  public static List<PieceNote> loosened(Layout layout, List<PieceNote> notes, Loosening isChosen) {
    List<PieceNote> left = new ArrayList<>();
    for (PieceNote note : notes) {
      NoteParts parts = of(layout, note, place -> isChosen.test(note, place));
      if (parts.chosen().isEmpty()) {
        left.add(note);
        continue;
      }
      if (!parts.others().isEmpty()) {
        left.add(note.of(parts.others()));
      }
      Optional<PieceNote> bans = note.of(parts.chosen()).bansOnly();
      bans.ifPresent(left::add);
    }
    return left;
  }

  /** Tells whether a note holds no more at a place. */
  @FunctionalInterface
  public interface Loosening {
    /**
     * {@return whether it holds no more}
     *
     * @param note the note
     * @param place a place that the note is about
     */
    boolean test(PieceNote note, Place place);
  }
}
