package lozengy.model.progress;

import java.util.List;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PileEntry;

/** One wish to change what is asked for in the middle of the work. */
public sealed interface Change {

  /** {@return what messages call the wish} */
  String place();

  /**
   * Pieces are to hold rounds, or not to take yarns.
   *
   * @param place what messages call it
   * @param note what is to hold
   */
  record Hold(String place, PieceNote note) implements Change {}

  /**
   * Planned pieces are to stay as they are planned.
   *
   * @param place what messages call it
   * @param at selectors of the pieces
   */
  record Lock(String place, List<String> at) implements Change {}

  /**
   * Planned pieces are no longer locked; bans stay.
   *
   * @param place what messages call it
   * @param at selectors of the pieces
   */
  record Free(String place, List<String> at) implements Change {}

  /**
   * A yarn is to be used no more: it is lost or no longer sold.
   *
   * @param place what messages call it
   * @param code the yarn
   */
  record Without(String place, String code) implements Change {}

  /**
   * A yarn takes another's place in what is still to be worked, its share and its joining and
   * edging included.
   *
   * @param place what messages call it
   * @param from the yarn to be used no more
   * @param to the yarn in its place
   */
  record Swap(String place, String from, String to) implements Change {}

  /**
   * The blanket is to have another size.
   *
   * @param place what messages call it
   * @param across squares in the first row, at least 1
   * @param down rows, at least 1
   * @param anchor the corner that stays where it is
   */
  record Resize(String place, int across, int down, Anchor anchor) implements Change {}

  /**
   * Made pieces that are not joined yet are to go back on the pile: they may lie at other places.
   *
   * @param place what messages call it
   * @param at selectors of the pieces; those that are not made stay as they are
   */
  record Move(String place, List<String> at) implements Change {}

  /**
   * Finished pieces are to be put on the pile.
   *
   * @param place what messages call it
   * @param entries the pieces
   */
  record Put(String place, List<PileEntry> entries) implements Change {}
}
