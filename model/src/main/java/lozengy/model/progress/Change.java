package lozengy.model.progress;

import java.util.List;
import java.util.Set;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PileEntry;

/** One wish to change what is asked for in the middle of the work. */
public sealed interface Change {

  /** {@return what messages call the wish} */
  String place();

  /**
   * Hands the wish to what treats its kind.
   *
   * @param cases what treats each kind
   * @param <R> what comes of it
   * @return what came of it
   */
  <R> R in(Cases<R> cases);

  /**
   * Treats each kind of wish: one that is forgotten does not compile.
   *
   * @param <R> what comes of it
   */
  interface Cases<R> {

    /**
     * {@return what comes of a wish to hold}
     *
     * @param hold the wish
     */
    R of(Hold hold);

    /**
     * {@return what comes of a wish to lock}
     *
     * @param lock the wish
     */
    R of(Lock lock);

    /**
     * {@return what comes of a wish to free}
     *
     * @param free the wish
     */
    R of(Free free);

    /**
     * {@return what comes of a wish for another brief}
     *
     * @param rebrief the wish
     */
    R of(Rebrief rebrief);

    /**
     * {@return what comes of a wish to do without a yarn}
     *
     * @param without the wish
     */
    R of(Without without);

    /**
     * {@return what comes of a wish to swap yarns}
     *
     * @param swap the wish
     */
    R of(Swap swap);

    /**
     * {@return what comes of a wish for another size}
     *
     * @param resize the wish
     */
    R of(Resize resize);

    /**
     * {@return what comes of a wish to move pieces}
     *
     * @param move the wish
     */
    R of(Move move);

    /**
     * {@return what comes of a wish to put pieces on the pile}
     *
     * @param put the wish
     */
    R of(Put put);
  }

  /**
   * Pieces are to hold rounds, or not to take yarns.
   *
   * @param place what messages call it
   * @param note what is to hold
   */
  record Hold(String place, PieceNote note) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * Planned pieces are to stay as they are planned.
   *
   * @param place what messages call it
   * @param at selectors of the pieces
   */
  record Lock(String place, List<String> at) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * Planned pieces are no longer locked; bans stay.
   *
   * @param place what messages call it
   * @param at selectors of the pieces
   */
  record Free(String place, List<String> at) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * Another brief is asked for. What is worked stays as it is, and so does what has come about with
   * yarns.
   *
   * @param place what messages call it
   * @param brief what is asked for instead
   * @param kept codes of yarns of which something has come about since the plan was made: what
   *     there is of them is as it stands, whatever the brief says
   */
  record Rebrief(String place, Brief brief, Set<String> kept) implements Change {

    /**
     * Copies the set.
     *
     * @param place what messages call it
     * @param brief what is asked for instead
     * @param kept codes of yarns of which something has come about since the plan was made
     */
    public Rebrief {
      kept = Set.copyOf(kept);
    }

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * A yarn is to be used no more: it is lost or no longer sold.
   *
   * @param place what messages call it
   * @param code the yarn
   */
  record Without(String place, String code) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * A yarn takes another's place in what is still to be worked, its share and its joining and
   * edging included.
   *
   * @param place what messages call it
   * @param from the yarn to be used no more
   * @param to the yarn in its place
   */
  record Swap(String place, String from, String to) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * The blanket is to have another size.
   *
   * @param place what messages call it
   * @param across squares in the first row, at least 1
   * @param down rows, at least 1
   * @param anchor the corner that stays where it is
   */
  record Resize(String place, int across, int down, Anchor anchor) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * Made pieces that are not joined yet are to go back on the pile: they may lie at other places.
   *
   * @param place what messages call it
   * @param at selectors of the pieces; those that are not made stay as they are
   */
  record Move(String place, List<String> at) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }

  /**
   * Finished pieces are to be put on the pile.
   *
   * @param place what messages call it
   * @param entries the pieces
   */
  record Put(String place, List<PileEntry> entries) implements Change {

    @Override
    public <R> R in(Cases<R> cases) {
      return cases.of(this);
    }
  }
}
