package lozengy.model.colour;

/**
 * A colour as a screen shows it: IEC 61966-2-1 sRGB with eight bits a channel.
 *
 * @param red red, 0 to 255
 * @param green green, 0 to 255
 * @param blue blue, 0 to 255
 */
public record Srgb(int red, int green, int blue) {

  /**
   * Checks the channels.
   *
   * @param red red, 0 to 255
   * @param green green, 0 to 255
   * @param blue blue, 0 to 255
   * @throws IllegalArgumentException if a channel is outside 0 to 255
   */
  public Srgb {
    if (((red | green | blue) & ~0xff) != 0) {
      throw new IllegalArgumentException(
          "A channel is outside 0 to 255: " + red + ", " + green + ", " + blue);
    }
  }

  /**
   * Reads the form {@code #rrggbb}, in either case.
   *
   * @param hex the text
   * @return the colour
   * @throws IllegalArgumentException if the text is not of that form
   */
  public static Srgb parse(String hex) {
    if (!hex.matches("#[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException("Not of the form #rrggbb: " + hex);
    }
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return new Srgb(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff);
  }

  /** {@return the form {@code #rrggbb}, in lower case} */
  public String hex() {
    return "#" + Integer.toHexString(1 << 24 | red << 16 | green << 8 | blue).substring(1);
  }
}
