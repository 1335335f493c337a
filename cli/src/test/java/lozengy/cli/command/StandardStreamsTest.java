package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import lozengy.cli.Briefs;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each standard stream serves one thing at a time; who asks for more is told. */
class StandardStreamsTest {

  @TempDir private Path folder;

  @Test
  void standardOutputTakesChartsOrJson() {
    String file = Briefs.solved(folder);

    refused("Standard output cannot take both", Run.of("compare", file, "--charts", "-", "--json"));
  }

  @Test
  void standardOutputTakesAnArrangementOrJson() {
    String file = Briefs.write(folder);

    refused("Standard output cannot take both", Run.of("explain", file, "-o", "-", "--json"));
  }

  @Test
  void standardInputHoldsOneFile() {
    byte[] answer = Briefs.text(Briefs.solved(folder)).getBytes(StandardCharsets.UTF_8);
    String file = folder.resolve("small.yaml").toString();
    byte[] brief = Briefs.text(file).getBytes(StandardCharsets.UTF_8);
    String both = "--pile: Standard input cannot be both";

    refused(both, new Run().input(brief).run("solve", "-", "--pile", "-"));
    refused(both, new Run().input(brief).run("explain", "-", "--pile", "-"));
    refused("Standard input holds one", new Run().input(answer).run("compare", "-", "-"));
  }

  private static void refused(String words, Result result) {
    // with --json, mistakes are told as JSON on standard output, and nothing else is there
    String told = result.out() + result.err();
    assertEquals(2, result.code(), told);
    assertTrue(told.contains(words), told);
    assertTrue(result.out().isEmpty() || result.out().contains("lozengy-error/1"), told);
  }
}
