package lozengy.model.reading;

import java.nio.file.Path;
import java.util.List;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PartsReader;
import lozengy.model.input.BriefPath;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.Mistakes;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;

/** Reads briefs, in YAML or JSON. All mistakes of a brief are told at once. */
public final class BriefReader {

  private BriefReader() {}

  /**
   * Reads a brief file.
   *
   * @param file the file, YAML or JSON in UTF-8
   * @return the brief, valid
   * @throws InputException with all mistakes, if there is one
   */
  public static Brief read(Path file) {
    return read(SourceText.read(file));
  }

  /**
   * Reads a brief.
   *
   * @param source the text and what messages call it
   * @return the brief, valid
   * @throws InputException with all mistakes, if there is one
   */
  public static Brief read(SourceText source) {
    Mistakes mistakes = new Mistakes();
    return read(Located.root(TreeReader.read(source, mistakes), mistakes));
  }

  /**
   * Reads a brief whose tree is there.
   *
   * @param root the tree of fields
   * @return the brief, valid
   * @throws InputException with all mistakes, if there is one
   */
  public static Brief read(Located root) {
    return judged(root, PartsReader.read(root));
  }

  /**
   * Reads a brief that may leave out what is at hand of all its yarns.
   *
   * @param root the tree of fields
   * @return the brief, valid; without stock where it states none
   * @throws InputException with all mistakes, if there is one
   */
  public static Brief readWithoutStock(Located root) {
    return judged(root, PartsReader.readWithoutStock(root));
  }

  private static Brief judged(Located root, Brief brief) {
    List<BriefPath> wrong =
        root.mistakes().list().stream().map(each -> each.path().from(root.path())).toList();
    BriefJudge.ofLocks(brief, wrong).forEach(root::add);
    root.mistakes().throwIfAny();
    return brief;
  }

  /**
   * Reads a brief whose locks may break rules.
   *
   * @param root the tree of fields
   * @return the brief, whose locks may break rules
   * @throws InputException with all other mistakes, if there is one
   */
  public static Brief readUnjudged(Located root) {
    Brief brief = PartsReader.read(root);
    root.mistakes().throwIfAny();
    return brief;
  }
}
