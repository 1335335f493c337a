package lozengy.report.chart;

import java.util.Optional;

/**
 * What the elements of a drawn blanket are marked with: colours for a drawing that stands alone,
 * classes and roles for one within a page. Attributes are names and values in turn.
 */
public interface PieceStyle {

  /** Attributes of the group that holds a piece. */
  Object[] piece(PieceDrawing piece);

  /** The piece's title, which viewers show when it is pointed at. */
  Optional<String> title(PieceDrawing piece);

  /** Attributes of a round in a yarn, or in none if that is open. */
  Object[] round(int yarn);

  /**
   * Attributes of a sign that stands on a yarn's colour.
   *
   * @param yarn the yarn
   * @param veiled whether that is seen through the veil over what is not worked yet
   */
  Object[] code(int yarn, boolean veiled);
}
