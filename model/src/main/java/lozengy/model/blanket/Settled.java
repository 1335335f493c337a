package lozengy.model.blanket;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/**
 * What counts in the middle of the work have settled: where a yarn's stock was counted then, the
 * rounds that had been worked no longer count against it, unless they were given up since.
 */
final class Settled {

  private static final YarnAmount NOTHING = new YarnAmount.Length(0);

  private static final List<String> ALL = List.of("all");

  private final Brief brief;
  private final Layout layout;
  private final ReadyYarns yarns;
  private final ReadyMotifs motifs;
  private final KnownPieces known;
  private final BorderSeams borderSeams;
  private final long[] millimetres;
  private final int[][] rounds;

  Settled(
      Brief brief,
      Layout layout,
      ReadyYarns yarns,
      ReadyMotifs motifs,
      KnownPieces known,
      BorderSeams borderSeams) {
    this.brief = brief;
    this.layout = layout;
    this.yarns = yarns;
    this.motifs = motifs;
    this.known = known;
    this.borderSeams = borderSeams;
    this.millimetres = new long[yarns.count()];
    this.rounds = new int[millimetres.length][];
    settlePieces();
    brief.pile().forEach(this::settle);
  }

  /** By yarn, millimetres of rounds, and of seams that their borders took; not to be changed. */
  long[] millimetres() {
    return millimetres;
  }

  /** By yarn and piece, how many rounds, null without a count; not to be changed. */
  int[][] rounds() {
    return rounds;
  }

  /** Settles what worked pieces hold of the yarns that were counted since. */
  private void settlePieces() {
    for (int yarn = 0; yarn < millimetres.length; yarn++) {
      int each = yarn;
      counted(brief.yarns().get(yarn)).ifPresent(counted -> settle(counted, each));
    }
  }

  private void settle(Counted counted, int yarn) {
    int[] rounds = rounds(counted);
    this.rounds[yarn] = rounds;
    if (brief.joiningInBorders().isPresent()) {
      settleSeams(counted, yarn);
    }
    for (int piece = 0; piece < rounds.length; piece++) {
      PieceKind kind = layout.places().get(piece).kind();
      for (int round = 0; round < rounds[piece]; round++) {
        if (known.locks().yarn(piece, round) == yarn) {
          millimetres[yarn] += motifs.needMillimetres(kind, round, yarn);
        }
      }
    }
  }

  /** Settles what the border of a piece has given to seams. */
  private void settleSeams(Counted counted, int yarn) {
    BitSet joined = joinedNow(counted.joined());
    Pairs seams = layout.seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      if (joined.get(seams.first()[seam]) && joined.get(seams.second()[seam])) {
        int ofFirst = borderSeams.halvesOfFirst(seam);
        int halves =
            (border(seams.first()[seam]) == yarn ? ofFirst : 0)
                + (border(seams.second()[seam]) == yarn ? 2 - ofFirst : 0);
        millimetres[yarn] += halves * borderSeams.halfMillimetres(yarn);
      }
    }
  }

  private int border(int piece) {
    int rounds = motifs.roundCount(layout.places().get(piece).kind());
    return known.locks().yarn(piece, rounds - 1);
  }

  /** Settles what pieces on the pile hold of yarns that were counted since. */
  private void settle(PileEntry entry) {
    for (int round = 0; round < entry.rounds().size(); round++) {
      int yarn = yarns.index().get(entry.rounds().get(round));
      if (holds(entry, yarn)) {
        long need = motifs.needMillimetres(entry.kind(), round, yarn);
        millimetres[yarn] += need * entry.count();
      }
    }
  }

  /** Whether what pieces on the pile hold of a yarn is settled. */
  boolean holds(PileEntry entry, int yarn) {
    Yarn each = brief.yarns().get(yarn);
    return each.gone() || entry.counted().contains(each.code());
  }

  /** What had been worked when a yarn was counted; of one that is gone, all that is. */
  static Optional<Counted> counted(Yarn yarn) {
    return yarn.gone()
        ? Optional.of(
            new Counted(NOTHING, ALL, ALL, yarn.counted().map(Counted::edgedPercent).orElse(0.0)))
        : yarn.counted();
  }

  /** How many seams had been worked and still are. */
  long seams(Counted counted) {
    BitSet joined = joinedNow(counted.joined());
    Pairs seams = layout.seams();
    long worked = 0;
    for (int seam = 0; seam < seams.size(); seam++) {
      worked += joined.get(seams.first()[seam]) && joined.get(seams.second()[seam]) ? 1 : 0;
    }
    return worked;
  }

  private BitSet joinedNow(List<String> selectors) {
    BitSet joined = new BitSet();
    layout.select(selectors).stream()
        .mapToInt(Place::index)
        .filter(piece -> known.states()[piece] == PieceState.JOINED)
        .forEach(joined::set);
    return joined;
  }

  /** By piece, how many rounds a count has settled, from the centre: worked then and now. */
  private int[] rounds(Counted counted) {
    int[] rounds = new int[layout.places().size()];
    for (List<String> selectors : List.of(counted.made(), counted.joined())) {
      layout.select(selectors).forEach(place -> rounds[place.index()] = Integer.MAX_VALUE);
    }
    for (PartWorked part : counted.partWorked()) {
      for (Place place : layout.select(part.at())) {
        rounds[place.index()] = Math.max(rounds[place.index()], part.rounds());
      }
    }
    Arrays.setAll(rounds, piece -> Math.min(rounds[piece], known.roundsWorked()[piece]));
    return rounds;
  }
}
