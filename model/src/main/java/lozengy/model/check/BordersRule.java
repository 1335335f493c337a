package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.PieceState;
import lozengy.model.input.BriefPath;

/**
 * Borders have the yarn that the look gives them. Finds no fault with a made or joined piece.
 * O(pieces).
 */
public final class BordersRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.BORDERS;
  }

  /** One line. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<String> borders = blanket.brief().look().borders();
    if (borders.isEmpty()) {
      return List.of();
    }
    List<Ground> given = new ArrayList<>();
    for (String code : borders) {
      int yarn = blanket.yarnIndex(code);
      int[] rounds =
          IntStream.range(0, blanket.pieceCount())
              .filter(piece -> blanket.state(piece) == PieceState.PLANNED)
              .filter(piece -> blanket.look().border(piece) == yarn)
              .map(blanket.index()::border)
              .toArray();
      given.add(new Ground.May(rounds, Yarns.only(yarn), true));
    }
    return List.of(
        new BriefLine(
            id(), BriefPath.of("look", "borders"), new Subject.GivenBorders(borders), given));
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change look.borders";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    for (int piece = 0; blanket.look().givesBorders() && piece < sequences.pieces(); piece++) {
      int yarn = sequences.border(piece);
      int asked = blanket.look().border(piece);
      if (yarn != Sequences.OPEN && yarn != asked && blanket.state(piece) == PieceState.PLANNED) {
        faults.add(
            new Fault(
                id(), List.of(piece), List.of(sequences.rounds(piece) - 1), List.of(yarn, asked)));
      }
    }
    return faults;
  }
}
