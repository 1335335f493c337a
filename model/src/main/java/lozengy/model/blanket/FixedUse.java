package lozengy.model.blanket;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Measures;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Place;

/**
 * What counts against a yarn whatever the free rounds take. Where a yarn's stock was counted in the
 * middle of the work, what had been worked by then is settled: it no longer counts, unless the
 * piece was given up since.
 */
final class FixedUse {

  private final Brief brief;
  private final Layout layout;
  private final PieceState[] states;

  FixedUse(Brief brief, Layout layout, PieceState[] states) {
    this.brief = brief;
    this.layout = layout;
    this.states = states;
  }

  /** Millimetres that joining takes, without seams that a count has settled. */
  long joiningMillimetres(Measures measures) {
    if (brief.joining().isEmpty()) {
      return 0;
    }
    YarnUse use = brief.joining().get();
    int seams = layout.seams().size();
    long settled = counted(use).map(this::settledSeams).orElse(0L);
    double lengthCm = seams == 0 ? 0 : measures.seamLengthCm() * (seams - settled) / seams;
    return millimetres(lengthCm, use);
  }

  /** Millimetres that edging takes, without what a count has settled. */
  long edgingMillimetres(Measures measures) {
    if (brief.edging().isEmpty()) {
      return 0;
    }
    YarnUse use = brief.edging().get();
    double open = 100 - counted(use).map(Counted::edgedPercent).orElse(0.0);
    return millimetres(measures.outlineLengthCm() * open / 100, use);
  }

  private static long millimetres(double lengthCm, YarnUse use) {
    // cm x m/m = cm of yarn; 10 mm a cm
    return Math.round(lengthCm * use.metresPerMetre() * 10);
  }

  private Optional<Counted> counted(YarnUse use) {
    return brief.yarns().stream()
        .filter(yarn -> yarn.code().equals(use.yarn()))
        .findFirst()
        .flatMap(yarn -> yarn.counted());
  }

  private long settledSeams(Counted counted) {
    BitSet joined = joinedNow(counted.joined());
    Pairs seams = layout.seams();
    long settled = 0;
    for (int seam = 0; seam < seams.size(); seam++) {
      settled += joined.get(seams.first()[seam]) && joined.get(seams.second()[seam]) ? 1 : 0;
    }
    return settled;
  }

  private BitSet joinedNow(List<String> selectors) {
    BitSet joined = new BitSet();
    layout.select(selectors).stream()
        .mapToInt(Place::index)
        .filter(piece -> states[piece] == PieceState.JOINED)
        .forEach(joined::set);
    return joined;
  }

  /** Pieces whose rounds a count has settled. */
  BitSet settledPieces(Counted counted) {
    BitSet settled = new BitSet();
    for (List<String> selectors : List.of(counted.made(), counted.joined())) {
      layout.select(selectors).stream()
          .mapToInt(Place::index)
          .filter(piece -> states[piece] != PieceState.PLANNED)
          .forEach(settled::set);
    }
    return settled;
  }
}
