package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Node;
import lozengy.model.input.Range;
import lozengy.model.input.Words;

/** Reads what is known of single pieces. */
public final class PieceNoteReader {

  private static final int MOST_NAME_CHARACTERS = 30;
  private static final Range SOME_ROUNDS = Range.whole(1, PartWorked.MOST_ROUNDS, "");
  private static final Range ROUNDS_WORKED = Range.whole(0, PartWorked.MOST_ROUNDS, "");
  private static final Map<String, PieceState> STATES =
      Words.meanings(PieceState.values(), PieceState::word);

  private PieceNoteReader() {}

  static PieceNote read(Located located) {
    PieceNote stopgap = new PieceNote(List.of("?"), List.of(), PieceState.PLANNED, Set.of());
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return stopgap;
    }
    Fields of = found.get();
    Optional<Located> at = of.need("at", "at: r3c2");
    List<String> names = at.map(PieceNoteReader::names).orElse(List.of());
    Optional<Located> roundsAt = of.get("rounds");
    boolean fromBorder = roundsAt.map(PieceNoteReader::fromBorder).orElse(false);
    List<Optional<String>> rounds =
        roundsAt.map(r -> rounds(r, fromBorder ? 1 : 0)).orElse(List.of());
    PieceState state = of.get("state").flatMap(PieceNoteReader::state).orElse(PieceState.PLANNED);
    int worked = of.get("rounds-worked").flatMap(w -> roundsWorked(w, state)).orElse(0);
    Set<String> not = new LinkedHashSet<>();
    of.get("not").map(n -> n.itemOrItems("yarns' codes")).orElse(List.of()).stream()
        .map(YarnReader::code)
        .forEach(code -> code.ifPresent(not::add));
    of.tellUnknown();
    return names.isEmpty() ? stopgap : new PieceNote(names, rounds, fromBorder, state, worked, not);
  }

  /** The names of pieces or groups of pieces, at least one if there is no mistake. */
  static List<String> names(Located at) {
    List<String> names = new ArrayList<>();
    List<Located> items = at.itemOrItems("pieces or groups of pieces");
    for (Located item : items) {
      names.add(name(item).orElse("?"));
    }
    if (items.isEmpty()) {
      at.wrong(
          MistakeCode.WRONG_COUNT.about("pieces", 0, 1),
          "No piece is named",
          "Name at least one piece");
    }
    return names;
  }

  /**
   * {@return the name of a piece}
   *
   * @param located the field
   */
  public static Optional<String> name(Located located) {
    return located.text(MOST_NAME_CHARACTERS);
  }

  /**
   * {@return how far a piece has come}
   *
   * @param located the field
   */
  public static Optional<PieceState> state(Located located) {
    return located.word(STATES);
  }

  /** How many rounds of a planned piece are worked; what is made or joined has all of them. */
  private static Optional<Integer> roundsWorked(Located located, PieceState state) {
    Optional<Integer> worked = roundsWorked(located);
    if (worked.isPresent() && state != PieceState.PLANNED) {
      located.wrong(
          MistakeCode.CONTRADICTS.about(worked.get(), state.word()),
          "Pieces that are " + state.word() + " have all their rounds",
          "Leave rounds-worked out, or make the state planned");
      return Optional.empty();
    }
    return worked;
  }

  /**
   * {@return how many rounds are worked, from the centre}
   *
   * @param located the field
   */
  public static Optional<Integer> roundsWorked(Located located) {
    return located.number(ROUNDS_WORKED).map(BigDecimal::intValueExact);
  }

  /**
   * {@return how many rounds are worked, from the centre, at least one}
   *
   * @param located the field
   */
  public static Optional<Integer> someRoundsWorked(Located located) {
    return located.number(SOME_ROUNDS).map(BigDecimal::intValueExact);
  }

  private static boolean fromBorder(Located rounds) {
    return rounds.node() instanceof Node.Items list
        && !list.items().isEmpty()
        && list.items().get(0) instanceof Node.Scalar first
        && first.text().equals(PieceNote.ROUNDS_BEFORE);
  }

  /**
   * {@return codes of the yarns of a piece, centre first; empty for an open round}
   *
   * @param located the field
   */
  public static List<Optional<String>> rounds(Located located) {
    return rounds(located, 0);
  }

  private static List<Optional<String>> rounds(Located located, int skipped) {
    List<Optional<String>> rounds = new ArrayList<>();
    List<Located> items =
        located.items("yarns' codes, the centre first, ~ or null for an open round");
    for (Located item : items.subList(Math.min(skipped, items.size()), items.size())) {
      rounds.add(item.empty() ? Optional.empty() : YarnReader.code(item));
    }
    return rounds;
  }
}
