package lozengy.report;

import java.util.List;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;

/**
 * One piece as drawn. Rounds are similar polygons about the centre of the largest circle that the
 * piece holds, so that every round is a band of the same width all along the sides; the bands of a
 * piece are equally wide, as rounds of one stitch are.
 *
 * @param place where it lies, and its name
 * @param state how far it has come
 * @param centre centre of its rounds
 * @param bandCm width of the band of each round
 * @param rounds what each round's outer edge encloses, centre first; the last is the outline
 * @param yarns the yarn of each round, or {@link Sequences#OPEN}
 */
public record PieceDrawing(
    Place place,
    PieceState state,
    Point centre,
    double bandCm,
    List<Polygon> rounds,
    List<Integer> yarns) {

  /** Copies the lists. */
  public PieceDrawing {
    rounds = List.copyOf(rounds);
    yarns = List.copyOf(yarns);
  }

  /** The whole piece. */
  public Polygon outline() {
    return rounds.get(rounds.size() - 1);
  }
}
