package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import lozengy.model.colour.Tone;
import lozengy.model.input.Nulls;

/**
 * One ring of a motif.
 *
 * @param tones tones it may take, not empty; all three where the brief states none
 * @param amount yarn that it takes, in an amount or in stitches
 * @param minutes how long it takes, in minutes above 0, where that is stated
 */
public record Round(Set<Tone> tones, RoundYarn amount, Optional<BigDecimal> minutes) {

  /**
   * Copies the tones.
   *
   * @param tones tones it may take, not empty; all three where the brief states none
   * @param amount yarn that it takes, in an amount or in stitches
   * @param minutes how long it takes, in minutes above 0, where that is stated
   * @throws IllegalArgumentException if no tone is allowed
   */
  public Round {
    Nulls.refuse("tones amount minutes", tones, amount, minutes);
    tones = Set.copyOf(tones);
    minutes = minutes.map(BigDecimal::stripTrailingZeros);
    if (tones.isEmpty()) {
      throw new IllegalArgumentException("a round must allow at least one tone");
    }
  }

  /**
   * A round that does not say how long it takes.
   *
   * @param tones tones it may take, not empty; all three where the brief states none
   * @param amount yarn that it takes, in an amount or in stitches
   * @throws IllegalArgumentException if no tone is allowed
   */
  public Round(Set<Tone> tones, RoundYarn amount) {
    this(tones, amount, Optional.empty());
  }

  /**
   * {@return this round with other tones}
   *
   * @param others tones it may take, not empty
   */
  public Round withTones(Set<Tone> others) {
    return new Round(others, amount, minutes);
  }
}
