package lozengy.model.check;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * A rule: what it is called, what lines of a brief ask for it and what they come down to for single
 * rounds, and, apart from that, its plain check with its words. The check. Works on incomplete
 * sequences too: it then finds the faults that the rounds set so far make certain.
 *
 * <p>What has been worked is a fact: a rule about one piece finds no fault with a made or joined
 * piece, and a rule about several finds none where all of them are joined (for copies and yarn
 * totals see there).
 */
public interface Rule {

  /** What to do where a lock breaks a rule. */
  String HOLD_ANOTHER = "Hold another yarn there";

  /** {@return the rule's id} */
  RuleId id();

  /**
   * {@return the lines of the brief that ask for this rule, and what each comes down to; none where
   * the brief asks nothing} Says the same as {@link #faults}, which knows nothing of it.
   *
   * @param blanket the blanket
   */
  List<BriefLine> lines(Blanket blanket);

  /**
   * {@return how a line of the rule can be given up as a whole, where that is all there is to ask
   * less of it}
   *
   * @param line one of its lines
   */
  default Optional<Easing> easing(BriefLine line) {
    return Optional.empty();
  }

  /**
   * {@return whether what a brief holds of single pieces can break it, whatever the other rounds
   * take}
   */
  default boolean judgesLocks() {
    return true;
  }

  /** {@return what to do where locks of a brief break it, in a sentence without a point} */
  default String insteadOfLock() {
    return HOLD_ANOTHER;
  }

  /**
   * Finds all faults.
   *
   * @param blanket the blanket
   * @param sequences yarns of its pieces
   * @return the faults in order of the pieces; empty if the rule holds
   * @throws IllegalArgumentException if the sequences have not the blanket's pieces and rounds, or
   *     name a yarn that it has not
   */
  List<Fault> faults(Blanket blanket, Sequences sequences);
}
