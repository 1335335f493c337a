package lozengy.model.brief;

/**
 * Yarn used along a length: joining along the seams, edging along the outline.
 *
 * @param yarn code of the yarn
 * @param metresPerMetre metres of yarn per metre of seam or outline, 0 or more
 */
public record YarnUse(String yarn, double metresPerMetre) {

  /**
   * Checks the number.
   *
   * @param yarn code of the yarn
   * @param metresPerMetre metres of yarn per metre of seam or outline, 0 or more
   * @throws IllegalArgumentException if negative or not finite
   */
  public YarnUse {
    if (!(metresPerMetre >= 0 && Double.isFinite(metresPerMetre))) {
      throw new IllegalArgumentException("metres-per-metre must be 0 or more");
    }
  }
}
