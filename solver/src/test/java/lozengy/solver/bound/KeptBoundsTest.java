package lozengy.solver.bound;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import lozengy.model.blanket.Blanket;
import lozengy.solver.JoinedInBorders;
import lozengy.solver.RandomBriefs;
import org.junit.jupiter.api.Test;

/**
 * Bounds of small random blankets as they were, for what no reckoning by hand tells: a change that
 * proves less, or searches otherwise, shows here. {@code -Dlozengy.told=write} writes them anew:
 * see then that none has become worse without a reason.
 */
class KeptBoundsTest {

  private static final Path KEPT = Path.of("src/test/resources/lozengy/solver/bound");

  @Test
  void aLittleEffortProvesWhatItProved() throws IOException {
    hold("little-effort.txt", List.of("3 1", "12 1", "20 1", "28 1", "31 1", "32 0", "34 0"));
  }

  @Test
  void moreEffortProvesWhatItProved() throws IOException {
    hold("more-effort.txt", List.of("11 3", "15 2", "30 2", "34 2", "10 2"));
  }

  /** Each brief is told by its seed and the stages. */
  private static void hold(String file, List<String> briefs) throws IOException {
    StringBuilder lines = new StringBuilder();
    for (String brief : briefs) {
      String[] words = brief.split(" ");
      long seed = Long.parseLong(words[0]);
      Blanket free = Blanket.ofUnjudged(RandomBriefs.of(seed, 3, 5));
      Blanket joined = JoinedInBorders.of(free, seed);
      BoundLimits limits = new BoundLimits(Integer.parseInt(words[1]));
      lines.append(
          String.format(
              Locale.ROOT,
              "seed %d, stages %d: %.6f, joined in the borders' yarns %.6f\n",
              seed,
              limits.stages(),
              Bounds.of(free, limits, () -> false).total(),
              Bounds.of(joined, BoundLimits.QUICK, () -> false).total()));
    }
    Path kept = KEPT.resolve(file);
    if ("write".equals(System.getProperty("lozengy.told"))) {
      Files.createDirectories(KEPT);
      Files.writeString(kept, lines);
    }
    assertEquals(Files.readString(kept), lines.toString());
  }
}
