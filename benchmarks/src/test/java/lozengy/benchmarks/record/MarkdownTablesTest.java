package lozengy.benchmarks.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class MarkdownTablesTest {

  private static final List<String> WHOLE =
      List.of(
          "brief",
          "pieces",
          "border_yarns",
          "slack_percent",
          "solver",
          "seed",
          "limit_s",
          "event",
          "seconds",
          "valid",
          "score",
          "bound",
          "proof");

  private final List<Map<String, String>> rows = new ArrayList<>();

  private void whole(String solver, int seed, String limit, String event, String... rest) {
    List<String> cells =
        new ArrayList<>(
            List.of("cushion", "25", "3", "10.0", solver, Integer.toString(seed), limit, event));
    cells.addAll(List.of(rest));
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < WHOLE.size(); i++) {
      row.put(WHOLE.get(i), cells.get(i));
    }
    rows.add(row);
  }

  private String tables() {
    return MarkdownTables.of("whole.csv", new Results(Map.of("cores", "2"), rows));
  }

  @Test
  void showsTheMedianOverSeedsAndThePeersBestByEachTime() {
    whole("lozengy", 1, "0.3", "found", "0.3", "yes", "70", "", "");
    whole("lozengy", 1, "0.3", "end", "0.3", "yes", "70", "80", "none");
    whole("lozengy", 2, "0.3", "found", "0.3", "yes", "74", "", "");
    whole("lozengy", 2, "0.3", "end", "0.3", "yes", "74", "82", "none");
    whole("lozengy", 3, "0.3", "end", "0.3", "", "", "", "none");
    whole("cp-sat", 1, "3.0", "found", "0.9", "yes", "60", "", "");
    whole("cp-sat", 1, "3.0", "found", "2.0", "no", "99", "", "");
    whole("cp-sat", 1, "3.0", "found", "2.5", "yes", "65", "", "");
    whole("cp-sat", 1, "3.0", "end", "3.0", "yes", "65", "90", "none");
    String text = tables();
    assertTrue(
        text.contains(
            """
            | score by | pieces | borders | slack | lozengy 0.3 s | worst at 0.3 s | cp-sat 0.3 s | cp-sat 1 s | cp-sat 3 s |
            |---|--:|--:|--:|--:|--:|--:|--:|--:|
            | cushion | 25 | 3 | 10 % | 72.00 (2 of 3) | – | – | 60.00 | 65.00 |
            """),
        text);
    assertTrue(text.contains("| cushion | 0.90 | 0.90 |\n"), text);
    assertTrue(
        text.contains(
            "| cushion | 72.00 (2 of 3) | 81.00 (2 of 3) | none | 65.00 | 90.00 | none |"),
        text);
  }

  /** One brief, on which every target is reached but that the peer has a tighter bound. */
  private void reachingTargets() {
    whole("lozengy-first", 1, "30.0", "found", "0.02", "yes", "50", "", "");
    whole("lozengy-first", 2, "30.0", "found", "0.04", "yes", "52", "", "");
    whole("lozengy", 1, "0.3", "found", "0.3", "yes", "66", "", "");
    whole("lozengy", 1, "0.3", "end", "0.3", "yes", "66", "80", "none");
    whole("lozengy", 2, "0.3", "found", "0.3", "yes", "65.5", "", "");
    whole("lozengy", 2, "0.3", "end", "0.3", "yes", "65.5", "80", "none");
    whole("lozengy", 1, "10.0", "found", "10.0", "yes", "70", "", "");
    whole("lozengy", 1, "10.0", "end", "10.0", "yes", "70", "72", "none");
    whole("lozengy", 2, "10.0", "found", "10.0", "yes", "68", "", "");
    whole("lozengy", 2, "10.0", "end", "10.0", "yes", "68", "72", "none");
    whole("cp-sat", 1, "60.0", "found", "0.9", "yes", "60", "", "");
    whole("cp-sat", 1, "60.0", "found", "50", "yes", "65", "", "");
    whole("cp-sat", 1, "60.0", "end", "60.0", "yes", "65", "71.5", "none");
  }

  @Test
  void saysHowFarTargetsAreReached() {
    reachingTargets();
    String text = tables();
    assertTrue(
        text.contains(
            """
            | target | found | briefs that reach it | missed at |
            |---|--:|--:|--:|
            | first valid arrangement: the last of our seeds no later than CP-SAT's | median 0.030 s, last 0.040 s | 1 of 1 |  |
            | 0.3 s: our worst seed at least CP-SAT's end (60 s) | median difference 0.50, least 0.50 | 1 of 1 |  |
            | 10 s: our median over CP-SAT's end, where it has one (60 s) | median over the set 4.00, least 4.00 | 1 of 1 |  |
            | 10 s: every run ends with a bound, none below its score | bound over score: median of the set 3.00, largest 3.00 points | 1 of 1 |  |
            | no bound of ours below what any solver reached |  | 1 of 1 |  |
            | our bound at most CP-SAT's own, where it has one |  | 0 of 1 | cushion |
            """),
        text);
  }

  @Test
  void saysWhereTargetsAreMissed() {
    reachingTargets();
    // a seed that brings nothing, and a peer's score above our bound
    whole("lozengy", 3, "0.3", "end", "0.3", "", "", "", "none");
    whole("lozengy-first", 3, "30.0", "end", "30.0", "", "", "", "none");
    whole("cp-sat", 2, "60.0", "found", "1.0", "yes", "73", "", "");
    whole("cp-sat", 2, "60.0", "end", "60.0", "yes", "73", "90", "none");
    String text = tables();
    assertTrue(
        text.contains("no later than CP-SAT's | median 0.030 s, last – | 0 of 1 | cushion |"),
        text);
    assertTrue(text.contains("CP-SAT's end (60 s) | – | 0 of 1 | cushion |"), text);
    assertTrue(text.contains("median over the set 0.00, least 0.00 | 1 of 1 |  |"), text);
    assertTrue(
        text.contains("| no bound of ours below what any solver reached |  | 0 of 1 | cushion |"),
        text);
  }

  @Test
  void putsLooksBesideThePlainBrief() {
    List<String> columns =
        List.of("look", "temperature", "free_rounds", "pairs_per_round", "moves_per_s");
    List<Map<String, String>> looks =
        List.of(
            row(columns, "plain", "1.0", "572", "16.00", "8000000"),
            row(columns, "fade", "1.0", "572", "24.00", "4000000"),
            row(columns, "plain", "1.0", "572", "16.00", "8000000"),
            row(columns, "fade", "1.0", "572", "24.00", "6000000"));
    String text = MarkdownTables.of("looks.csv", new Results(Map.of(), looks));
    assertTrue(
        text.contains("| fade | 1.0 | 2 | 572 | 24.00 | 5000000 | 4000000 | 1.60 | 1.50 |\n"),
        text);
  }

  @Test
  void sumsUpSolvesInTheMiddleOfTheWork() {
    List<String> columns =
        List.of(
            "what", "limit_s", "valid", "worked_altered", "rounds_free", "rounds_changed", "score");
    List<Map<String, String>> solves =
        List.of(
            row(columns, "again", "1.5", "yes", "0", "172", "9", "95"),
            row(columns, "again", "1.5", "yes", "0", "172", "15", "96"),
            row(columns, "again", "1.5", "", "", "", "", ""));
    String text = MarkdownTables.of("midwork.csv", new Results(Map.of(), solves));
    assertTrue(
        text.contains("| again | 1.5 | 3 | 2 | 0 | 172 | 9 to 15 | 95.50 (2 of 3) |\n"), text);
  }

  private static Map<String, String> row(List<String> columns, String... cells) {
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      row.put(columns.get(i), cells[i]);
    }
    return row;
  }

  @Test
  void measuresProcessesByTheLeastThatAProgramTakes() {
    List<String> columns = List.of("what", "brief", "limit_s", "seconds", "exit", "valid", "score");
    List<Map<String, String>> cold =
        List.of(
            row(columns, "hello", "", "", "0.1", "0", "", ""),
            row(columns, "version", "", "", "0.3", "0", "", ""),
            row(columns, "solve", "baby", "0.3", "0.7", "0", "yes", "81.5"),
            row(columns, "solve", "baby", "0.3", "0.9", "4", "", ""));
    String text = MarkdownTables.of("cold.csv", new Results(Map.of(), cold));
    assertTrue(text.contains("| version |  |  | 1 | 0.300 | 0.300 | 3.00 |  |\n"), text);
    assertTrue(
        text.contains("| solve | baby | 0.3 | 2 | 0.800 | 0.900 | 8.00 | 81.50 (1 of 2) |\n"),
        text);
  }

  @Test
  void showsEachStageOfGrowthButTheClimbAndWhatTenTimesAsManyPiecesMultiplyItBy() {
    List<String> columns = List.of("brief", "pieces", "stage", "seconds", "score");
    List<Map<String, String>> growth =
        List.of(
            row(columns, "small", "1000", "read", "0.2", ""),
            row(columns, "small", "1000", "read", "0.1", ""),
            row(columns, "small", "1000", "read", "0.6", ""),
            row(columns, "small", "1000", "climb", "0.5", "80"),
            row(columns, "small", "1000", "reached", "1.0", "85"),
            row(columns, "large", "100000", "read", "20", ""),
            row(columns, "large", "100000", "not-reached", "9.0", "70"));
    String text = MarkdownTables.of("growth.csv", new Results(Map.of(), growth));
    // a hundred times the time for a hundred times the pieces is ten times for ten times
    assertTrue(
        text.contains(
            """
            | median s | 1000 pieces | 100000 pieces | tenfold, to 100000 |
            |---|--:|--:|--:|
            | read | 0.200 | 20.000 | 10.0 |
            | reached | 1.000 | – | – |
            | not-reached | – | 9.000 | – |
            | score reached | 85.00 | – |  |
            """),
        text);
  }

  @Test
  void replacesWhatStandsBetweenTheMarks() {
    String document = "# Title\n<!-- tables -->\nold\n<!-- /tables -->\nend\n";
    assertEquals(
        "# Title\n<!-- tables -->\n\nnew\n<!-- /tables -->\nend\n",
        MarkdownTables.replace(document, "new\n"));
  }

  @Test
  void refusesADocumentWithoutMarks() {
    assertThrows(IllegalArgumentException.class, () -> MarkdownTables.replace("text", "new"));
  }

  @Test
  void refusesRowsOfAnotherKind() {
    Results other = new Results(Map.of(), List.of(Map.of("colour", "red")));
    assertThrows(IllegalArgumentException.class, () -> MarkdownTables.of("x.csv", other));
  }

  @Test
  void medianOfAnEvenNumberIsBetweenTheMiddleTwo() {
    assertEquals(2.5, Figures.median(List.of(4.0, 1.0, 2.0, 3.0)));
    assertEquals(2.0, Figures.median(List.of(9.0, 1.0, 2.0)));
  }
}
