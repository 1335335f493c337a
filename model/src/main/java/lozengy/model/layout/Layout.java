package lozengy.model.layout;

import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jgrapht.Graph;

/**
 * The places of a blanket and how they lie to each other.
 *
 * <p>Places come in a fixed order: squares row by row from the top left, then the side triangles of
 * the top, right, bottom and left (top and bottom from the left, right and left from the top), then
 * the corners top left, top right, bottom right, bottom left. Built in O(pieces) time and memory;
 * immutable.
 */
public final class Layout {

  /** More pieces than this are refused: places and pairs are counted in ints. */
  public static final int MOST_PIECES = 50_000_000;

  private final LayoutSize size;
  private final List<Place> places;
  private final Map<String, Place> byName;
  private final Pairs seams;
  private final Pairs touches;
  private final Pairs near;
  private final PieceGroups groups;
  private Graph<Place, Contact> graph;

  private Layout(LayoutSize size) {
    this.size = size;
    this.places = List.copyOf(Places.of(size));
    Map<String, Place> names = new HashMap<>(places.size() * 2);
    places.forEach(place -> names.put(place.name(), place));
    this.byName = names;
    this.groups = new PieceGroups(this);
    LatticePairs pairs = new LatticePairs(size.setting(), places);
    this.seams = pairs.seams();
    this.touches = pairs.touches();
    this.near = pairs.near();
  }

  /**
   * Lays out the places of a size.
   *
   * @param size setting, squares across and down, and what is at the edges
   * @return the layout
   * @throws IllegalArgumentException if it has more than {@link #MOST_PIECES} pieces
   */
  public static Layout of(LayoutSize size) {
    if (size.pieces() > MOST_PIECES) {
      throw new IllegalArgumentException(
          size.pieces() + " pieces are more than the " + MOST_PIECES + " that can be laid out");
    }
    return new Layout(size);
  }

  /** {@return the size} */
  public LayoutSize size() {
    return size;
  }

  /** {@return all places, in the fixed order} */
  public List<Place> places() {
    return places;
  }

  /**
   * The place of that name.
   *
   * @param name a name such as {@code r3c2}
   * @return the place; empty if none is called so
   */
  public Optional<Place> find(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /**
   * The places that a selector stands for: a name such as {@code r3c2}, {@code top1} or {@code
   * top-left}; {@code row3}; {@code strip2}; {@code squares}, {@code triangles}, {@code corners};
   * {@code top}, {@code right}, {@code bottom}, {@code left}, {@code outline}; {@code all}; or a
   * range within one row, along one side, of rows or of strips, such as {@code r3c1..r3c6}. A name
   * takes O(1) time, a word O(pieces).
   *
   * @param selector the name, word or range
   * @return the places in the fixed order (strip by strip in a range of strips); empty if it stands
   *     for none
   */
  public synchronized List<Place> select(String selector) {
    return groups.find(selector);
  }

  /**
   * The places that any of several selectors stands for, each once.
   *
   * @param selectors names, words or ranges
   * @return the places in the order of the selectors
   */
  public List<Place> select(Collection<String> selectors) {
    if (selectors.size() == 1) {
      return select(selectors.iterator().next());
    }
    Set<Place> selected = new LinkedHashSet<>();
    selectors.forEach(selector -> selected.addAll(select(selector)));
    return List.copyOf(selected);
  }

  /** {@return how many strips there are; O(pieces log pieces) time on the first call} */
  public synchronized int stripCount() {
    return groups.stripCount();
  }

  /** {@return pairs of places that share a side} */
  public Pairs seams() {
    return seams;
  }

  /** {@return pairs of places that share only a corner point} */
  public Pairs touches() {
    return touches;
  }

  /**
   * {@return pairs of places that are neither, with lattice points (for a triangle, the centre of
   * the square it is cut from) at most the square root of 5 sides apart}
   */
  public Pairs near() {
    return near;
  }

  /**
   * The offsets between lattice points (for a triangle, the centre of the square it is cut from)
   * that are longer than one length and no longer than another, one of each two opposite ones.
   * O(pieces x offsets) on every call.
   *
   * @param beyondSquareSides square of the one length, in sides, 0 or more
   * @param squareSides square of the other length, in sides
   * @return the offsets, from the flattest down; one at which no two places lie has no pairs
   */
  public List<Offset> offsets(int beyondSquareSides, int squareSides) {
    return new LatticePairs(size.setting(), places).offsets(beyondSquareSides, squareSides);
  }

  /**
   * {@return the pieces that meet, as an unmodifiable graph with a vertex for every place and an
   * edge for every seam and touch} Built on the first call, which takes O(pieces) time and memory.
   */
  public synchronized Graph<Place, Contact> graph() {
    if (graph == null) {
      graph = LayoutGraph.of(this);
    }
    return graph;
  }
}
