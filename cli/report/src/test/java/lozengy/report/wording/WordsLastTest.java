package lozengy.report.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Values come first and words last: held by what stands in the sources. */
class WordsLastTest {

  private static final Path MODEL = Path.of("../../model/src/main/java");
  private static final Path SOLVER = Path.of("../../solver/src/main/java");
  private static final Path REPORT = Path.of("src/main/java");
  private static final Path CLI = Path.of("../src/main/java");

  /** A text taken apart, or looked into, at a word with a blank beside it. */
  static final Pattern TAKEN_APART =
      Pattern.compile(
          "\\.(startsWith|endsWith|contains|indexOf|lastIndexOf|split|replace|replaceAll"
              + "|replaceFirst|matches)\\(\\s*\"[^\"]*([a-z] | [a-z])[^\"]*\"");

  /** A plural made by hand. */
  static final Pattern PLURAL =
      Pattern.compile(
          "\\?\\s*\"\"\\s*:\\s*\"s\"|\\?\\s*\" ?(\\w+)[ .:]?\"\\s*:\\s*\" ?\\1s[ .:]?\"");

  /** Words, or names of options, where only values belong. */
  static final Pattern WORDS =
      Pattern.compile(
          "\"[^\"\\n]*--[a-z]|import lozengy\\.(model\\.(blanket|input)\\.Words|model\\.wording"
              + "|model\\.layout\\.GroupedNames|report)");

  /** The name of an option in a text. */
  static final Pattern OPTION = Pattern.compile("\"[^\"\\n]*--[a-z]");

  private static List<String> found(Path root, Pattern pattern, Predicate<Path> where)
      throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(root)) {
      files = all.filter(file -> file.toString().endsWith(".java")).filter(where).toList();
    }
    assertTrue(files.size() > 20, root + ": " + files);
    List<String> found = new ArrayList<>();
    for (Path file : files) {
      // the whole text, for a call may run over several lines
      pattern
          .matcher(Files.readString(file))
          .results()
          .forEach(match -> found.add(file.getFileName() + ": " + match.group()));
    }
    return found;
  }

  private static boolean wording(Path file) {
    return file.getParent().endsWith("wording");
  }

  @Test
  void noSentenceIsTakenApart() throws IOException {
    for (Path root : List.of(MODEL, SOLVER, REPORT, CLI)) {
      assertEquals(List.of(), found(root, TAKEN_APART, file -> true));
    }
  }

  @Test
  void pluralsAreMadeInOnePlace() throws IOException {
    for (Path root : List.of(MODEL, SOLVER, REPORT, CLI)) {
      assertEquals(List.of(), found(root, PLURAL, file -> !wording(file)));
    }
  }

  @Test
  void theSolverKnowsNoWordsAndNoOptions() throws IOException {
    assertEquals(List.of(), found(SOLVER, WORDS, file -> true));
  }

  @Test
  void theModelNamesNoOptions() throws IOException {
    assertEquals(List.of(), found(MODEL, OPTION, file -> true));
  }

  @Test
  void linesAreBrokenInOnePlace() throws IOException {
    Pattern columns = Pattern.compile("split\\(\" \\+\"\\)");
    for (Path root : List.of(MODEL, SOLVER, CLI)) {
      assertEquals(List.of(), found(root, columns, file -> true));
    }
    assertEquals(1, found(REPORT, columns, file -> true).size());
  }

  @Test
  void whatIsForbiddenIsSeen() {
    assertTrue(TAKEN_APART.matcher("words.indexOf(\" has \")").find());
    assertTrue(TAKEN_APART.matcher("v.endsWith(\" of it\")").find());
    assertTrue(TAKEN_APART.matcher("said.replace(\" both have \", x)").find());
    assertTrue(PLURAL.matcher("count == 1 ? \"\" : \"s\"").find());
    assertTrue(PLURAL.matcher("n == 1 ? \" ball\" : \" balls\"").find());
    assertTrue(WORDS.matcher("List.of(\"--free\", name)").find());
  }
}
