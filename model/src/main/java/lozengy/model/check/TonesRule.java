package lozengy.model.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;

/**
 * Rounds take yarns of the motif's tones. Finds no fault with a worked round, nor with a piece from
 * the pile. O(pieces x rounds).
 */
public final class TonesRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.TONES;
  }

  /** One line for each round of a motif. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    for (PieceKind kind : PieceKind.values()) {
      int[] planned =
          IntStream.range(0, blanket.pieceCount())
              .filter(piece -> blanket.kind(piece) == kind)
              .filter(piece -> blanket.state(piece) == PieceState.PLANNED)
              .toArray();
      int rounds = planned.length == 0 ? 0 : blanket.roundCount(planned[0]);
      for (int round = 0; round < rounds; round++) {
        line(blanket, kind, round, planned).ifPresent(lines::add);
      }
    }
    return lines;
  }

  private Optional<BriefLine> line(Blanket blanket, PieceKind kind, int round, int[] planned) {
    BitSet allowed = Yarns.of(blanket, yarn -> blanket.motifs().toneAllows(kind, round, yarn));
    if (allowed.cardinality() == blanket.yarnCount()) {
      return Optional.empty();
    }
    Subject subject =
        new Subject.Tone(
            kind,
            round,
            blanket.motif(kind).rounds().get(round).tones(),
            allowed.stream().boxed().toList());
    BriefPath path = BriefPath.of("motifs", kind.word(), "rounds").item(round).field("tone");
    int[] rounds =
        IntStream.of(planned)
            .filter(piece -> !blanket.worked(piece, round))
            .map(piece -> blanket.index().number(piece, round))
            .toArray();
    Ground may = new Ground.May(rounds, allowed, false);
    return Optional.of(new BriefLine(id(), path, subject, List.of(may)));
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or let the motif's round take its tone";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    return BarredRounds.faults(
        id(),
        blanket,
        sequences,
        (piece, round, yarn) -> !blanket.motifs().toneAllows(blanket.kind(piece), round, yarn));
  }
}
