package lozengy.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;

/** Reads what the command line says of pieces. */
final class Notes {

  private static final String OPEN = "~";
  private static final String ROUNDS_BEFORE = "..";

  private Notes() {}

  /** Pieces and the yarns that they may not take. */
  static PieceNote ban(List<String> at, List<String> codes) {
    return new PieceNote(at, List.of(), PieceState.PLANNED, new LinkedHashSet<>(codes));
  }

  /**
   * Pieces and yarns by round: {@code r5c1=SND,REE,~,~,MUD}, or {@code top=..,MUD}.
   *
   * @param mistakes takes the mistake if no round is named
   */
  static Optional<PieceNote> rounds(Assigned read, List<Mistake> mistakes) {
    List<Optional<String>> codes = new ArrayList<>();
    for (String code : read.right().split(",", -1)) {
      codes.add(code.strip().equals(OPEN) ? Optional.empty() : Optional.of(code.strip()));
    }
    boolean fromBorder = codes.get(0).filter(ROUNDS_BEFORE::equals).isPresent();
    List<Optional<String>> rounds = fromBorder ? codes.subList(1, codes.size()) : codes;
    if (rounds.stream().allMatch(Optional::isEmpty)) {
      mistakes.add(
          Mistake.ofWish(
              read.place(),
              MistakeCode.WRONG_COUNT.about("yarns", 0, 1),
              "No yarn is named",
              "Name at least one"));
      return Optional.empty();
    }
    List<String> at = PieceLists.selectors(read.left());
    return Optional.of(new PieceNote(at, rounds, fromBorder, PieceState.PLANNED, 0, Set.of()));
  }
}
