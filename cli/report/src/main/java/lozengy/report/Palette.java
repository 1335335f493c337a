package lozengy.report;

import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.Lab;
import lozengy.model.colour.LabColours;
import lozengy.model.colour.Srgb;

/** The 256 colours of xterm, of which 16 are the user's own; the others are fixed (from memory). */
public final class Palette {

  private static final int[] STEPS = {0, 95, 135, 175, 215, 255};
  private static final int FIRST = 16;
  private static final int GREYS = FIRST + 6 * 6 * 6;

  private Palette() {}

  /** The number of the fixed colour nearest to another, by CIEDE2000. */
  public static int nearest(Srgb colour) {
    Lab wanted = LabColours.of(colour);
    int best = FIRST;
    double least = Double.MAX_VALUE;
    for (int number = FIRST; number < 256; number++) {
      double difference = ColourDifference.ciede2000(wanted, LabColours.of(colour(number)));
      if (difference < least) {
        least = difference;
        best = number;
      }
    }
    return best;
  }

  private static Srgb colour(int number) {
    if (number >= GREYS) {
      int grey = 8 + 10 * (number - GREYS);
      return new Srgb(grey, grey, grey);
    }
    int place = number - FIRST;
    return new Srgb(STEPS[place / 36], STEPS[place / 6 % 6], STEPS[place % 6]);
  }
}
