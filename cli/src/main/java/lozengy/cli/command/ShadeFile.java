package lozengy.cli.command;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lozengy.cli.process.Refusal;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PartsReader;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Located;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Nearest;
import lozengy.model.input.Node;
import lozengy.model.input.Words;
import lozengy.solver.substitute.Listed;

/**
 * Reads shades from a table, a line each: the columns {@code code} and {@code colour}, and where
 * they are there {@code name}, {@code tone}, {@code ball_g} or {@code ball_oz} with {@code ball_m}
 * or {@code ball_yd}, {@code balls}, {@code left} (with its unit), {@code at_hand_m} and {@code
 * price}, as in a brief and in the table of yarns that a report writes. Other columns are passed
 * over.
 */
final class ShadeFile {

  private static final int MOST_SHADES = 1_000;
  private static final String CODE = "code";
  private static final String COLOUR = "colour";
  private static final String AT_HAND = "at_hand_m";
  private static final List<String> WEIGHTS = List.of("ball_g", "ball_oz");
  private static final List<String> LENGTHS = List.of("ball_m", "ball_yd");
  private static final String EXAMPLE =
      "Begin with a line such as code,name,colour,balls,ball_g,ball_m";

  /** Columns that are a field of a yarn. */
  private static final List<String> FIELDS =
      List.of(CODE, "name", COLOUR, "tone", "balls", "left", "price");

  /** Columns that are a field of its put-up. */
  private static final Map<String, String> BALL = new LinkedHashMap<>();

  static {
    BALL.put("ball_g", "grams");
    BALL.put("ball_oz", "ounces");
    BALL.put("ball_m", "metres");
    BALL.put("ball_yd", "yards");
  }

  private static final List<String> READ =
      Stream.of(FIELDS, BALL.keySet(), List.of(AT_HAND)).flatMap(Collection::stream).toList();

  /** Columns of the table of yarns that have a name near one that is read. */
  private static final List<String> OTHERS =
      List.of("left_m", "left_balls", "used_balls", "worked_m");

  private final String place;
  private final Brief brief;
  private final List<Mistake> mistakes = new ArrayList<>();
  private final Map<String, Integer> lines = new LinkedHashMap<>();
  private final List<Listed> shades = new ArrayList<>();
  private final List<String> known = new ArrayList<>();
  private List<String> header;

  private ShadeFile(String place, Brief brief) {
    this.place = place;
    this.brief = brief;
  }

  /**
   * Shades that were read.
   *
   * @param shades those that the brief does not know
   * @param known codes of those that it knows: what it says of them holds
   */
  record Shades(List<Listed> shades, List<String> known) {}

  /**
   * Reads a table.
   *
   * @param place what messages call it
   * @param text the table
   * @param brief the brief that the shades may come to
   * @throws Refusal with all its mistakes
   */
  static Shades read(String place, String text, Brief brief) {
    ShadeFile file = new ShadeFile(place, brief);
    int number = 0;
    for (String line : text.replace("\uFEFF", "").split("\\R")) {
      number++;
      List<String> cells = PieceLists.cells(line).stream().map(ShadeFile::unshielded).toList();
      if (cells.stream().allMatch(String::isEmpty)) {
        continue;
      }
      if (file.header != null) {
        file.line(number, cells);
      } else if (!file.headed(number, cells)) {
        break;
      }
    }
    if (file.mistakes.isEmpty() && file.lines.isEmpty()) {
      file.wrong(
          0,
          CODE,
          MistakeCode.WRONG_COUNT.about("shades", 0, 1),
          "No shade is listed",
          EXAMPLE + ", and list at least one");
    }
    if (file.lines.size() > MOST_SHADES) {
      file.wrong(
          0,
          CODE,
          MistakeCode.TOO_LARGE.about("shades", MOST_SHADES, file.lines.size()),
          file.lines.size() + " shades are listed",
          "List at most " + MOST_SHADES);
    }
    if (!file.mistakes.isEmpty()) {
      throw new Refusal(place, file.mistakes);
    }
    return new Shades(file.shades, file.known);
  }

  /** What a table shields from spreadsheets stands behind an apostrophe. */
  private static String unshielded(String cell) {
    return cell.startsWith("'") ? cell.substring(1) : cell;
  }

  private void wrong(int line, String column, Mistake.Sort sort, String found, String remedy) {
    mistakes.add(new Mistake(BriefPath.of(column), line, sort, found, remedy));
  }

