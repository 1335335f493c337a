package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;

/** Rounds of planned pieces take yarns of the motif's tones: one line for each round of a motif. */
final class TonesPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.TONES;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    for (RoundClass rounds : RoundClass.of(blanket)) {
      int[] barred =
          IntStream.range(0, blanket.yarnCount())
              .filter(yarn -> !blanket.toneAllows(rounds.kind(), rounds.round(), yarn))
              .toArray();
      int[] planned =
          IntStream.of(rounds.pieces())
              .filter(piece -> blanket.state(piece) == PieceState.PLANNED)
              .toArray();
      if (barred.length > 0 && planned.length > 0) {
        lines.add(line(blanket, rounds, new Tone(planned, rounds.round(), barred)));
      }
    }
    return lines;
  }

  private static BriefLine line(Blanket blanket, RoundClass rounds, Tone tone) {
    PieceKind kind = rounds.kind();
    int round = rounds.round();
    List<Integer> yarns =
        IntStream.range(0, blanket.yarnCount())
            .filter(yarn -> blanket.toneAllows(kind, round, yarn))
            .boxed()
            .toList();
    Subject subject =
        new Subject.Tone(kind, round, blanket.motif(kind).rounds().get(round).tones(), yarns);
    BriefPath path = BriefPath.of("motifs", kind.word(), "rounds").item(round).field("tone");
    return new BriefLine(RuleId.TONES, path, subject, tone);
  }

  private record Tone(int[] pieces, int round, int[] barred) implements BriefLine.Content {
    @Override
    public void restrict(Domains domains) {
      for (int piece : pieces) {
        for (int yarn : barred) {
          domains.remove(piece, round, yarn);
        }
      }
    }
  }
}
