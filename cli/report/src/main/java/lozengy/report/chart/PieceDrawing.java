package lozengy.report.chart;

import java.util.List;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Place;
import lozengy.report.BlanketWords;

/**
 * One piece as drawn. Rounds are similar polygons about the centre of the largest circle that the
 * piece holds, so that every round is a band of the same width all along the sides; the bands of a
 * piece are equally wide, as rounds of one stitch are.
 *
 * @param place where it lies, and its name
 * @param state how far it has come
 * @param roundsWorked how many of its rounds are worked, from the centre
 * @param centre centre of its rounds
 * @param bandCm width of the band of each round
 * @param rounds what each round's outer edge encloses, centre first; the last is the outline
 * @param yarns the yarn of each round, or {@link Sequences#OPEN}
 */
public record PieceDrawing(
    Place place,
    PieceState state,
    int roundsWorked,
    Point centre,
    double bandCm,
    List<Polygon> rounds,
    List<Integer> yarns) {

  /** Copies the lists. */
  public PieceDrawing {
    rounds = List.copyOf(rounds);
    yarns = List.copyOf(yarns);
  }

  /** Whether some of its rounds are worked, but not all. */
  public boolean begun() {
    return state == PieceState.PLANNED && roundsWorked > 0;
  }

  /** How far it has come, in words. */
  public String stateWords() {
    return BlanketWords.state(state, roundsWorked);
  }

  /** The whole piece. */
  public Polygon outline() {
    return rounds.get(rounds.size() - 1);
  }

  /** The same as if nothing of it were worked, to be drawn without a veil. */
  PieceDrawing asPlanned() {
    return new PieceDrawing(place, PieceState.PLANNED, 0, centre, bandCm, rounds, yarns);
  }

  /**
   * What a round encloses, but for the half of the seam that lies on the border. Where many rounds
   * make bands that are narrower than a seam, half of the border's is left.
   */
  Polygon withoutSeam(int round, double seamCm) {
    double onBorder = Math.min(seamCm, bandCm) / 2;
    return round < rounds.size() - 1
        ? rounds.get(round)
        : outline().scaled(centre, 1 - onBorder / outline().inradiusCm());
  }
}
