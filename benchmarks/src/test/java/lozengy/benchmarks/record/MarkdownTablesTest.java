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
            | score by | pieces | borders | slack | lozengy 0.3 s | cp-sat 0.3 s | cp-sat 1 s | cp-sat 3 s |
            |---|--:|--:|--:|--:|--:|--:|--:|
            | cushion | 25 | 3 | 10 % | 72.00 (2 of 3) | – | 60.00 | 65.00 |
            """),
        text);
    assertTrue(text.contains("| cushion | 0.90 | 0.90 |\n"), text);
    assertTrue(
        text.contains(
            "| cushion | 72.00 (2 of 3) | 81.00 (2 of 3) | none | 65.00 | 90.00 | none |"),
        text);
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
  void showsEachStageOfGrowthButTheClimb() {
    List<String> columns = List.of("brief", "pieces", "stage", "seconds", "score");
    List<Map<String, String>> growth =
        List.of(
            row(columns, "small", "1000", "read", "0.2", ""),
            row(columns, "small", "1000", "climb", "0.5", "80"),
            row(columns, "small", "1000", "reached", "1.0", "85"),
            row(columns, "large", "10000", "read", "0.4", ""),
            row(columns, "large", "10000", "not-reached", "9.0", "70"));
    String text = MarkdownTables.of("growth.csv", new Results(Map.of(), growth));
    assertTrue(
        text.contains(
            """
            | median s | pieces | read | reached | not-reached | score reached |
            |---|--:|--:|--:|--:|--:|
            | small | 1000 | 0.200 | 1.000 | – | 85.00 |
            | large | 10000 | 0.400 | – | 9.000 | – |
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
