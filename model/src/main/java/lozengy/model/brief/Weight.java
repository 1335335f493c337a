package lozengy.model.brief;

import java.util.Locale;

/** A weight in words: each is three times the one before it, and off leaves a part out. */
public enum Weight {
  /** Leaves the part out. */
  OFF(0),
  /** Weighs 1. */
  LOW(1),
  /** Weighs 3. */
  NORMAL(3),
  /** Weighs 9. */
  HIGH(9);

  private final double number;

  Weight(double number) {
    this.number = number;
  }

  /** {@return the weight that the word stands for} */
  public double number() {
    return number;
  }

  /** {@return the word used in files} */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
