package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import lozengy.cli.Run;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Explains briefs that cannot be done, each for a reason of its own. They are invented. */
class InfeasibleBriefsTest {

  private static final Path FOLDER = Path.of("src/test/resources/lozengy/cli/infeasible");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "all-look-alike",
        "banned-to-nothing",
        "by-weight",
        "darks-short",
        "few-sequences",
        "hemmed-in",
        "joining-takes-all",
        "keep-back-all",
        "keep-back-too-much",
        "lock-against-ban",
        "lock-against-tone",
        "locked-look-alikes",
        "locked-neighbours",
        "long-round",
        "made-neighbours",
        "many-locks",
        "no-lights",
        "one-dark-too-much",
        "shell-edging",
        "two-troubles",
        "whole-rounds",
        "within-piece"
      })
  void isExplainedWithTheLinesThatCannotHold(String name) {
    Run.Result result = Run.of("explain", FOLDER.resolve(name + ".yaml").toString());

    assertEquals(3, result.code(), result.err());
    assertTrue(result.out().contains("no arrangement fits. That is proved."), result.out());
    assertTrue(result.out().contains("line "), "names lines: " + result.out());
  }
}
