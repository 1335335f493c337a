package lozengy.model.arrangement;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.input.BriefPath;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;
import lozengy.model.input.Words;
import lozengy.model.reading.BriefReader;

/** Reads a file that is either a brief or an arrangement, as its {@code format} says. */
public final class Documents {

  private Documents() {}

  /** A brief or an arrangement. */
  public sealed interface Document {

    /** {@return the blanket that is asked for or planned} */
    Blanket blanket();
  }

  /**
   * A brief that was read and judged.
   *
   * @param brief the brief
   */
  public record BriefDocument(Brief brief) implements Document {

    @Override
    public Blanket blanket() {
      return Blanket.ofUnjudged(brief);
    }
  }

  /**
   * An arrangement that was read.
   *
   * @param arrangement what its file says
   */
  public record ArrangementDocument(StatedArrangement arrangement) implements Document {

    @Override
    public Blanket blanket() {
      return arrangement.blanket();
    }
  }

  /**
   * A file that was read, whatever its locks say.
   *
   * @param document what it holds
   * @param root its values with their lines
   */
  public record Unjudged(Document document, Node root) {}

  /**
   * Reads a file.
   *
   * @param file the file, a brief or an arrangement
   * @return what the file is
   * @throws InputException with all mistakes, if there is one
   */
  public static Document read(Path file) {
    return read(SourceText.read(file));
  }

  /**
   * Reads a text.
   *
   * @param source a brief or an arrangement
   * @return what the file is
   * @throws InputException with all mistakes, if there is one
   */
  public static Document read(SourceText source) {
    return read(source, BriefReader::read).document();
  }

  /**
   * Reads a text; a brief may leave out what is at hand of all its yarns.
   *
   * @param source a brief or an arrangement
   * @return what the file is
   * @throws InputException with all mistakes, if there is one
   */
  public static Document readWithoutStock(SourceText source) {
    return read(source, BriefReader::readWithoutStock).document();
  }

  /**
   * Reads a text whose locks may break rules.
   *
   * @param source a brief or an arrangement
   * @return what the text holds, and its values with their lines
   * @throws InputException with all other mistakes, if there is one
   */
  public static Unjudged readUnjudged(SourceText source) {
    return read(source, BriefReader::readUnjudged);
  }

  /**
   * Reads a document whose tree is there.
   *
   * @param root the tree of fields
   * @return what it is
   * @throws InputException with all mistakes, if there is one
   */
  public static Document read(Located root) {
    return read(root, BriefReader::read).document();
  }

  private static Unjudged read(SourceText source, Function<Located, Brief> ofBrief) {
    Mistakes mistakes = new Mistakes();
    return read(Located.root(TreeReader.read(source, mistakes), mistakes), ofBrief);
  }

  private static Unjudged read(Located root, Function<Located, Brief> ofBrief) {
    Mistakes mistakes = root.mistakes();
    Optional<String> format = format(root.node());
    if (format.isPresent() && format.get().startsWith("lozengy-arrangement/")) {
      return new Unjudged(new ArrangementDocument(ArrangementReader.read(root)), root.node());
    }
    if (format.isPresent() && !format.get().startsWith("lozengy-brief/")) {
      mistakes.add(
          BriefPath.of("format"),
          root.node().lineAt(BriefPath.of("format")),
          MistakeCode.WRONG_FORMAT.about(format.get(), List.of(Brief.FORMAT, Arrangement.FORMAT)),
          Words.quoted(format.get()) + " is not a format that is read here",
          "A brief's format is " + Brief.FORMAT + ", an arrangement's " + Arrangement.FORMAT);
      throw new InputException(mistakes.list());
    }
    return new Unjudged(new BriefDocument(ofBrief.apply(root)), root.node());
  }

  private static Optional<String> format(Node root) {
    return root instanceof Node.Mapping mapping
            && mapping.get("format") instanceof Node.Scalar scalar
            && !scalar.empty()
        ? Optional.of(scalar.text())
        : Optional.empty();
  }
}
