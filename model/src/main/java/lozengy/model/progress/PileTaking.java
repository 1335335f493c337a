package lozengy.model.progress;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import lozengy.model.arrangement.WorkedPieces;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntries;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.Place;

/** Takes finished pieces from the pile to their places for good, and puts made pieces on it. */
final class PileTaking {

  private PileTaking() {}

  /**
   * The brief without some pieces on its pile, which lie at places. Yarns that were counted since
   * the pieces were worked name the places of those that are kept, so that these still do not
   * count.
   *
   * @param blanket the blanket
   * @param sequences its pieces' yarns
   * @param places places at which pieces of the pile lie
   * @param kept which of them are still worked; the others are given up
   */
  static Brief taken(
      Blanket blanket, Sequences sequences, List<Integer> places, IntPredicate kept) {
    PileEntries pile = new PileEntries(blanket.brief().pile());
    List<Yarn> yarns = blanket.brief().yarns();
    for (int piece : places) {
      PileEntry entry = pile.take(blanket.kind(piece), codes(blanket, sequences, piece));
      if (kept.test(piece)) {
        String name = blanket.place(piece).name();
        yarns = yarns.stream().map(yarn -> counting(yarn, entry, name)).toList();
      }
    }
    return blanket.brief().withPile(pile.list()).withYarns(yarns);
  }

  private static Yarn counting(Yarn yarn, PileEntry entry, String place) {
    if (!entry.counted().contains(yarn.code())) {
      return yarn;
    }
    Counted old = yarn.counted().orElseThrow();
    Set<String> made = new LinkedHashSet<>(old.made());
    made.add(place);
    return yarn.withCount(
        Optional.of(
            new Counted(
                old.left(),
                List.copyOf(made),
                old.joined(),
                old.partWorked(),
                old.edgedPercent())));
  }

  /**
   * The brief with made pieces put on the pile: their places are planned again.
   *
   * @throws InputException if a piece is not there, or none of them is made
   */
  static Brief put(Brief brief, Change.Move move) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    List<Place> moved =
        Selections.pieces(move.place(), blanket.layout(), move.at()).stream()
            .filter(place -> blanket.state(place.index()) == PieceState.MADE)
            .toList();
    if (moved.isEmpty()) {
      throw Selections.wrong(
          move.place(),
          MistakeCode.NOTHING_TO_CHANGE.about(),
          "No piece is made there",
          "Name pieces that are made and not joined");
    }
    Sequences sequences = blanket.locks();
    PileEntries pile = new PileEntries(brief.pile());
    Stages stages = Stages.of(blanket);
    for (Place place : moved) {
      int piece = place.index();
      Set<String> counted = new LinkedHashSet<>();
      List<String> rounds = codes(blanket, sequences, piece);
      for (Yarn yarn : brief.yarns()) {
        int settled = yarn.counted().map(count -> settledRounds(blanket, count, place)).orElse(0);
        boolean inside = rounds.subList(0, settled).contains(yarn.code());
        if (inside && rounds.subList(settled, rounds.size()).contains(yarn.code())) {
          throw Selections.wrong(
              move.place(),
              MistakeCode.CONTRADICTS.about(yarn.code(), "counted", place.name()),
              yarn.code() + " was counted when " + place.name() + " was worked in part",
              "Count " + yarn.code() + " again first");
        }
        if (inside) {
          counted.add(yarn.code());
        }
      }
      pile.put(new PileEntry(place.kind(), rounds, 1, counted));
      stages.set(piece, PieceState.PLANNED);
    }
    Brief noted = WorkedPieces.noted(blanket, stages, sequences);
    Counting counting = new Counting(Blanket.ofUnjudged(noted), Optional.empty());
    counting.forget(Stages.of(blanket), stages);
    return counting.brief().withPile(pile.list());
  }

  /** How many rounds of a made piece a count has settled, from the centre. */
  private static int settledRounds(Blanket blanket, Counted count, Place place) {
    if (blanket.layout().select(count.made()).contains(place)
        || blanket.layout().select(count.joined()).contains(place)) {
      return blanket.roundCount(place.index());
    }
    return count.partWorked().stream()
        .filter(part -> blanket.layout().select(part.at()).contains(place))
        .mapToInt(PartWorked::rounds)
        .max()
        .orElse(0);
  }

  private static List<String> codes(Blanket blanket, Sequences sequences, int piece) {
    return Arrays.stream(sequences.of(piece)).mapToObj(yarn -> blanket.yarn(yarn).code()).toList();
  }
}
