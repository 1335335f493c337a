package lozengy.model.layout;

/**
 * An edge of {@link Layout#graph()}: how two pieces meet.
 *
 * @param first the piece with the lower index
 * @param second the piece with the higher index
 * @param kind how they meet
 */
public record Contact(Place first, Place second, Kind kind) {

  /** How two pieces meet. */
  public enum Kind {
    /** They share a side. */
    SEAM,
    /** They share only a corner point. */
    TOUCH
  }
}
