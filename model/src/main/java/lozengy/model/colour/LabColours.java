package lozengy.model.colour;

/** Turns sRGB into CIE L*a*b* under D65. */
public final class LabColours {

  private LabColours() {}

  /** The colour in L*a*b*. */
  public static Lab of(Srgb colour) {
    throw new UnsupportedOperationException("not written yet");
  }
}
