package lozengy.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.GroupedNames;
import lozengy.model.layout.Place;

/**
 * Lines of a brief that cannot hold together, for a person to read: what is said of many yarns, of
 * many finished pieces, or of many pieces by one note is said once.
 */
final class ConflictLines {

  /** Fewer lines of a sort than this are told one by one. */
  private static final int FEW = 4;

  private static final String HAS = " has ";
  private static final String IS = " is ";
  private static final String LOCKED = "locked: ";

  private final Blanket blanket;
  private final FileLines places;

  ConflictLines(Blanket blanket, FileLines places) {
    this.blanket = blanket;
    this.places = places;
  }

  /** The lines, each with its place. */
  List<String> words(List<BriefLine> lines) {
    Map<String, List<BriefLine>> sorts = new LinkedHashMap<>();
    lines.forEach(line -> sorts.computeIfAbsent(sort(line), s -> new ArrayList<>()).add(line));
    List<String> words = new ArrayList<>();
    sorts.forEach(
        (sort, alike) -> {
          if (alike.size() < FEW) {
            alike.forEach(line -> words.add(places.place(line.path()) + ": " + line.words()));
          } else if (alike.get(0).rule() != RuleId.LOCKS) {
            words.add(places.range(alike) + ": " + yarns(alike));
          } else {
            words.add(pieces(alike));
          }
        });
    return words;
  }

  /** What may be told together has the same sort; any other line has one of its own. */
  private static String sort(BriefLine line) {
    if (line.path().inItem("yarns")) {
      return "yarns";
    }
    boolean locks = line.rule() == RuleId.LOCKS && line.words().contains(IS);
    if (!locks) {
      return line.path().toString();
    }
    return after(line, IS).startsWith(LOCKED) ? line.path().whole() + after(line, IS) : "worked";
  }

  private static String before(BriefLine line, String word) {
    int at = line.words().indexOf(word);
    return at < 0 ? line.words() : line.words().substring(0, at);
  }

  private static String after(BriefLine line, String word) {
    int at = line.words().indexOf(word);
    return at < 0 ? "" : line.words().substring(at + word.length());
  }

  /** What there is of yarns, those of which there is the same together. */
  private static String yarns(List<BriefLine> lines) {
    Map<String, List<String>> namesByAmount = new LinkedHashMap<>();
    for (BriefLine line : lines) {
      namesByAmount
          .computeIfAbsent(after(line, HAS), amount -> new ArrayList<>())
          .add(before(line, HAS));
    }
    List<String> words = new ArrayList<>();
    namesByAmount.forEach(
        (amount, names) ->
            words.add(
                names.size() == 1
                    ? names.get(0) + HAS + amount
                    : Words.list(names) + " have " + amount + " each"));
    return String.join("; ", words);
  }

  private String pieces(List<BriefLine> lines) {
    List<Place> pieces = lines.stream().map(line -> piece(line)).toList();
    List<String> groups = GroupedNames.of(blanket.layout(), pieces);
    String names = Words.list(groups) + (groups.size() == 1 ? IS : " are ");
    String is = after(lines.get(0), IS);
    if (is.startsWith(LOCKED)) {
      return "%s: %s%s".formatted(places.place(lines.get(0).path().whole()), names, is);
    }
    return "%s: %sworked, and stay so".formatted(places.path(BriefPath.of("pieces")), names);
  }

  private Place piece(BriefLine line) {
    return blanket.layout().find(line.path().part().orElseThrow()).orElseThrow();
  }
}
