package lozengy.model.brief;

import java.util.Locale;

/** A weight in words: each is three times the one before it, and off leaves a part out. */
public enum Weight {
  OFF(0),
  LOW(1),
  NORMAL(3),
  HIGH(9);

  private final double number;

  Weight(double number) {
    this.number = number;
  }

  /** The weight that the word stands for. */
  public double number() {
    return number;
  }

  /** The word used in files. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
