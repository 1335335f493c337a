package lozengy.model.arrangement;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PartsReader;
import lozengy.model.input.Fields;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;

/** Reads what stood in an arrangement before its last mark. */
final class LastMarkReader {

  private LastMarkReader() {}

  /**
   * Reads it.
   *
   * @param located where it stands
   * @param now the blanket of the file
   * @param sequences the sequences of the file; those before differ where the mark changed them
   * @throws InputException with all mistakes so far, if its brief cannot be used
   */
  static Optional<LastMark> read(Located located, Blanket now, Sequences sequences) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<Located> pieces = of.need("pieces", "\"pieces\": []");
    List<StatedPiece> stated = pieces.map(list -> StatedPiece.list(list, false)).orElse(List.of());
    Optional<Arrangement.Bound> bound = StatedFigures.bound(of);
    Optional<Arrangement.Solved> solved =
        of.get("solved").flatMap(Located::fields).flatMap(StatedFigures::solved);
    Optional<Located> briefAt = of.need("brief", "\"brief\": { ... }, the brief before the mark");
    of.tellUnknown();
    if (briefAt.isEmpty()) {
      return Optional.empty();
    }
    Brief brief = PartsReader.read(briefAt.get());
    if (located.mistakes().doubt(briefAt.get().path())) {
      throw new InputException(located.mistakes().list());
    }
    if (!fits(brief, now.brief())) {
      briefAt
          .get()
          .wrong(
              MistakeCode.DIFFERS_FROM_BRIEF.about(),
              "More than pieces, pile and counts differs from the brief as it is now",
              "A mark changes nothing else; remove last_mark");
      return Optional.empty();
    }
    Blanket before = Blanket.ofUnjudged(brief);
    Sequences was = sequences.copy();
    if (pieces.isPresent()) {
      PieceFitting fitting = PieceFitting.ofSome(before, pieces.get(), stated, was);
      fitting.tellOpen();
      fitting.tellWorked();
    }
    return Optional.of(new LastMark(brief, was, bound, solved));
  }

  private static boolean fits(Brief before, Brief now) {
    return beforeAllMarks(before).equals(beforeAllMarks(now));
  }

  /** What no mark changes. */
  private static Brief beforeAllMarks(Brief brief) {
    return brief
        .withPieces(List.of())
        .withPile(List.of())
        .withYarns(brief.yarns().stream().map(yarn -> yarn.withCount(Optional.empty())).toList());
  }
}
