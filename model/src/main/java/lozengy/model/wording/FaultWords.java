package lozengy.model.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.Fault;
import lozengy.model.check.RuleId;
import lozengy.model.colour.Tone;
import lozengy.model.layout.GroupedNames;
import lozengy.model.layout.Place;

/** Faults in words for a person, names and values first. */
public final class FaultWords {

  /** So many that say the same are told one by one. */
  private static final int FEW = 3;

  private final Blanket blanket;

  /**
   * Makes the words of a blanket's faults.
   *
   * @param blanket the blanket
   */
  public FaultWords(Blanket blanket) {
    this.blanket = blanket;
  }

  /**
   * {@return a fault in a sentence}
   *
   * @param fault a fault of the blanket
   */
  public String of(Fault fault) {
    return switch (fault.rule()) {
      case COMPLETE -> round(fault) + (fault.rounds().size() == 1 ? " has" : " have") + " no yarn";
      case LOCKS -> locks(fault);
      case PILE -> pile(fault, (Fault.Unplaced) fault.detail());
      case BANS ->
          has(fault) + (gone(fault) ? ", which is gone" : ", which is banned from this piece");
      case TONES -> tones(fault);
      case ZONES ->
          has(fault)
              + ", but its zone takes only "
              + Words.list(((Fault.Zoned) fault.detail()).only());
      case BORDERS -> has(fault) + ", but the look gives it " + yarn(fault, 1);
      case SYMMETRY ->
          "%s are each other's images (%s), but %s is %s in the one and %s in the other"
              .formatted(
                  pieces(fault),
                  blanket.brief().look().symmetry().word(),
                  Words.round(blanket, fault.pieces().get(0), fault.rounds().get(0)),
                  yarn(fault, 0),
                  yarn(fault, 1));
      case NEIGHBOUR_BORDERS, NEIGHBOUR_CENTRES ->
          pieces(fault) + " are joined along a side" + meeting(fault, "both have ");
      case APART ->
          fault.pieces().size() == 1
              ? "%s have %s and %s, which are to be kept apart"
                  .formatted(round(fault), yarn(fault, 0), yarn(fault, 1))
              : pieces(fault) + " are joined along a side" + meeting(fault, "");
      case LOTS ->
          fault.pieces().size() == 1
              ? "%s have %s and %s, which are dye lots of one shade"
                  .formatted(round(fault), yarn(fault, 0), yarn(fault, 1))
              : pieces(fault) + " are joined along a side" + meeting(fault, "");
      case WITHIN_PIECE -> within(fault);
      case COUNTS -> counts(fault, (Fault.Counted) fault.detail());
      case COPIES -> copies(fault, (Fault.Shared) fault.detail());
      case YARN_TOTALS -> totals(fault, (Fault.RunsOut) fault.detail());
    };
  }

  /**
   * {@return faults as they are told: a few by themselves, many in one sentence}
   *
   * @param alike faults that differ by their pieces alone, at least one
   */
  public List<List<Fault>> toldTogether(List<Fault> alike) {
    Fault first = alike.get(0);
    boolean single =
        alike.size() <= FEW || first.pieces().isEmpty() || first.rule() == RuleId.COUNTS;
    return single ? alike.stream().map(List::of).toList() : List.of(alike);
  }

  /**
   * {@return faults in one sentence}
   *
   * @param alike faults that are told together
   */
  public String together(List<Fault> alike) {
    Fault first = alike.get(0);
    if (alike.size() == 1) {
      return of(first);
    }
    List<Place> places = new ArrayList<>();
    alike.forEach(fault -> fault.pieces().forEach(piece -> places.add(blanket.place(piece))));
    String names = Words.list(GroupedNames.of(blanket.layout(), places));
    return switch (first.rule()) {
      case NEIGHBOUR_BORDERS, NEIGHBOUR_CENTRES ->
          names + " are joined along " + alike.size() + " sides" + meeting(first, "all have ");
      case APART, LOTS ->
          first.pieces().size() == 1
              ? names + of(first).substring(pieces(first).length())
              : names + " are joined along " + alike.size() + " sides" + meeting(first, "");
      case BANS ->
          names
              + said(first)
              + (gone(first) ? ", which is gone" : ", which is banned from these pieces");
      case COMPLETE,
          TONES,
          YARN_TOTALS,
          WITHIN_PIECE,
          COPIES,
          SYMMETRY,
          BORDERS,
          ZONES,
          COUNTS,
          LOCKS,
          PILE ->
          names + of(first).substring(pieces(first).length());
    };
  }

  private boolean gone(Fault fault) {
    return blanket.yarn(fault.yarns().get(0)).gone();
  }

  private String pieces(Fault fault) {
    return Words.pieces(blanket, fault.pieces());
  }

