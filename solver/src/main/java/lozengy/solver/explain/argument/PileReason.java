package lozengy.solver.explain.argument;

import java.util.List;
import java.util.Map;
import lozengy.model.layout.PieceKind;

/** The pile's finished pieces do not fit. */
public sealed interface PileReason extends Reason {

  /**
   * Finished pieces of the pile, with all else that is certain, take more of a yarn than there is.
   *
   * @param yarn the yarn
   * @param onPile what the pile's pieces hold
   * @param beyond what of that lies beyond the stock, and is no shortage
   * @param seams what the borders of the pile's pieces take of their seams at the least
   * @param placed what other finished pieces hold
   * @param fixed what joining and edging take
   * @param usable what there is to use
   */
  record PileOverdrawn(
      int yarn, long onPile, long beyond, long seams, long placed, long fixed, long usable)
      implements PileReason {
    @Override
    public String code() {
      return "pile-overdrawn";
    }

    /** {@return what is missing, in mm} */
    public long missing() {
      return onPile - beyond + seams + placed + fixed - usable;
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public Map<String, Long> lengths() {
      return Map.ofEntries(
          Map.entry("pile", onPile),
          Map.entry("seams", seams),
          Map.entry("placed", placed),
          Map.entry("fixed", fixed),
          Map.entry("usable", usable),
          Map.entry("short", missing()));
    }

    @Override
    public Object matter() {
      return List.of(code(), yarn);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.pileOverdrawn(this);
    }
  }

  /**
   * Places that only finished pieces can fill, and the pile has too few that fit.
   *
   * @param pieces the places
   */
  record PlacesUnfilled(List<Integer> pieces) implements PileReason {
    @Override
    public String code() {
      return "places-unfilled";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.placesUnfilled(this);
    }
  }

  /**
   * Pieces of the pile that locks leave too few places.
   *
   * @param stacks indices of the pile's stacks
   * @param pieces the places where these can lie
   */
  record PileKeptOut(List<Integer> stacks, List<Integer> pieces) implements PileReason {
    @Override
    public String code() {
      return "pile-kept-out";
    }

    @Override
    public Object matter() {
      return List.of(code(), stacks, Matter.of(pieces));
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.pileKeptOut(this);
    }
  }

  /**
   * More pieces of the pile with one border, or with borders that look alike, than can lie apart.
   *
   * @param byKind how many pieces
   * @param yarns the borders
   * @param places how many can lie so that no two share a seam
   * @param worked whether worked pieces with such a border count too
   */
  record PileBordersMeet(
      Map<PieceKind, Integer> byKind, List<Integer> yarns, int places, boolean worked)
      implements PileReason {
    @Override
    public String code() {
      return "pile-borders-meet";
    }

    /** {@return how many pieces these are} */
    public int count() {
      return byKind.values().stream().mapToInt(Integer::intValue).sum();
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("pieces", count(), "places", places);
    }

    @Override
    public Object matter() {
      return List.of(code(), byKind.keySet(), yarns);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.pileBordersMeet(this);
    }
  }
}
