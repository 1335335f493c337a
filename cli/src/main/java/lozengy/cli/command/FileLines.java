package lozengy.cli.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.model.check.BriefLine;
import lozengy.model.input.Node;

/**
 * Where the lines of a brief stand in the file that was read.
 *
 * @param root the file's values
 * @param prefix what stands before a path of the brief in this file
 * @param notes whether the file's notes on pieces are those of the brief
 * @param wishes options that brought notes on pieces, by the notes' indices in the brief
 */
record FileLines(Node root, String prefix, boolean notes, Map<Integer, String> wishes) {

  private static final String NOTES = "pieces";
  private static final Pattern NOTE = Pattern.compile("pieces\\[(\\d+)](\\.\\w+)?( .*)?");

  /** The option that brought the note on pieces of a path of the brief; empty if it is none. */
  Optional<String> wish(String path) {
    Matcher note = NOTE.matcher(path);
    return note.matches()
        ? Optional.ofNullable(wishes.get(Integer.parseInt(note.group(1))))
        : Optional.empty();
  }

  /**
   * The path in the file of a path of the brief, which may go on in words; or the option that
   * brought it.
   */
  String path(String path) {
    return wish(path)
        .map(wish -> wish + (path.contains(" ") ? "," + path.substring(path.indexOf(' ')) : ""))
        .orElse(prefix + path);
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
