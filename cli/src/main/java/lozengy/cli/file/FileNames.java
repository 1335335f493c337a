package lozengy.cli.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How results are named after what they were made from. */
public final class FileNames {

  /** The ending of an arrangement's file. */
  public static final String ARRANGEMENT = ".arrangement.json";

  private static final List<String> ENDINGS = List.of(ARRANGEMENT, ".json", ".yaml", ".yml");
  private static final String ALTERNATIVE = "-alternative-";
  private static final Pattern NUMBERED =
      Pattern.compile("(.*(?<!-alternative))-([1-9][0-9]{0,5})");

  private FileNames() {}

  /**
   * The file's name without what tells its kind: {@code throw} for {@code throw.arrangement.json}.
   */
  public static String stem(Path file) {
    String name = String.valueOf(file.getFileName());
    for (String ending : ENDINGS) {
      if (name.length() > ending.length() && name.endsWith(ending)) {
        return name.substring(0, name.length() - ending.length());
      }
    }
    return name;
  }

  /**
   * The arrangement of a brief, beside it: {@code throw.arrangement.json} for {@code throw.yaml}.
   */
  public static Path arrangement(Path brief) {
    return brief.resolveSibling(stem(brief) + ARRANGEMENT);
  }

  /** A file made from another, beside it: {@code throw.svg} for {@code throw.arrangement.json}. */
  public static Path beside(Path file, String ending) {
    return file.resolveSibling(stem(file) + ending);
  }

  /**
   * The alternative of that number beside a first arrangement: {@code
   * throw-alternative-3.arrangement.json}. Planned again, it counts on from its own name.
   *
   * @param number which, the first being 1
   */
  public static Path alternative(Path first, int number) {
    return first.resolveSibling(stem(first) + ALTERNATIVE + number + ARRANGEMENT);
  }

  /**
   * The next arrangement after another, beside it: {@code throw-2.arrangement.json} after {@code
   * throw.arrangement.json}, or the first number above that no file has yet.
   *
   * @param companion names the file that will stand beside it, which must not be there either
   */
  public static Path next(Path arrangement, UnaryOperator<Path> companion) {
    String stem = stem(arrangement);
    int number = 1;
    Matcher numbered = NUMBERED.matcher(stem);
    if (numbered.matches()) {
      stem = numbered.group(1);
      number = Integer.parseInt(numbered.group(2));
    }
    Path next;
    do {
      number++;
      next = arrangement.resolveSibling(stem + "-" + number + ARRANGEMENT);
    } while (Files.exists(next) || Files.exists(companion.apply(next)));
    return next;
  }
}
