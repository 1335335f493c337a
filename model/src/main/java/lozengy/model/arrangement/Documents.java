package lozengy.model.arrangement;

import java.nio.file.Path;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefReader;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;

/** Reads a file that is either a brief or an arrangement, as its {@code format} says. */
public final class Documents {

  private Documents() {}

  /** A brief or an arrangement. */
  public sealed interface Document {}

  /**
   * A brief that was read and judged.
   *
   * @param brief the brief
   */
  public record BriefDocument(Brief brief) implements Document {}

  /**
   * An arrangement that was read.
   *
   * @param arrangement what its file says
   */
  public record ArrangementDocument(StatedArrangement arrangement) implements Document {}

  /**
   * Reads a file.
   *
   * @throws InputException with all mistakes, if there is one
   */
  public static Document read(Path file) {
    return read(SourceText.read(file));
  }

  /**
   * Reads a text.
   *
   * @throws InputException with all mistakes, if there is one
   */
  public static Document read(SourceText source) {
    Mistakes mistakes = new Mistakes();
    Located root = Located.root(TreeReader.read(source, mistakes), mistakes);
    return isArrangement(root.node())
        ? new ArrangementDocument(ArrangementReader.read(root))
        : new BriefDocument(BriefReader.read(root));
  }

  private static boolean isArrangement(Node root) {
    return root instanceof Node.Mapping mapping
        && mapping.get("format") instanceof Node.Scalar format
        && format.text().startsWith("lozengy-arrangement/");
  }
}
