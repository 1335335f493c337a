package lozengy.cli.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.input.Node;
import lozengy.solver.constraint.BriefLine;

/**
 * Where the lines of a brief stand in the file that was read.
 *
 * @param root the file's values
 * @param prefix what stands before a path of the brief in this file
 * @param notes whether the file's notes on pieces are those of the brief
 */
record FileLines(Node root, String prefix, boolean notes) {

  private static final String NOTES = "pieces";

  /** The path in the file of a path of the brief, which may go on in words. */
  String path(String path) {
    return prefix + path;
  }

  /** The line of the file, from 1; empty where the brief's line is a silent one, or not known. */
  Optional<Integer> line(String path) {
    String field = path.split("[ ,]", 2)[0];
    if (!notes && field.startsWith(NOTES)) {
      return Optional.empty();
    }
    OptionalInt line = root.lineOf(prefix + field);
    return line.isPresent() ? Optional.of(line.getAsInt()) : Optional.empty();
  }

  /** {@code line 12, yarns[3]}; or the path alone. */
  String place(String path) {
    return line(path).map(line -> "line " + line + ", ").orElse("") + path(path);
  }

  /** The places of several lines in their order: {@code lines 27 to 34, yarns}. */
  String range(List<BriefLine> lines) {
    Optional<Integer> first = line(lines.get(0).path());
    Optional<Integer> last = line(lines.get(lines.size() - 1).path());
    String field = path(lines.get(0).path().replaceAll("\\[.*", ""));
    return first.isPresent() && last.isPresent()
        ? "lines " + first.get() + " to " + last.get() + ", " + field
        : field;
  }
}
