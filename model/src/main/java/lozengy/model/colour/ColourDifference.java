package lozengy.model.colour;

/** Differences between colours. */
public final class ColourDifference {

  private ColourDifference() {}

  /** The CIEDE2000 difference, kL = kC = kH = 1 (Sharma, Wu and Dalal 2005). */
  public static double ciede2000(Lab first, Lab second) {
    throw new UnsupportedOperationException("not written yet");
  }
}
