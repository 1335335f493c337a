package lozengy.cli.file;

import java.util.OptionalInt;
import java.util.function.Function;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Contradictions;
import lozengy.model.arrangement.Documents;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;
import lozengy.model.reading.Doubt;
import lozengy.model.reading.Doubts;
import lozengy.report.PlainText;
import lozengy.report.wording.DoubtWords;

/**
 * Reads what commands work on. What follows from the rest of an arrangement's file is worked out
 * anew, and it is told on standard error where the file states it otherwise; what contradicts the
 * brief in it is refused.
 */
public final class Inputs {

  private Inputs() {}

  /**
   * Reads a brief or an arrangement, whichever it is by its {@code format}.
   *
   * @throws Refusal with all mistakes of the file
   */
  public static Document read(Source source, Terminal terminal) {
    return read(source, terminal, Documents::read);
  }

  /**
   * The same, of a brief that may leave out what is at hand of all its yarns.
   *
   * @throws Refusal with all mistakes of the file
   */
  public static Document readWithoutStock(Source source, Terminal terminal) {
    return read(source, terminal, Documents::readWithoutStock);
  }

  private static Document read(
      Source source, Terminal terminal, Function<SourceText, Document> reader) {
    SourceText text = source.read(terminal);
    Document document = read(source, text, reader);
    tellContradictions(source, terminal, document);
    tellDoubts(source, text, terminal, document);
    return document;
  }

  /**
   * Reads a brief or an arrangement whose locks may break rules.
   *
   * @throws Refusal with all other mistakes of the file
   */
  public static Documents.Unjudged readUnjudged(Source source, Terminal terminal) {
    SourceText text = source.read(terminal);
    Documents.Unjudged read = read(source, text, Documents::readUnjudged);
    tellContradictions(source, terminal, read.document());
    tellDoubts(source, text, terminal, read.document());
    return read;
  }

  /** Asks about values of a brief that are hardly meant. Of an arrangement only a check asks. */
  private static void tellDoubts(
      Source source, SourceText text, Terminal terminal, Document document) {
    if (!(document instanceof Documents.BriefDocument)) {
      return;
    }
    Blanket blanket = blanket(document);
    for (Doubt doubt : Doubts.of(blanket)) {
      OptionalInt line = TreeReader.read(text, new Mistakes()).lineOf(doubt.path());
      String place = line.isPresent() ? ", line " + line.getAsInt() + ", " : ": ";
      terminal
          .err()
          .println(PlainText.oneLine(source.label() + place + DoubtWords.of(blanket, doubt)));
    }
  }

  private static void tellContradictions(Source source, Terminal terminal, Document document) {
    if (document instanceof ArrangementDocument answer
        && Contradictions.of(answer.arrangement()).stream()
            .anyMatch(each -> each.stated().isPresent())) {
      terminal
          .err()
          .println(
              PlainText.oneLine(
                  source.label()
                      + ": Figures in it are not what its pieces come to, and are worked out anew;"
                      + " 'lozengy check' names them"));
    }
  }

  private static <T> T read(Source source, SourceText text, Function<SourceText, T> reader) {
    try {
      return reader.apply(text);
    } catch (InputException e) {
      throw Refusal.of(source.label(), e);
    }
  }

  /**
   * Reads an arrangement as its file states it, to judge it.
   *
   * @throws Refusal with all mistakes of the file, or if it holds a brief
   */
  public static StatedArrangement readStated(Source source, Terminal terminal) {
    return arrangement(source, read(source, source.read(terminal), Documents::read));
  }

  private static StatedArrangement arrangement(Source source, Document read) {
    if (read instanceof ArrangementDocument document) {
      return document.arrangement();
    }
    throw Refusal.of(
        source.label(),
        MistakeCode.WRONG_FORMAT.about(Brief.FORMAT, Arrangement.FORMAT),
        "This is a brief",
        "Name an arrangement; 'lozengy solve' makes one of a brief");
  }

  /**
   * Reads an arrangement with every round filled, and scores it from scratch.
   *
   * @throws Refusal with all mistakes of the file, or if it holds a brief or has open rounds
   */
  public static Arrangement readComplete(Source source, Terminal terminal) {
    return complete(source, arrangement(source, read(source, terminal)));
  }

  /**
   * An arrangement with every round filled, scored from scratch.
   *
   * @throws Refusal if it has open rounds
   */
  public static Arrangement complete(Source source, StatedArrangement stated) {
    if (!stated.sequences().complete()) {
      throw Refusal.of(
          source.label(),
          MistakeCode.ROUND_OPEN.about(),
          "Some rounds have no yarn yet",
          "'lozengy check' names them; 'lozengy solve' fills them, or where none fit, 'lozengy explain'"
              + " tells why");
    }
    return stated.scored();
  }

  /** The blanket of a brief or of an arrangement. */
  public static Blanket blanket(Document document) {
    return document.blanket();
  }
}
