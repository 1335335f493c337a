package lozengy.report;

import java.util.Locale;
import java.util.Map;

/** Which colours standard output shows. */
public enum Colours {
  /** None: it is no terminal, or its user wants none. */
  NONE,
  /** The 256 that xterm numbers. */
  PALETTE,
  /** Any, by red, green and blue. */
  ALL;

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
