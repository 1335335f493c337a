package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lozengy.cli.command.FuzzedReaders;
import lozengy.cli.command.Lozengy;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.report.Screen;
import lozengy.solver.Solver;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/**
 * Where a coverage-guided fuzzer begins: it looks for the two methods by their names. {@link
 * FuzzCorpusTest} gives the same readers what such runs have kept.
 */
public final class Fuzz {

  private static final Terminal NOWHERE =
      new Terminal(
          new ByteArrayInputStream(new byte[0]),
          OutputStream.nullOutputStream(),
          OutputStream.nullOutputStream(),
          false,
          false,
          () -> () -> false,
          Screen.PLAIN);

  /**
   * The command line of each first word, described once: to describe it takes a hundred times as
   * long as to understand a call. Whoever begins with no command gets that of no word, with all.
   */
  private static final Map<String, CommandLine> COMMAND_LINES = new HashMap<>();

  private static Predicate<byte[]> reader;

  private Fuzz() {}

  /** All readers by name; each tells whether it took what it was given. */
  static Map<String, Predicate<byte[]>> readers() {
    Map<String, Predicate<byte[]>> readers = new LinkedHashMap<>(FuzzedReaders.byName());
    readers.put("options", Fuzz::options);
    return readers;
  }

  /** Takes the name of the reader. */
  public static void fuzzerInitialize(String[] arguments) {
    reader =
        Optional.ofNullable(readers().get(arguments[0]))
            .orElseThrow(
                () -> new IllegalArgumentException(arguments[0] + " is none of " + readers()));
  }

  /** Gives the reader one input. */
  public static void fuzzerTestOneInput(byte[] input) {
    reader.test(input);
  }

  /** A word of the call on each line: it is understood, or refused in the program's own words. */
  private static boolean options(byte[] bytes) {
    String[] words = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
    try {
      commandLine(words[0]).parseArgs(words);
      return true;
    } catch (ParameterException failure) {
      assertFalse(CallMistakes.refusal(failure).getMessage().isBlank());
    } catch (Refusal refused) {
      assertFalse(refused.mistakes().isEmpty());
    }
    return false;
  }

  private static CommandLine commandLine(String first) {
    CommandLine all =
        COMMAND_LINES.computeIfAbsent(
            "", none -> Lozengy.commandLine(NOWHERE, Solver::solve, new String[0]));
    return all.getSubcommands().containsKey(first) || first.equals("--version")
        ? COMMAND_LINES.computeIfAbsent(
            first, word -> Lozengy.commandLine(NOWHERE, Solver::solve, word))
        : all;
  }
}
