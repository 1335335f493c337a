package lozengy.report.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/**
 * The blanket as polygons in cm, the one source of every format that shows it. Each round is given
 * as the whole area that its outer edge encloses: paint the rounds of a piece from the border
 * inwards. The blanket fills the box from 0, 0 to its width and height, but for sides and corners
 * that are left open; an edging goes around that.
 *
 * @param widthCm width over the outermost points
 * @param heightCm height over the outermost points
 * @param pieces the pieces, in the layout's order
 * @param trim what holds them together and goes around them
 */
public record Drawing(double widthCm, double heightCm, List<PieceDrawing> pieces, Trim trim) {

  /** Copies the pieces. */
  public Drawing {
    pieces = List.copyOf(pieces);
  }

  /** Draws a blanket in the yarns of its sequences; open rounds are drawn without a yarn. */
  public static Drawing of(Blanket blanket, Sequences sequences) {
    double sideCm = blanket.motif(PieceKind.SQUARE).edgeCm().orElseThrow();
    PieceOutlines outlines = new PieceOutlines(blanket.layout().size(), sideCm);
    List<PieceDrawing> pieces = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (Place place : blanket.layout().places()) {
      PieceState state = laid.state(place.index());
      int worked = laid.roundsWorked(place.index());
      pieces.add(piece(sequences, place, state, worked, outlines.of(place)));
    }
    return new Drawing(outlines.widthCm(), outlines.heightCm(), pieces, Trim.of(blanket));
  }

  /**
   * Whether pieces have come more or less far: some are worked or begun, and not all are joined.
   */
  boolean underWay() {
    return pieces.stream().anyMatch(piece -> piece.roundsWorked() > 0)
        && pieces.stream().anyMatch(piece -> piece.state() != PieceState.JOINED);
  }

  private static PieceDrawing piece(
      Sequences sequences, Place place, PieceState state, int worked, Polygon outline) {
    int piece = place.index();
    int count = sequences.rounds(piece);
    Point centre = outline.incentre();
    List<Polygon> rounds = new ArrayList<>();
    for (int round = 0; round < count - 1; round++) {
      rounds.add(outline.scaled(centre, (round + 1.0) / count));
    }
    rounds.add(outline);
    return new PieceDrawing(
        place,
        state,
        worked,
        centre,
        outline.inradiusCm() / count,
        rounds,
        Arrays.stream(sequences.of(piece)).boxed().toList());
  }
}
