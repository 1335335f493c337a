package lozengy.cli.file;

import lozengy.cli.Refusal;
import lozengy.cli.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.BriefReader;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;

/** What a file may hold. */
public sealed interface Document {

  /** The blanket that it is about. */
  Blanket blanket();

  /**
   * A brief.
   *
   * @param blanket the brief made ready
   */
  record OfBrief(Blanket blanket) implements Document {}

  /**
   * An arrangement.
   *
   * @param arrangement the arrangement
   */
  record OfArrangement(Arrangement arrangement) implements Document {
    @Override
    public Blanket blanket() {
      return arrangement.blanket();
    }
  }

  /**
   * Reads a brief or an arrangement, whichever it is by its {@code format}.
   *
   * @throws Refusal with all mistakes of the file
   */
  static Document read(Source source, Terminal terminal) {
    SourceText text = source.read(terminal);
    try {
      return new OfBrief(Blanket.ofUnjudged(BriefReader.read(text)));
    } catch (InputException e) {
      throw Refusal.of(source.label(), e);
    }
  }
}
