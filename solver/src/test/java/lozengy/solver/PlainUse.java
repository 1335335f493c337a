package lozengy.solver;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.brief.RoundYarn;
import lozengy.model.brief.StitchCounts;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnRate;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Place;
import lozengy.model.stitch.Stitch;

/**
 * What rounds, and seams in the borders' yarns, take of each yarn, as {@code model/README.md} says:
 * in stitches of stated lengths, with one that joins the round and two tails, by length or by
 * weight, all times the hand.
 */
final class PlainUse {

  private final Blanket blanket;
  private final Brief brief;
  private final List<Place> places;
  private final Sequences sequences;
  private final int[] worked;
  private final Set<Integer> joined = new HashSet<>();

  private PlainUse(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.brief = blanket.brief();
    this.places = blanket.layout().places();
    this.sequences = sequences;
    this.worked = new int[places.size()];
    for (PieceNote note : brief.pieces()) {
      for (Place place : blanket.layout().select(note.at())) {
        int piece = place.index();
        int rounds = sequences.rounds(piece);
        worked[piece] = Math.max(worked[piece], note.roundsWorked(rounds));
        if (note.state(rounds) == PieceState.JOINED) {
          joined.add(piece);
        }
      }
    }
  }

  /** By yarn, in whole mm. */
  static long[] millimetres(Blanket blanket, Sequences sequences) {
    PlainUse use = new PlainUse(blanket, sequences);
    long[] used = new long[blanket.yarnCount()];
    use.rounds(used);
    use.seams(used);
    return used;
  }

  private void rounds(long[] used) {
    for (Place place : places) {
      List<Round> rounds = brief.motifs().get(place.kind()).rounds();
      for (int round = 0; round < rounds.size(); round++) {
        int yarn = sequences.yarn(place.index(), round);
        used[yarn] += length(rounds.get(round).amount(), brief.yarns().get(yarn));
      }
    }
  }

  private long length(RoundYarn amount, Yarn yarn) {
    BigDecimal hand = brief.stitching().handPercent().movePointLeft(2);
    if (amount instanceof YarnAmount.Weight weight) {
      return weight
          .milligrams()
          .multiply(yarn.ball().orElseThrow().millimetres())
          .multiply(hand)
          .divide(yarn.ball().orElseThrow().grams().movePointRight(3), 0, RoundingMode.DOWN)
          .longValueExact();
    }
    BigDecimal length;
    if (amount instanceof YarnAmount.Length plain) {
      length = plain.millimetres();
    } else {
      Map<Stitch, BigDecimal> each = brief.stitching().perStitchMillimetres();
      length = each.get(Stitch.SLIP_STITCH);
      length = length.add(brief.stitching().tailMillimetres().multiply(BigDecimal.valueOf(2)));
      for (var counted : ((StitchCounts) amount).counts().entrySet()) {
        BigDecimal count = BigDecimal.valueOf(counted.getValue());
        length = length.add(each.get(counted.getKey()).multiply(count));
      }
    }
    return length.multiply(hand).setScale(0, RoundingMode.DOWN).longValueExact();
  }

  /** Of each seam half to either border it joins; both to one if the other's yarn is gone. */
  private void seams(long[] used) {
    if (brief.joiningInBorders().isEmpty()) {
      return;
    }
    YarnRate.PerMetre rate = (YarnRate.PerMetre) brief.joiningInBorders().get().rate();
    long half =
        BigDecimal.valueOf(blanket.measures().sideCm())
            .multiply(BigDecimal.valueOf(5))
            .multiply(BigDecimal.valueOf(rate.metresPerMetre()))
            .multiply(brief.stitching().handPercent().movePointLeft(2))
            .setScale(0, RoundingMode.DOWN)
            .longValueExact();
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int[] two = {seams.first()[seam], seams.second()[seam]};
      boolean closed = joined.contains(two[0]) && joined.contains(two[1]);
      boolean[] without = {!closed && borderGone(two[0]), !closed && borderGone(two[1])};
      for (int side = 0; side < 2; side++) {
        int halves = without[0] == without[1] ? 1 : without[side] ? 0 : 2;
        used[border(two[side])] += halves * half;
      }
    }
  }

  private int border(int piece) {
    return sequences.yarn(piece, sequences.rounds(piece) - 1);
  }

  private boolean borderGone(int piece) {
    return worked[piece] == sequences.rounds(piece) && brief.yarns().get(border(piece)).gone();
  }
}
