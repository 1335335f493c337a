package lozengy.solver.explain.argument;

import java.util.List;
import java.util.Map;

/**
 * Why nothing fits, as data: what a direct argument found, which alone is a proof. Pieces and yarns
 * are indices of the blanket, rounds count from 0 at the centre, lengths are in mm.
 */
public sealed interface Reason
    permits RoundReason, SeamReason, StockReason, CountReason, PileReason {

  /** {@return what sort of reason it is, a stable word for programs} */
  String code();

  /** {@return the pieces that it is about; empty where it is about no single ones} */
  default List<Integer> pieces() {
    return List.of();
  }

  /** {@return the rounds that it is about; empty where it is about no single ones} */
  default List<Integer> rounds() {
    return List.of();
  }

  /** {@return the yarns that it is about} */
  default List<Integer> yarns() {
    return List.of();
  }

  /** {@return its lengths in mm, by name} */
  default Map<String, Long> lengths() {
    return Map.of();
  }

  /** {@return its numbers of pieces or rounds, by name} */
  default Map<String, Integer> counts() {
    return Map.of();
  }

  /**
   * {@return what stays the same where a change of the brief only changes its numbers: two reasons
   * of one matter are one trouble, more or less of it}
   */
  default Object matter() {
    return this;
  }

  /**
   * {@return what one of the cases gives for it}
   *
   * @param cases a case for each sort of reason
   * @param <T> what they give
   */
  <T> T in(Cases<T> cases);

  /**
   * A case for each sort of reason.
   *
   * @param <T> what they give
   */
  interface Cases<T> {
    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T allKeptBack(StockReason.AllKeptBack reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T noSuchTone(RoundReason.NoSuchTone reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T lockBarred(RoundReason.LockBarred reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T nothingLeft(RoundReason.NothingLeft reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T roundsAlike(RoundReason.RoundsAlike reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T seamStuck(SeamReason.SeamStuck reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T imagesJoined(SeamReason.ImagesJoined reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T imagesShareNone(RoundReason.ImagesShareNone reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T yarnOverdrawn(StockReason.YarnOverdrawn reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T pileOverdrawn(PileReason.PileOverdrawn reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T roundTooLong(StockReason.RoundTooLong reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T tooFewSequences(CountReason.TooFewSequences reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countTooFew(CountReason.CountTooFew reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countTooMany(CountReason.CountTooMany reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countOfImages(CountReason.CountOfImages reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countsTogether(CountReason.CountsTogether reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T yarnShort(StockReason.YarnShort reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T placesUnfilled(PileReason.PlacesUnfilled reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T pileKeptOut(PileReason.PileKeptOut reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T pileBordersMeet(PileReason.PileBordersMeet reason);
  }
}
