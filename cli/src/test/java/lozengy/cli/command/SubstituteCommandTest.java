package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.Parsed;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SubstituteCommandTest {

  private static final String LIST =
      """
      code,name,colour,tone,balls,left,ball_g,ball_m,ball_oz,ball_yd
      IVO,Ivory,#efe6cf,,,,50,100,,
      PEA,Pearl,#eae4d6,,1,10 yd,,,1.75,131
      OAT,Oat,#e8dcc0,,,3 m,,,,
      INK,Ink,#1c2238,,2,,50,120,,
      """;

  @TempDir Path folder;
  private String plan;
  private String list;
  private String brief;

  @BeforeEach
  void solve() {
    plan = Briefs.solved(folder);
    brief = folder.resolve("small.yaml").toString();
    list = Briefs.write(folder, "shades.csv", LIST);
  }

  private static Result substitute(String... arguments) {
    List<String> all = new ArrayList<>(List.of("substitute"));
    all.addAll(List.of(arguments));
    all.addAll(List.of("--moves", Briefs.MOVES, "--threads", "1"));
    return Run.of(all.toArray(String[]::new));
  }

  private static Parsed found(String... arguments) {
    List<String> all = new ArrayList<>(List.of(arguments));
    all.add("--json");
    Result result = substitute(all.toArray(String[]::new));
    assertEquals("", result.err());
    return Parsed.of(result);
  }

  private static List<String> codes(Parsed found) {
    List<String> codes = new ArrayList<>();
    for (int i = 0; i < found.size("gone[0].shades"); i++) {
      codes.add(found.at("gone[0].shades[" + i + "].code"));
    }
    return codes;
  }

  private String file(String name, String text) {
    return Briefs.write(folder, name, text);
  }

  @Test
  void theNearestThatHaveEnoughComeFirst() {
    Parsed found = found(plan, "CRE", "--from", list, "--try", "2");
    // OAT is nearer than the brief's own shades and has too little; INK is dark
    assertEquals(List.of("IVO", "PEA", "STR", "BLU", "SKY", "OAT"), codes(found));
    String ivory = "gone[0].shades[0].";
    assertEquals("true", found.at(ivory + "to_buy"));
    assertEquals(1, found.number(ivory + "balls"));
    assertEquals(found.number("gone[0].need_m"), found.number(ivory + "need_m"));
    assertEquals("found", found.at(ivory + "trial.outcome"));
    assertEquals(
        found.number(ivory + "trial.score") - found.number("score_before"),
        found.number(ivory + "trial.change"),
        1e-5);
    // a ball of 131 yd and 10 yd beside it, 5 % of them kept back
    assertEquals(141 * 0.9144 * 0.95, found.number("gone[0].shades[1].to_be_had_m"), 0.001);
    String oat = "gone[0].shades[5].";
    assertEquals("false", found.at(oat + "enough"));
    double missing = found.number(oat + "need_m") - found.number(oat + "to_be_had_m");
    assertEquals(missing / 0.95, found.number(oat + "short_m"), 0.001);
    assertFalse(found.names("gone[0].shades[5]").contains("trial"));
    assertTrue(found.names("gone[0].shades[1]").contains("trial"));
  }

  @Test
  void putUpIsConvertedByLength() {
    // as heavy a ball as Cream's with a quarter of its length: four times as many
    String thick = file("thick.csv", "code,colour,ball_g,ball_m\nTHI,#efe6cf,50,2.5\n");
    Parsed found = found(plan, "CRE", "--from", thick, "--try", "1");
    double need = found.number("gone[0].need_m");
    assertEquals(
        Math.ceil(need / 0.95 / 2.5), found.number("gone[0].shades[0].balls"), need + " m");
  }

  @Test
  void theTakenShadeIsWrittenAndTheWorkGoesOn() {
    assertEquals(0, Run.of("mark", plan, "--made", "r1c1", "--rounds", "squares=1").code());
    String worked = Parsed.of(Briefs.text(plan)).at("pieces[0].rounds[0]");
    String taken = folder.resolve("taken.json").toString();
    Result result = substitute(plan, "--from", list, "--take", worked + "=IVO", "-o", taken);
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("Wrote " + taken), result.out());
    Parsed answer = Parsed.of(Briefs.text(taken));
    assertEquals(worked, answer.at("pieces[0].rounds[0]"), "what is worked stays");
    Result checked = Run.of("check", taken);
    assertEquals(0, checked.code(), checked.out());
    String text = Briefs.text(taken);
    assertTrue(text.contains("\"what\": \"added\", \"code\": \"IVO\""), text);
    assertTrue(text.contains("\"what\": \"gone\", \"code\": \"" + worked + "\""), text);
    // what is gone is in nothing that is still to be worked
    Result again = substitute(taken, worked);
    assertEquals(0, again.code());
    assertTrue(again.out().contains("is in nothing that is still to be worked"), again.out());
    assertEquals(0, Run.of("solve", taken, "--moves", Briefs.MOVES).code());
  }

  @Test
  void whereNoneHasEnoughSeveralAreTried() {
    String scant =
        file(
            "tight.yaml",
            Briefs.text(brief).replaceAll("(code: (?:SKY|STR|BLU).*)balls: 1, ", "$1balls: 0.1, "));
    String tight = folder.resolve("tight.arrangement.json").toString();
    Result solved = Run.of("solve", scant, "--moves", Briefs.MOVES, "--threads", "1");
    assertEquals(0, solved.code(), solved.out());
    String few = file("few.csv", "code;colour;left\nONE;#efe6cf;5 m\nTWO;#eae4d6;7 m\n");
    Parsed found = found(tight, "CRE", "--from", few, "--try", "2");
    assertTrue(found.number("gone[0].need_m") > 7 * 0.95, "not tight");
    assertEquals("ONE", found.at("gone[0].mixture.codes[0]"));
    assertEquals("TWO", found.at("gone[0].mixture.codes[1]"));
    assertEquals("found", found.at("gone[0].mixture.trial.outcome"));
    Result told = substitute(tight, "CRE", "--from", few, "--try", "2");
    assertTrue(told.out().contains("--take CRE=ONE,TWO."), told.out());
    assertTrue(told.out().contains("ONE lacks "), told.out());
    String taken = folder.resolve("both.json").toString();
    assertEquals(0, substitute(tight, "--from", few, "--take", "CRE=ONE,TWO", "-o", taken).code());
    assertEquals(0, Run.of("check", taken).code());
  }

  @Test
  void briefAloneIsSolvedWithEach() {
    Parsed found = found(brief, "CRE", "SKY", "--try", "1");
    assertEquals("false", found.at("planned_again"));
    assertEquals(2, found.size("gone"));
    assertTrue(found.number("score_before") > 0);
    assertFalse(found.names("gone[0].shades[0].trial").contains("pieces"));
    // neither stands in for the other
    assertFalse(codes(found).contains("SKY"));
    String bare = file("bare.yaml", Briefs.text(brief).replaceAll("balls: [0-9.]+, ", ""));
    Parsed plenty = found(bare, "CRE", "--try", "1");
    assertEquals("true", plenty.at("plenty"));
    assertEquals("found", plenty.at("gone[0].shades[0].trial.outcome"));
    assertTrue(substitute(bare, "CRE", "--try", "1").out().contains("plenty"));
  }

  @Test
  void whatIsMarkedAsGoneNeedNotBeNamed() {
    assertEquals(2, substitute(plan).code());
    assertEquals(0, Run.of("mark", plan, "--gone", "CRE").code());
    assertEquals("CRE", found(plan, "--try", "1").at("gone[0].code"));
  }

  @Test
  void whatTheLookSaysOfItIsSaidOfTheNewOne() {
    String changed =
        Briefs.text(brief)
            .replace(
                "prefer:",
                "look:\n  counts: [ { yarn: CRE, at: squares, rounds: 1, at-least: 2 } ]\n"
                    + "  zones: [ { at: corners, rounds: 1, only: [CRE] } ]\nprefer:");
    String looked = file("looked.yaml", changed);
    Result solved = Run.of("solve", looked, "--moves", Briefs.MOVES, "--threads", "1");
    assertEquals(0, solved.code(), solved.err() + solved.out());
    String answer = folder.resolve("looked.arrangement.json").toString();
    String taken = folder.resolve("taken.json").toString();
    Result result = substitute(answer, "--take", "CRE=BLU", "-o", taken);
    assertEquals(0, result.code(), result.out() + result.err());
    Parsed now = Parsed.of(Briefs.text(taken));
    assertEquals("BLU", now.at("brief.look.counts[0].yarn"));
    for (int i = 0; i < now.size("pieces"); i++) {
      if (now.at("pieces[" + i + "].kind").equals("corner")) {
        assertEquals("BLU", now.at("pieces[" + i + "].rounds[0]"));
      }
    }
    assertEquals(0, Run.of("check", taken).code());
  }

  @Test
  void longListIsTriedInPart() {
    StringBuilder rows = new StringBuilder("code,colour\n");
    for (int i = 0; i < 200; i++) {
      rows.append(String.format("L%d,#%02x%02xd0%n", i, 200 + i % 50, 180 + i / 4));
    }
    Result told = substitute(plan, "CRE", "--from", file("long.csv", rows.toString()));
    assertEquals(0, told.code(), told.err());
    assertTrue(told.out().contains("198 more shades of this tone were not tried"), told.out());
    String csv =
        substitute(plan, "CRE", "--from", folder.resolve("long.csv").toString(), "--csv").out();
    assertEquals(204, csv.split("\r\n").length);
    assertEquals(198, csv.split(",untried,", -1).length - 1);
  }

  @Test
  void narrowTerminalGetsShortLines() {
    Result told =
        new Run().withColumns(40).run("substitute", plan, "CRE", "--from", list, "--try", "1");
    assertEquals(0, told.code(), told.err());
    told.out().lines().forEach(line -> assertTrue(line.length() < 40, line));
    assertTrue(told.out().contains("Ivory (IVO)"), told.out());
  }

  @Test
  void noShadeOfTheToneIsSaid() {
    String changed =
        Briefs.text(brief)
            .replaceAll("(code: (?:BRO|FOR|PLU).*\"),", "$1, tone: mid,")
            .replaceAll("tone: dark, +", "");
    Result told = substitute(file("one.yaml", changed), "NAV");
    assertEquals(4, told.code(), told.out());
    assertTrue(told.out().contains("No other shade is dark."), told.out());
  }

  @Test
  void wrongListsAndCallsAreRefused() {
    refused("No shade is listed", "code,colour\n");
    refused("line 1, colour: There is no such column. Add it", "code,name\nA,B\n");
    refused("Maybe \"color\" is meant", "code,color\nA,#ffffff\n");
    refused(
        "line 2, ball_m: The put-up has a weight and no length",
        "code,colour,ball_g\nA,#ffffff,50\n");
    refused("line 2, ball: The yarn has balls but no put-up", "code,colour,balls\nA,#ffffff,2\n");
    refused("line 3, code: A stands in line 2 already", "code,colour\nA,#ffffff\nA,#fffffe\n");
    refused("line 2, code: CRE is another shade in the brief", "code,colour\nCRE,#ffffff\n");
    refused("line 3, code: a stands in line 2 already", "code,colour\nA,#ffffff\na,#fffffe\n");
    refused("line 2, code: CRE is another shade in the brief", "code,colour\ncre,#ffffff\n");
    refused(
        "line 2, ball: A ball of 1 g with 9000 m has 9000 m to the gram",
        "code,colour,ball_g,ball_m\nA,#ffffff,1,9000\n");
    refused("line 2, colour: \"white\" is not a colour", "code,colour\nA,white\n");
    refused("line 2, left: \"20\" has no unit", "code,colour,left\nA,#ffffff,20\n");
    refused("There are two such columns", "code,colour,colour\nA,#ffffff,#fff000\n");
    assertTrue(substitute(plan, "CRA").err().contains("Maybe CRE is meant"));
    assertTrue(substitute(plan, "--take", "CRE=BLUE").err().contains("Maybe BLU is meant"));
    assertEquals(2, substitute(plan, "CRE", "--take", "CRE=CRE").code());
    assertEquals(2, substitute(plan, "SKY", "--take", "CRE=BLU").code());
    assertEquals(2, substitute(plan, "CRE", "--try", "0").code());
    assertEquals(2, substitute(plan, "CRE", "--csv", "--json").code());
    assertEquals(2, substitute(plan, "CRE", "-o", "x.json").code());
    assertEquals(2, substitute("-", "CRE", "--from", "-").code());
  }

  private void refused(String told, String rows) {
    Result result = substitute(plan, "CRE", "--from", file("wrong.csv", rows));
    assertEquals(2, result.code(), result.out());
    assertTrue(result.err().contains(told), result.err());
  }

  @Test
  void tableOfYarnsFromAReportIsAList() throws Exception {
    String tables = folder.resolve("tables").toString();
    assertEquals(0, Run.of("report", plan, "--as", "tables", "-o", tables).code());
    String other =
        Files.readString(Path.of(tables, "yarns.csv"), StandardCharsets.UTF_8)
            .replace("CRE,Cream,#f0e8d2", "OLD,Old cream,#f0e8d3");
    Parsed found = found(plan, "CRE", "--from", file("other.csv", other), "--try", "1");
    assertEquals("OLD", found.at("gone[0].shades[0].code"));
    assertEquals(120 * 0.95, found.number("gone[0].shades[0].to_be_had_m"), 0.001);
  }
}
