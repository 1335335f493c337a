package lozengy.model.brief;

import java.util.List;
import java.util.stream.Stream;

/** A part of the score; each runs from 0 to 100. */
public enum Part {
  /** How near yarns come to their shares. */
  BALANCE,
  /** How far apart repeats of a yarn lie. */
  SPREAD,
  /** How different borders on a seam and rounds beside each other look. */
  CONTRAST,
  /** How many pieces are alike. */
  VARIETY,
  /** How much is left of each yarn, those that come out short most. */
  LEEWAY,
  /** How much of an earlier arrangement is kept. */
  KEEP,
  /** How different borders on a seam look to people of any colour vision. */
  COLOUR_VISION,
  /** How well yarns follow their order along the direction of a fade. */
  FADE,
  /** How regularly, or how little so, borders come again. */
  ORDER,
  /** The contrast of borders on a seam alone. */
  CONTRAST_BETWEEN,
  /** The contrast of rounds beside each other alone. */
  CONTRAST_WITHIN;

  /** The parts that make up the total: all but {@link #KEEP}, which is told beside it. */
  public static final List<Part> OF_TOTAL =
      Stream.of(values()).filter(part -> part != KEEP).toList();

  /** {@return whether the part is scored only where a brief gives it a weight above 0} */
  public boolean onlyIfAsked() {
    return Preferences.DEFAULT.weight(this) == 0;
  }

  /** {@return the word used in files and on the terminal} */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
  }
}
