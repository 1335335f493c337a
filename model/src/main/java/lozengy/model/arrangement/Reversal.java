package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.Place;

/**
 * What takes a mark back: what it changed, as it was. Marks change nothing else of a brief than
 * what it notes of pieces, its yarns, its pile and its hand.
 *
 * @param pieces pieces whose yarns were others
 * @param notes edits to the brief's notes
 * @param yarns edits to its yarns
 * @param pile edits to its pile
 * @param hand edit to the hand, where it changed
 * @param bound the bound that was stated
 * @param solved how the arrangement was found, as it was stated
 */
public record Reversal(
    List<Piece> pieces,
    List<Edit<PieceNote>> notes,
    List<Edit<Yarn>> yarns,
    List<Edit<PileEntry>> pile,
    Optional<HandEdit> hand,
    Optional<Arrangement.Bound> bound,
    Optional<Arrangement.Solved> solved) {

  /**
   * Copies the lists.
   *
   * @param pieces pieces whose yarns were others
   * @param notes edits to the brief's notes
   * @param yarns edits to its yarns
   * @param pile edits to its pile
   * @param hand edit to the hand, where it changed
   * @param bound the bound that was stated
   * @param solved how the arrangement was found, as it was stated
   */
  public Reversal {
    pieces = List.copyOf(pieces);
    notes = List.copyOf(notes);
    yarns = List.copyOf(yarns);
    pile = List.copyOf(pile);
  }

  /**
   * A hand that gives way to another.
   *
   * @param out per cent of what is reckoned that it takes now
   * @param in what it took before
   */
  public record HandEdit(BigDecimal out, BigDecimal in) {}

  /**
   * A piece whose yarns were others.
   *
   * @param at its name
   * @param rounds codes of its yarns as they were, centre first
   */
  public record Piece(String at, List<String> rounds) {

    /**
     * Copies the list.
     *
     * @param at its name
     * @param rounds codes of its yarns as they were, centre first
     */
    public Piece {
      rounds = List.copyOf(rounds);
    }
  }

  /**
   * {@return what leads back from a blanket and its yarns}
   *
   * @param now the blanket
   * @param sequences its pieces' yarns
   * @param before what it leads back to
   */
  public static Reversal of(Blanket now, Sequences sequences, Before before) {
    Blanket was = Blanket.ofUnjudged(before.brief());
    List<Piece> pieces = new ArrayList<>();
    for (Place place : now.layout().places()) {
      List<String> codes = codes(was, before.sequences(), place.index());
      if (!codes.equals(codes(now, sequences, place.index()))) {
        pieces.add(new Piece(place.name(), codes));
      }
    }
    Brief brief = now.brief();
    return new Reversal(
        pieces,
        Edit.between(brief.pieces(), before.brief().pieces()),
        Edit.between(brief.yarns(), before.brief().yarns()),
        Edit.between(brief.pile(), before.brief().pile()),
        Optional.of(
                new HandEdit(
                    brief.stitching().handPercent(), before.brief().stitching().handPercent()))
            .filter(edit -> !edit.in().equals(edit.out())),
        before.bound(),
        before.solved());
  }

  private static List<String> codes(Blanket blanket, Sequences sequences, int piece) {
    return Arrays.stream(sequences.of(piece)).mapToObj(yarn -> blanket.yarn(yarn).code()).toList();
  }

  /**
   * {@return what it leads back to; empty where brief or plan are not those that the mark left, but
   * were changed by hand since}
   *
   * @param now the blanket
   * @param sequences its pieces' yarns
   */
  public Optional<Before> from(Blanket now, Sequences sequences) {
    Brief brief = now.brief();
    Optional<List<PieceNote>> oldNotes = Edit.apply(brief.pieces(), notes);
    Optional<List<Yarn>> oldYarns = Edit.apply(brief.yarns(), yarns);
    Optional<List<PileEntry>> oldPile = Edit.apply(brief.pile(), pile);
    boolean handAsMarked =
        hand.isEmpty() || hand.get().out().equals(brief.stitching().handPercent());
    if (oldNotes.isEmpty() || oldYarns.isEmpty() || oldPile.isEmpty() || !handAsMarked) {
      return Optional.empty();
    }
    BigDecimal oldHand = hand.map(HandEdit::in).orElse(brief.stitching().handPercent());
    Brief old =
        brief
            .withPieces(oldNotes.get())
            .withYarns(oldYarns.get())
            .withPile(oldPile.get())
            .withStitching(brief.stitching().withHand(oldHand));
    if (!BriefMistakes.ofParts(old).isEmpty()) {
      return Optional.empty();
    }
    return sequences(Blanket.ofUnjudged(old), now, sequences)
        .map(was -> new Before(old, was, bound, solved));
  }

  private Optional<Sequences> sequences(Blanket was, Blanket now, Sequences sequences) {
    Sequences old = was.open();
    for (int piece = 0; piece < old.pieces(); piece++) {
      if (!set(old, was, piece, codes(now, sequences, piece), false)) {
        return Optional.empty();
      }
    }
    for (Piece piece : pieces) {
      Optional<Place> place = was.layout().find(piece.at());
      if (place.isEmpty() || !set(old, was, place.get().index(), piece.rounds(), true)) {
        return Optional.empty();
      }
    }
    for (int piece = 0; piece < old.pieces(); piece++) {
      for (int round = 0; round < was.roundsWorked(piece); round++) {
        if (old.yarn(piece, round) != was.locked(piece, round)) {
          return Optional.empty();
        }
      }
    }
    return old.complete() ? Optional.of(old) : Optional.empty();
  }

  /**
   * Sets a piece's yarns; false if it has other rounds, or there is no such yarn where one must be.
   */
  private static boolean set(
      Sequences old, Blanket was, int piece, List<String> codes, boolean allThere) {
    boolean fits = codes.size() == old.rounds(piece);
    for (int round = 0; fits && round < codes.size(); round++) {
      int yarn = was.yarnIndex(codes.get(round));
      fits = yarn >= 0 || !allThere;
      if (yarn >= 0) {
        old.set(piece, round, yarn);
      }
    }
    return fits;
  }

  /** {@return the same with nothing proved} */
  Reversal unproved() {
    return new Reversal(
        pieces,
        notes,
        yarns,
        pile,
        hand,
        Optional.empty(),
        solved.map(Arrangement.Solved::unproved));
  }
}