  private String yarn(Fault fault, int which) {
    return Words.yarn(blanket, fault.yarns().get(which));
  }

  /** What a fault of one round says of its piece: {@code : round 2 has Reed (REE)}. */
  private String said(Fault fault) {
    String round = Words.round(blanket, fault.pieces().get(0), fault.rounds().get(0));
    return ": " + round + " has " + yarn(fault, 0);
  }

  private String has(Fault fault) {
    return pieces(fault) + said(fault);
  }

  private String round(Fault fault) {
    return pieces(fault) + ": " + Words.rounds(fault.rounds());
  }

  private String locks(Fault fault) {
    boolean worked = blanket.worked(fault.pieces().get(0), fault.rounds().get(0));
    return "%s, but is %s %s"
        .formatted(has(fault), worked ? "already worked in" : "locked to", yarn(fault, 1));
  }

  private String pile(Fault fault, Fault.Unplaced pile) {
    return "%s in %s: on the pile, and %s no place"
        .formatted(
            lozengy.model.input.Words.count(pile.missing(), "finished " + pile.kind().word()),
            sequence(pile.sequence()),
            pile.missing() == 1 ? "has" : "have");
  }

  private String sequence(List<Integer> yarns) {
    return yarns.stream().map(yarn -> Words.yarn(blanket, yarn)).collect(Collectors.joining(", "));
  }

  private String tones(Fault fault) {
    int piece = fault.pieces().get(0);
    String asked =
        blanket.motif(blanket.kind(piece)).rounds().get(fault.rounds().get(0)).tones().stream()
            .sorted()
            .map(Tone::word)
            .collect(Collectors.joining(" or "));
    return "%s, which is %s, but takes %s"
        .formatted(has(fault), blanket.yarns().tone(fault.yarns().get(0)).word(), asked);
  }

  private String meeting(Fault fault, String have) {
    if (fault.rule() == RuleId.APART) {
      return ", and their borders %s and %s are to be kept apart"
          .formatted(yarn(fault, 0), yarn(fault, 1));
    }
    if (fault.rule() == RuleId.LOTS) {
      return ", and their borders %s and %s are dye lots of one shade"
          .formatted(yarn(fault, 0), yarn(fault, 1));
    }
    if (!(fault.detail() instanceof Fault.TooAlike)) {
      boolean centres = fault.rule() == RuleId.NEIGHBOUR_CENTRES;
      return " and " + have + (centres ? "the centre " : "the border ") + yarn(fault, 0);
    }
    return " and their borders %s and %s differ by %s, less than the %s asked for"
        .formatted(
            yarn(fault, 0),
            yarn(fault, 1),
            Words.difference(
                blanket.yarns().difference(fault.yarns().get(0), fault.yarns().get(1))),
            Words.number(blanket.brief().rules().minContrast()));
  }

  private String within(Fault fault) {
    return "%s are %s %s, but %s"
        .formatted(
            round(fault),
            fault.rounds().size() == 2 ? "both" : "all",
            yarn(fault, 0),
            ((Fault.Alike) fault.detail()).asked() == WithinPiece.ALL_DIFFER
                ? "all rounds of a piece must differ"
                : "rounds side by side must differ");
  }

  private String counts(Fault fault, Fault.Counted count) {
    return "%d of %s %s %s in %s, and %s are asked for"
        .formatted(
            fault.pieces().size(),
            WhereWords.at(count.where().where()),
            fault.pieces().size() == 1 ? "has" : "have",
            yarn(fault, 0),
            WhereWords.someRound(count.where().where()),
            count.least().isPresent()
                ? "at least " + count.least().getAsInt()
                : "at most " + count.most().orElseThrow());
  }

  private String copies(Fault fault, Fault.Shared shared) {
    return "%s share the sequence %s: %d pieces, %d allowed"
        .formatted(
            pieces(fault), sequence(shared.sequence()), fault.pieces().size(), shared.allowed());
  }

  private String totals(Fault fault, Fault.RunsOut amounts) {
    return "%s: %s needed, %s: %s short"
        .formatted(
            yarn(fault, 0),
            Words.metres(amounts.needed()),
            available(fault.yarns().get(0)),
            Words.metres(amounts.needed() - amounts.usable()));
  }

  private String available(int yarn) {
    double keepBackPercent = blanket.brief().rules().keepBackPercent();
    long stock = blanket.yarn(yarn).stockMillimetres();
    if (blanket.yarn(yarn).gone()) {
      return "and it is gone";
    }
    if (keepBackPercent == 0) {
      return Words.metres(stock) + " at hand";
    }
    return "%s usable (%s m at hand less %s %% kept back)"
        .formatted(
            Words.metres(blanket.yarns().usableMillimetres(yarn)),
            Words.number(stock / 1000.0),
            Words.number(keepBackPercent));
  }
}
