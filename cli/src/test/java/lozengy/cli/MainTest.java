package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.reflect.AnnotatedElement;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import lozengy.cli.Run.Result;
import lozengy.cli.command.Lozengy;
import lozengy.cli.process.Terminal;
import lozengy.solver.Solver;
import lozengy.solver.TooLargeException;
import lozengy.solver.Version;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class MainTest {

  @TempDir Path folder;

  @Test
  void versionIsTheBuilds() {
    Result result = Run.of("--version");
    assertEquals(0, result.code());
    assertEquals("lozengy " + Version.text() + "\n", result.out());
  }

  @Test
  void withoutCommandTheHelpIsAMistake() {
    Result result = Run.of();
    assertEquals(2, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().contains("Commands:"), result.err());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "new",
        "solve",
        "gallery",
        "next",
        "mark",
        "check",
        "compare",
        "report",
        "need",
        "pack",
        "substitute",
        "explain",
        "batch"
      })
  void everyCommandIsListedAndHasHelpWithAnExample(String command) {
    assertTrue(Run.of("--help").out().contains("  " + command + " "));
    Result help = Run.of(command, "--help");
    assertEquals(0, help.code());
    assertEquals("", help.err());
    assertTrue(help.out().contains("Example"), help.out());
    assertTrue(help.out().startsWith("Usage: lozengy " + command + " "), help.out());
    help.out().lines().forEach(line -> assertTrue(line.length() <= 92, line));
    assertFalse(help.out().contains("\u001b"), "colour codes");
  }

  /** Where one is no format, picocli prints a warning to Java's own standard error. */
  @Test
  void everyDescriptionOfAnOptionIsAFormat() {
    Terminal terminal =
        new Terminal(
            InputStream.nullInputStream(),
            OutputStream.nullOutputStream(),
            OutputStream.nullOutputStream(),
            false,
            false,
            () -> () -> false);
    Map<String, CommandLine> commands =
        Lozengy.commandLine(terminal, Solver::solve, "--help").getSubcommands();
    assertTrue(commands.size() > 12, commands.keySet().toString());
    int looked = 0;
    for (CommandLine command : commands.values()) {
      for (CommandLine.Model.OptionSpec option : command.getCommandSpec().options()) {
        // the specification's own is formatted already
        if (option.userObject() instanceof AnnotatedElement annotated) {
          for (String line : annotated.getAnnotation(CommandLine.Option.class).description()) {
            assertDoesNotThrow(() -> String.format(line), option.longestName());
            looked++;
          }
        }
      }
    }
    assertTrue(looked > 100, looked + " descriptions");
  }

  @Test
  void nearestCommandIsNamed() {
    Result result = Run.of("slove");
    assertEquals(2, result.code());
    assertEquals(
        "lozengy: There is no command 'slove'. Perhaps 'solve' is meant. See 'lozengy --help'\n",
        result.err());
  }

  @Test
  void unknownOptionIsToldRatherThanWhatIsMissingBecauseOfIt() {
    Result result = Run.of("check", "--fast");
    assertEquals(2, result.code());
    assertEquals(
        "lozengy: There is no option '--fast'. See 'lozengy check --help'\n", result.err());
  }

  @Test
  void aWordThatBeginsWithAnAtSignIsNoFileOfWords() {
    Result result = Run.of("check", "@" + folder);
    assertEquals(2, result.code(), result.err());
    assertTrue(result.err().contains("@" + folder + ": There is no such file"), result.err());
  }

  @Test
  void mistakenCallIsToldAsJsonToo() {
    Result result = Run.of("check", "--json");
    assertEquals(2, result.code());
    assertEquals("lozengy: FILE is missing. See 'lozengy check --help'\n", result.err());
    assertEquals("FILE is missing", Parsed.of(result).at("error.mistakes[0].found"));
  }

  @Test
  void faultOfTheProgramIsOneLine() {
    String brief = Briefs.write(folder);
    Run run =
        new Run()
            .solving(
                (blanket, earlier, options) -> {
                  throw new IllegalStateException("a test's fault");
                });
    Result result = run.run("solve", brief);
    assertEquals(1, result.code());
    assertEquals(1, result.err().lines().count(), result.err());
    assertTrue(result.err().contains("a test's fault"), result.err());
    assertTrue(result.err().contains("report"), result.err());
    assertTrue(run.withDebug().run("solve", brief).err().contains("\tat lozengy."));
  }

  @Test
  void lackOfMemoryIsToldWithARemedy() {
    Result result =
        new Run()
            .solving(
                (blanket, earlier, options) -> {
                  throw new OutOfMemoryError("a test's fault");
                })
            .run("solve", Briefs.write(folder));
    assertEquals(1, result.code());
    assertTrue(result.err().startsWith("lozengy: The memory does not suffice."), result.err());
  }

  @Test
  void aBlanketThatMemoryCannotHoldIsRefusedBeforehand() {
    Result result =
        new Run()
            .solving(
                (blanket, earlier, options) -> {
                  TooLargeException.requireRoom(blanket, 2, 1000);
                  throw new AssertionError("there is no room");
                })
            .run("solve", Briefs.write(folder));
    assertEquals(2, result.code());
    assertTrue(result.err().contains("of memory to be planned"), result.err());
    assertTrue(result.err().contains("JDK_JAVA_OPTIONS=-Xmx1g"), result.err());
  }

  @Test
  void readerThatLeavesIsNoFailure() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    assertEquals(0, new Run().run(failing("Broken pipe"), err, "new"));
    assertEquals("", err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void fullDiskIsToldOnce() {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    assertEquals(2, new Run().run(failing("No space left on device"), err, "new"));
    assertEquals(
        "lozengy: standard output: It cannot be written: No space left on device. Make room, or"
            + " name a file with -o\n",
        err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void messagesCannotSteerTheTerminal() {
    Result result = Run.of("check", "no\u001b[31msuch\nfile");
    assertEquals(2, result.code());
    assertAll(
        List.of(
            () -> assertFalse(result.err().contains("\u001b")),
            () -> assertEquals(1, result.err().lines().count())));
  }

  private static OutputStream failing(String why) {
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        throw new IOException(why);
      }
    };
  }
}
