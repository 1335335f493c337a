package lozengy.report;

import java.util.Locale;
import java.util.Map;
import lozengy.model.colour.Srgb;

/** Which colours standard output shows. */
public enum Colours {
  /** None: it is no terminal, or its user wants none. */
  NONE,
  /** The 256 that xterm numbers. */
  PALETTE,
  /** Any, by red, green and blue. */
  ALL;

  /**
   * How a terminal is told a colour: what follows {@code 38;} or {@code 48;} in a sequence that
   * sets it.
   *
   * @throws IllegalStateException if there are none
   */
  public String code(Srgb colour) {
    return switch (this) {
      case ALL -> "2;" + colour.red() + ";" + colour.green() + ";" + colour.blue();
      case PALETTE -> "5;" + Palette.nearest(colour);
      case NONE -> throw new IllegalStateException("no colours");
    };
  }

  /** A block in a colour, two columns wide and a space; spaces where there are no colours. */
  public String swatch(Srgb colour) {
    return this == NONE ? "   " : "\u001b[38;" + code(colour) + "m\u2588\u2588\u001b[0m ";
  }

  /**
   * Reads the surroundings.
   *
   * @param terminal whether standard output is a terminal
   * @param environment the environment: {@code NO_COLOR} (any text but none) turns colours off,
   *     {@code COLORTERM} and {@code TERM} say what the terminal can do
   */
  public static Colours of(boolean terminal, Map<String, String> environment) {
    String able = environment.getOrDefault("COLORTERM", "").toLowerCase(Locale.ROOT);
    String kind = environment.getOrDefault("TERM", "");
    if (!terminal || !environment.getOrDefault("NO_COLOR", "").isEmpty() || kind.equals("dumb")) {
      return NONE;
    }
    if (able.equals("truecolor") || able.equals("24bit") || kind.endsWith("-direct")) {
      return ALL;
    }
    return kind.contains("256color") ? PALETTE : NONE;
  }
}
