package lozengy.model.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.RoundLengths;
import lozengy.model.brief.RoundLengths.Basis;
import lozengy.model.brief.Sample;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;

/** Looks for samples that contradict each other. */
final class SampleDoubts {

  /** Hands differ, but not so many per cent between pieces of one maker; our own choice. */
  private static final double FAR_PERCENT = 15;

  private static final BriefPath SAMPLES = BriefPath.of("stitches", "samples");

  private SampleDoubts() {}

  static List<Doubt> of(Blanket blanket) {
    List<Doubt> doubts = new ArrayList<>();
    RoundLengths lengths = RoundLengths.of(blanket.brief());
    List<Sample> samples = blanket.brief().stitching().samples();
    for (RoundLengths.Held held : lengths.held()) {
      double percent = 100 * (held.ratio() - 1);
      if (Math.abs(percent) > FAR_PERCENT) {
        int amounts = samples.get(held.sample()).takes().size();
        BriefPath path = SAMPLES.item(held.sample()).field("takes").itemOf(held.amount(), amounts);
        doubts.add(new Doubt.Apart(path, percent));
      }
    }
    // from the largest kind to the smallest
    List<PieceKind> sampled =
        IntStream.range(0, PieceKind.values().length)
            .mapToObj(i -> PieceKind.values()[i])
            .filter(kind -> sampled(blanket, lengths, kind))
            .toList();
    for (int i = 1; i < sampled.size(); i++) {
      long smaller = millimetres(blanket, sampled.get(i));
      long larger = millimetres(blanket, sampled.get(i - 1));
      if (smaller > larger) {
        doubts.add(new Doubt.Heavier(SAMPLES, sampled.get(i), sampled.get(i - 1), smaller, larger));
      }
    }
    return doubts;
  }

  private static boolean sampled(Blanket blanket, RoundLengths lengths, PieceKind kind) {
    return blanket.motif(kind) != null
        && IntStream.range(0, blanket.motif(kind).rounds().size())
            .anyMatch(round -> lengths.basis(kind, round) == Basis.SAMPLE);
  }

  /** What a whole piece takes; what is given by weight in the first yarn. */
  private static long millimetres(Blanket blanket, PieceKind kind) {
    return IntStream.range(0, blanket.motif(kind).rounds().size())
        .mapToLong(round -> blanket.motifs().needMillimetres(kind, round, 0))
        .sum();
  }
}