  private boolean headed(int line, List<String> cells) {
    header = cells;
    for (String column : List.of(CODE, COLOUR)) {
      if (!cells.contains(column)) {
        wrong(
            line,
            column,
            MistakeCode.FIELD_MISSING.about(column),
            "There is no such column",
            meant(column, cells)
                .map(near -> "Maybe " + Words.quoted(near) + " is meant for it")
                .orElse(
                    column.equals(COLOUR)
                        ? "Add it: how near shades are is told by their colours, such as #8a4b2d"
                        : EXAMPLE));
      }
    }
    for (String cell : cells) {
      if (READ.contains(cell) && cells.indexOf(cell) != cells.lastIndexOf(cell)) {
        wrong(
            line,
            cell,
            MistakeCode.FIELD_TWICE.about(cell),
            "There are two such columns",
            "Keep one");
        break;
      }
    }
    for (String cell : cells) {
      Optional<String> near = READ.contains(cell) ? Optional.empty() : Nearest.to(cell, READ);
      // a, b and such are columns of other tables
      if (cell.length() > 3 && near.isPresent() && !OTHERS.contains(cell)) {
        wrong(
            line,
            cell,
            MistakeCode.FIELD_UNKNOWN.about(cell),
            "This column is not read",
            "Maybe " + near.get() + " is meant; else give it a name further from that");
      }
    }
    return mistakes.isEmpty();
  }

  private static Optional<String> meant(String column, List<String> cells) {
    return cells.stream()
        .filter(cell -> !READ.contains(cell) && Nearest.to(cell, List.of(column)).isPresent())
        .findFirst();
  }

  private Optional<String> cell(List<String> cells, String column) {
    int at = header.indexOf(column);
    return at < 0 || at >= cells.size() || cells.get(at).isEmpty()
        ? Optional.empty()
        : Optional.of(cells.get(at));
  }

  private void line(int number, List<String> cells) {
    int before = mistakes.size();
    boolean weighed = WEIGHTS.stream().anyMatch(column -> cell(cells, column).isPresent());
    if (weighed && LENGTHS.stream().noneMatch(column -> cell(cells, column).isPresent())) {
      wrong(
          number,
          LENGTHS.get(0),
          MistakeCode.FIELD_MISSING.about(LENGTHS.get(0)),
          "The put-up has a weight and no length",
          "Say what is on a ball, in ball_m or ball_yd: yarn is replaced by its length");
    }
    Optional<String> amount = cell(cells, AT_HAND);
    if (amount.isPresent() && cell(cells, "left").isPresent()) {
      wrong(
          number,
          AT_HAND,
          MistakeCode.ONE_OF.about(List.of("left", AT_HAND), List.of("left", AT_HAND)),
          "There is left as well",
          "Give one of the two");
    }
    String code = cell(cells, CODE).orElse("");
    Integer first =
        code.isEmpty() ? null : lines.putIfAbsent(code.toLowerCase(Locale.ROOT), number);
    if (first != null) {
      wrong(
          number,
          CODE,
          MistakeCode.NAMED_TWICE.about(code, "line " + first),
          code + " stands in line " + first + " already",
          "Give each shade a code of its own; capitals make no difference");
    }
    if (mistakes.size() > before) {
      return;
    }
    Mistakes found = new Mistakes();
    Yarn yarn = PartsReader.shade(Located.root(node(number, cells), found));
    for (Mistake mistake : found.list()) {
      wrong(number, column(mistake.path()), mistake.sort(), mistake.found(), mistake.remedy());
    }
    if (mistakes.size() == before) {
      boolean says =
          Stream.of("balls", "left", AT_HAND).anyMatch(column -> cell(cells, column).isPresent());
      add(number, yarn, !says);
    }
  }

  private void add(int number, Yarn yarn, boolean toBuy) {
    // as in a brief, capitals make no difference
    Optional<Yarn> there =
        brief.yarns().stream()
            .filter(each -> each.code().equalsIgnoreCase(yarn.code()))
            .findFirst();
    if (there.isEmpty()) {
      shades.add(new Listed(place + ", line " + number, yarn, toBuy));
    } else if (there.get().colour().equals(yarn.colour())) {
      known.add(there.get().code());
    } else {
      wrong(
          number,
          CODE,
          MistakeCode.NAMED_TWICE.about(yarn.code(), "yarns"),
          there.get().code() + " is another shade in the brief, " + there.get().colour().hex(),
          "Give it a code of its own");
    }
  }

  /** A yarn's field, by the column that it comes from. */
  private static String column(BriefPath path) {
    String field = path.toString();
    return BALL.entrySet().stream()
        .filter(each -> field.equals("ball." + each.getValue()))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(field);
  }

  private Node node(int line, List<String> cells) {
    List<Node.Field> fields = new ArrayList<>();
    for (String field : FIELDS) {
      cell(cells, field).ifPresent(text -> fields.add(field(line, field, text)));
    }
    cell(cells, AT_HAND).ifPresent(metres -> fields.add(field(line, "left", metres + " m")));
    List<Node.Field> ball = new ArrayList<>();
    BALL.forEach(
        (column, field) ->
            cell(cells, column).ifPresent(text -> ball.add(field(line, field, text))));
    if (!ball.isEmpty()) {
      fields.add(new Node.Field(line, "ball", new Node.Mapping(line, ball)));
    }
    return new Node.Mapping(line, fields);
  }

  private static Node.Field field(int line, String name, String text) {
    return new Node.Field(line, name, new Node.Scalar(line, text, false));
  }
}
