package lozengy.cli;

import java.util.ArrayList;
import java.util.List;
import lozengy.cli.Run.Result;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;

/** JSON that a run printed. */
public final class Parsed {

  private final Node root;

  private Parsed(Node root) {
    this.root = root;
  }

  /** Parses a run's standard output, all of it. */
  public static Parsed of(Result result) {
    return of(result.out());
  }

  /** Parses a text. */
  public static Parsed of(String text) {
    Mistakes mistakes = new Mistakes();
    Node root = TreeReader.read(new SourceText("result", text, true), mistakes);
    mistakes.throwIfAny();
    return new Parsed(root);
  }

  /** The text of the value at a path such as {@code faults[0].rule}. */
  public String at(String path) {
    return ((Node.Scalar) node(path)).text();
  }

  /** The number at a path. */
  public double number(String path) {
    return Double.parseDouble(at(path));
  }

  /** How many values the list at a path has. */
  public int size(String path) {
    return ((Node.Items) node(path)).items().size();
  }

  /** The names of the fields at a path. */
  public List<String> names(String path) {
    List<String> names = new ArrayList<>();
    ((Node.Mapping) node(path)).fields().forEach(field -> names.add(field.name()));
    return names;
  }

  private Node node(String path) {
    Node node = root;
    for (String step : path.isEmpty() ? new String[0] : path.split("\\.|(?=\\[)")) {
      node =
          step.startsWith("[")
              ? ((Node.Items) node)
                  .items()
                  .get(Integer.parseInt(step.substring(1, step.length() - 1)))
              : ((Node.Mapping) node).get(step);
      if (node == null) {
        throw new AssertionError("nothing at " + path);
      }
    }
    return node;
  }
}
