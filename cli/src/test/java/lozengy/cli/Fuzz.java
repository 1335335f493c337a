package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
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

  private static Consumer<byte[]> reader;

  private Fuzz() {}

  /** All readers by name. */
  static Map<String, Consumer<byte[]>> readers() {
    Map<String, Consumer<byte[]>> readers = new LinkedHashMap<>(FuzzedReaders.byName());
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
    reader.accept(input);
  }

  /** A word of the call on each line: it is understood, or refused in the program's own words. */
  private static void options(byte[] bytes) {
    String[] words = new String(bytes, StandardCharsets.UTF_8).split("\n", -1);
    Terminal terminal =
        new Terminal(
            new ByteArrayInputStream(new byte[0]),
            OutputStream.nullOutputStream(),
            OutputStream.nullOutputStream(),
            false,
            false,
            () -> () -> false,
            Screen.PLAIN);
    try {
      CommandLine commandLine = Lozengy.commandLine(terminal, Solver::solve, words);
      commandLine.parseArgs(words);
    } catch (ParameterException failure) {
      assertFalse(CallMistakes.refusal(failure).getMessage().isBlank());
    } catch (Refusal refused) {
      assertFalse(refused.mistakes().isEmpty());
    }
  }
}
