package lozengy.model.arrangement;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefReader;
import lozengy.model.input.Fields;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.Mistakes;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;
import lozengy.model.input.Words;

/**
 * Reads arrangement files. The structure must be right: the brief in the file, every piece listed
 * once, its rounds in yarns that are there. What follows from that is taken as the file states it,
 * for the caller to work out again: score, totals, and whether rules hold.
 *
 * <p>The states of the pieces win over what the brief in the file notes of them; the blanket that
 * is read has them.
 */
public final class ArrangementReader {

  private static final int MOST_TITLE_CHARACTERS = 200;

  private ArrangementReader() {}

  /**
   * Reads an arrangement file.
   *
   * @param file the file, JSON in UTF-8
   * @return the arrangement as the file states it: nothing in it is checked against the rules
   * @throws InputException with all mistakes, if there is one
   */
  public static StatedArrangement read(Path file) {
    return read(SourceText.read(file));
  }

  /**
   * Reads an arrangement.
   *
   * @param source the text and what messages call it
   * @return the arrangement as the file states it: nothing in it is checked against the rules
   * @throws InputException with all mistakes, if there is one
   */
  public static StatedArrangement read(SourceText source) {
    Mistakes mistakes = new Mistakes();
    return read(Located.root(TreeReader.read(source, mistakes), mistakes));
  }

  /**
   * Reads an arrangement whose tree is there.
   *
   * @param root the tree of fields
   * @return the arrangement as the file states it: nothing in it is checked against the rules
   * @throws InputException with all mistakes, if there is one
   */
  public static StatedArrangement read(Located root) {
    Mistakes mistakes = root.mistakes();
    Optional<Fields> fields = root.fields();
    if (fields.isEmpty()) {
      throw new InputException(mistakes.list());
    }
    Fields of = fields.get();
    checkFormat(of, mistakes);
    Optional<String> title =
        of.need("title", "\"title\": \"Saltmarsh throw\"")
            .flatMap(t -> t.text(MOST_TITLE_CHARACTERS));
    Optional<Located> pieces = of.need("pieces", "\"pieces\": [ ... ]");
    List<StatedPiece> stated = pieces.map(list -> StatedPiece.list(list, true)).orElse(List.of());
    Optional<Located> earlier = of.get("earlier");
    List<StatedPiece> statedEarlier =
        earlier.map(list -> StatedPiece.list(list, false)).orElse(List.of());
    StatedFigures figures = StatedFigures.read(of);
    Optional<Located> markAt = of.get("last_mark");
    Optional<Located> briefAt = of.need("brief", "\"brief\": { ... }, the brief that it answers");
    of.tellUnknown();
    if (briefAt.isEmpty()) {
      throw new InputException(mistakes.list());
    }
    Brief brief = BriefReader.readParts(briefAt.get());
    if (mistakes.doubt("brief")) {
      throw new InputException(mistakes.list());
    }
    Blanket before = Blanket.ofUnjudged(title.map(brief::withTitle).orElse(brief));
    Optional<PieceFitting> fitting = pieces.map(list -> PieceFitting.of(before, list, stated));
    Optional<Sequences> earlierSequences =
        earlier.map(list -> PieceFitting.of(before, list, statedEarlier).sequences());
    mistakes.throwIfAny();
    Sequences sequences = fitting.orElseThrow().sequences();
    Brief noted = WorkedPieces.noted(before, fitting.get().states(), sequences);
    Blanket blanket = noted == before.brief() ? before : Blanket.ofUnjudged(noted);
    Optional<LastMark> lastMark =
        markAt.flatMap(mark -> LastMarkReader.read(mark, blanket, sequences));
    mistakes.throwIfAny();
    return new StatedArrangement(
        blanket,
        sequences,
        earlierSequences,
        figures.score(),
        figures.formerTotal(),
        figures.bound(),
        figures.solved(),
        figures.yarns(),
        figures.formerTotal().isEmpty() ? lastMark : lastMark.map(LastMark::unproved));
  }

  private static void checkFormat(Fields of, Mistakes mistakes) {
    Optional<Located> format = of.need("format", "\"format\": \"" + Arrangement.FORMAT + "\"");
    Optional<String> text = format.flatMap(f -> f.scalar("Write " + Arrangement.FORMAT));
    if (text.isPresent() && !text.get().equals(Arrangement.FORMAT)) {
      format
          .get()
          .wrong(
              Words.quoted(text.get()) + " is not a format that is read here",
              "This program reads arrangements of the format " + Arrangement.FORMAT);
      throw new InputException(mistakes.list());
    }
  }
}
