package lozengy.model.score;

import lozengy.model.layout.Layout;
import lozengy.model.layout.Pairs;

/** How close two pieces lie, and how much it weighs that they show the same yarn. */
public enum Nearness {
  /** They share a side. */
  SEAM(4, "along a side"),
  /** They share only a corner point. */
  TOUCH(2, "at a corner"),
  /** Their lattice points are at most the square root of 5 sides apart. */
  NEAR(1, "two sides away");

  private final int weight;
  private final String words;

  Nearness(int weight, String words) {
    this.weight = weight;
    this.words = words;
  }

  /** {@return the weight of a pair} */
  public int weight() {
    return weight;
  }

  /** {@return where the two meet, in words} */
  public String words() {
    return words;
  }

  /**
   * {@return the pairs of a layout that lie this close}
   *
   * @param layout the layout
   */
  public Pairs pairs(Layout layout) {
    return switch (this) {
      case SEAM -> layout.seams();
      case TOUCH -> layout.touches();
      case NEAR -> layout.near();
    };
  }
}
