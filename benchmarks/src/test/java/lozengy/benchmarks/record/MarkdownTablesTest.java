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
