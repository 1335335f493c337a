package lozengy.report.explain;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.check.BriefLine;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Node;
import lozengy.report.wording.Wording;

/**
 * Where the lines of a brief stand in the file that was read.
 *
 * @param root the file's values
 * @param prefix where the brief stands in this file
 * @param notes whether the file's notes on pieces are those of the brief
 * @param wishes options that brought notes on pieces, by the notes' indices in the brief
 */
public record FileLines(Node root, BriefPath prefix, boolean notes, Map<Integer, String> wishes)
    implements Wording.Places {

  private static final String NOTES = "pieces";

  /** The option that brought the note on pieces of a path of the brief; empty if it is none. */
  Optional<String> wish(BriefPath path) {
    return path.inItem(NOTES)
        ? Optional.ofNullable(wishes.get(path.index().getAsInt()))
        : Optional.empty();
  }

  /** The path in the file of a path of the brief; or the option that brought it. */
  @Override
  public String path(BriefPath path) {
    return wish(path)
        .map(wish -> wish + path.part().map(part -> ", " + part).orElse(""))
        .orElse(path.in(prefix).toString());
  }

  /** The line of the file, from 1; empty where the brief's line is a silent one, or not known. */
  Optional<Integer> line(BriefPath path) {
    if (!notes && path.first().filter(NOTES::equals).isPresent()) {
      return Optional.empty();
    }
    OptionalInt line = root.lineOf(path.in(prefix));
    return line.isPresent() ? Optional.of(line.getAsInt()) : Optional.empty();
  }

  /** {@code line 12, yarns[3]}; or the path alone. */
  @Override
  public String place(BriefPath path) {
    return line(path).map(line -> "line " + line + ", ").orElse("") + path(path);
  }

  /** The places of several lines in their order: {@code lines 27 to 34, yarns}. */
  @Override
  public String range(List<BriefLine> lines) {
    Optional<Integer> first = line(lines.get(0).path());
    Optional<Integer> last = line(lines.get(lines.size() - 1).path());
    String field = path(BriefPath.of(lines.get(0).path().first().orElseThrow()));
    return first.isPresent() && last.isPresent()
        ? "lines " + first.get() + " to " + last.get() + ", " + field
        : field;
  }
}
