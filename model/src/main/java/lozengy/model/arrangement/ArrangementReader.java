package lozengy.model.arrangement;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Extras;
import lozengy.model.brief.PartsReader;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Fields;
import lozengy.model.input.FormatVersion;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;
import lozengy.model.input.Words;

/**
 * Reads arrangement files. The structure must be right: the brief in the file, every piece listed
 * once, its rounds in yarns that are there.
 *
 * <p>The brief in the file is the truth about what is asked, and about what has been worked. A
 * piece's rounds are the plan where it has not been worked; where it has, they must be those of the
 * brief, and so must title, kinds, states, coordinates and what is of the pile. Figures are taken
 * as the file states them, for {@link Contradictions} to judge, and rules for the check.
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
    int newer = checkFormat(of, mistakes);
    Optional<Located> titleAt = of.need("title", "\"title\": \"Saltmarsh throw\"");
    Optional<Located> pieces = of.need("pieces", "\"pieces\": [ ... ]");
    List<StatedPiece> stated = pieces.map(list -> StatedPiece.list(list, true)).orElse(List.of());
    Optional<Located> earlier = of.get("earlier");
    List<StatedPiece> statedEarlier =
        earlier.map(list -> StatedPiece.list(list, false)).orElse(List.of());
    StatedFigures figures = StatedFigures.read(of);
    Optional<Diary> diaryThere = of.get("diary").map(DiaryReader::read);
    // earlier files held what stood before their last mark, which is not taken back any more
    of.get("last_mark");
    Optional<Located> briefAt = of.need("brief", "\"brief\": { ... }, the brief that it answers");
    of.tellUnknown();
    if (briefAt.isEmpty()) {
      throw new InputException(mistakes.list());
    }
    Brief alone = PartsReader.read(briefAt.get());
    Brief brief =
        alone.withAround(
            Extras.read(
                newer,
                mistakes,
                root.path(),
                briefAt.get().path(),
                itemNames(alone, stated, statedEarlier)));
    if (mistakes.doubt(BriefPath.of("brief"))) {
      throw new InputException(mistakes.list());
    }
    titleAt.ifPresent(title -> tellTitle(title, brief));
    Blanket blanket = Blanket.ofUnjudged(brief);
    Optional<PieceFitting> fitted = pieces.map(list -> PieceFitting.of(blanket, list, stated));
    Optional<Sequences> earlierSequences =
        earlier.map(list -> PieceFitting.of(blanket, list, statedEarlier).sequences());
    fitted.ifPresent(PieceFitting::tellWorked);
    if (brief.pile().isEmpty() || mistakes.none()) {
      fitted.ifPresent(PieceFitting::tellStates);
    }
    mistakes.throwIfAny();
    PieceFitting fitting = fitted.orElseThrow();
    Sequences sequences = fitting.sequences();
    Diary diary = diaryThere.orElseGet(() -> Diary.begun(blanket, sequences));
    return new StatedArrangement(
        blanket,
        sequences,
        earlierSequences,
        figures.score(),
        figures.formerTotal(),
        figures.bound(),
        figures.solved(),
        figures.yarns(),
        figures.formerTotal().isEmpty() ? diary : diary.unproved(),
        fitting.leftOut());
  }

  private static void tellTitle(Located located, Brief brief) {
    Optional<String> title = located.text(MOST_TITLE_CHARACTERS);
    if (title.isPresent() && !title.get().equals(brief.title())) {
      located.wrong(
          MistakeCode.DIFFERS_FROM_BRIEF.about(title.get(), brief.title()),
          "The title is " + Words.quoted(title.get()) + " here, but not in the brief",
          "Write " + Words.quoted(brief.title()) + ", as the brief in this file says");
    }
  }

  /** What items of lists are called as the file has them. */
  private static Map<String, List<String>> itemNames(
      Brief brief, List<StatedPiece> pieces, List<StatedPiece> earlier) {
    return Map.of(
        "pieces",
        pieces.stream().map(piece -> piece.at().orElse("")).toList(),
        "earlier",
        earlier.stream().map(piece -> piece.at().orElse("")).toList(),
        "yarns",
        brief.itemNames().get("yarns"));
  }

  /** The second number of the form that the file states. */
  private static int checkFormat(Fields of, Mistakes mistakes) {
    Optional<Located> format = of.need("format", "\"format\": \"" + Arrangement.FORMAT + "\"");
    Optional<String> text = format.flatMap(f -> f.scalar("Write " + Arrangement.FORMAT));
    OptionalInt second =
        text.isEmpty() ? OptionalInt.of(0) : FormatVersion.second(Arrangement.FORMAT, text.get());
    if (second.isEmpty()) {
      format
          .get()
          .wrong(
              MistakeCode.WRONG_FORMAT.about(text.get(), Arrangement.FORMAT),
              Words.quoted(text.get()) + " is not a format that is read here",
              "This program reads arrangements of the format " + Arrangement.FORMAT);
      throw new InputException(mistakes.list());
    }
    if (second.getAsInt() > 0) {
      mistakes.newer();
    }
    return second.getAsInt();
  }
}
