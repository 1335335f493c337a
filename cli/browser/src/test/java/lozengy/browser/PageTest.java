package lozengy.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.Pdf;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.print.PageSize;
import org.openqa.selenium.print.PrintOptions;

/** The page of a solved throw, in a real browser. */
class PageTest {

  private static final Path PICTURES = Path.of("target", "pictures");

  @TempDir static Path folder;
  private static Browser browser;
  private static Path page;
  private static JsonNode arrangement;

  @BeforeAll
  static void solve() throws Exception {
    Files.createDirectories(PICTURES);
    Files.copy(Program.example("locked-throw.yaml"), folder.resolve("throw.yaml"));
    Program.done(folder, "solve", "throw.yaml", "--moves", "100000");
    Program.done(folder, "solve", "throw.arrangement.json", "--moves", "50000", "--seed", "9");
    Path file = folder.resolve("throw-2.arrangement.json");
    ObjectMapper json = new ObjectMapper();
    arrangement = json.readTree(file.toFile());
    // As if these pieces had been planned otherwise before.
    for (String name : List.of("r1c3", "right2")) {
      for (JsonNode before : arrangement.get("earlier")) {
        if (before.get("at").asText().equals(name)) {
          ((ArrayNode) before.get("rounds")).set(0, arrangement.get("yarns").get(0).get("code"));
        }
      }
    }
    json.writeValue(file.toFile(), arrangement);
    Program.done(folder, "report", "throw-2.arrangement.json", "--as", "html");
    page = folder.resolve("throw-2.html");
    browser = new Browser(folder);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void open() {
    browser.openFresh(page, 1280, 900, false);
  }

  @AfterEach
  void browserHasNoComplaints() {
    assertEquals(List.of(), browser.complaints());
  }

  private static List<JsonNode> pieces() {
    return list(arrangement.get("pieces"));
  }

  private static List<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  private static JsonNode piece(String name) {
    return pieces().stream().filter(p -> p.get("at").asText().equals(name)).findFirst().get();
  }

  private static List<String> codes(String name) {
    return list(piece(name).get("rounds")).stream().map(JsonNode::asText).toList();
  }

  private static void cardTellsOf(String name) {
    assertEquals(name, browser.text("#card-head"));
    List<String> shown =
        browser.elements("#card-body ol b").stream().map(WebElement::getText).toList();
    assertEquals(codes(name), shown);
    assertTrue(browser.text("#card-body").contains(piece(name).get("state").asText()));
  }

  @Test
  void pointingAtAPieceShowsItsCard() {
    browser.actions().moveToElement(browser.piece("r3c2")).perform();
    cardTellsOf("r3c2");
    assertEquals(4, browser.elements("#card-body .near button").size());
    browser.actions().moveToElement(browser.piece("top2")).perform();
    cardTellsOf("top2");
    assertEquals(2, browser.elements("#card-body .near button").size());
  }

  @Test
  void keysWalkThePiecesAndReachTheCard() {
    browser.element("#legend button:last-child").sendKeys(Keys.TAB);
    cardTellsOf("r1c1");
    browser.actions().sendKeys(Keys.ARROW_RIGHT).perform();
    cardTellsOf("r1c2");
    browser.actions().sendKeys(Keys.ARROW_DOWN, Keys.ARROW_DOWN, Keys.ARROW_LEFT).perform();
    cardTellsOf("r5c1");
    browser.actions().sendKeys(Keys.END).perform();
    cardTellsOf("bottom-left");
    browser.actions().sendKeys(Keys.HOME, Keys.ENTER).perform();
    assertEquals("BUTTON", browser.script("return document.activeElement.tagName"));
    browser.actions().sendKeys(Keys.ESCAPE).perform();
    assertEquals("p0", browser.script("return document.activeElement.id"));
    assertEquals(
        1L, browser.script("return document.querySelectorAll('.piece[tabindex=\"0\"]').length"));
  }

  @Test
  void tappingOnAPhoneShowsTheCardInSight() {
    browser.open(page, 390, 844, false);
    WebElement piece = browser.piece("r5c3");
    browser.script("document.querySelector('#plan').scrollIntoView()");
    browser.tap(piece);
    cardTellsOf("r5c3");
    assertEquals(
        true,
        browser.script(
            "const b = document.querySelector('#card-head').getBoundingClientRect();"
                + "return b.top >= 0 && b.bottom <= innerHeight"));
    assertEquals(true, browser.script("return document.documentElement.scrollWidth <= innerWidth"));
  }

  @Test
  void yarnTableFitsOnAPhoneWithWholeWords() {
    browser.open(page, 360, 740, false);
    assertEquals(
        true,
        browser.script(
            "const t = document.querySelector('#yarns .scroll');"
                + "return t.scrollWidth <= t.clientWidth"));
    // A word on its own stands in one box; broken it would stand in two.
    assertEquals(
        List.of(),
        browser.script(
            "return [...document.querySelectorAll('#yarns .yarn span')].flatMap(s => {"
                + "const t = s.firstChild; const out = [];"
                + "for (const m of t.data.matchAll(/\\S+/g)) { const r = document.createRange();"
                + "r.setStart(t, m.index); r.setEnd(t, m.index + m[0].length);"
                + "if (r.getClientRects().length > 1) out.push(m[0]); } return out; })"));
  }

  /** The rounds in the middle of whose band the veil has a hole, as name and round from 0. */
  private static List<String> litRounds() {
    return ((List<?>)
            browser.script(
                """
                const veil = document.querySelector('#veil');
                const corners = r => r.getAttribute('points').split(' ').map(p => p.split(',').map(Number));
                return [...document.querySelectorAll('.piece')].flatMap(piece => {
                  const rounds = [...piece.querySelectorAll('.r')].reverse().map(corners);
                  return rounds.flatMap((round, k) => {
                    // half way from the corner of the round within, or of the middle, to its own
                    const mean = round.reduce((s, p) => [s[0] + p[0], s[1] + p[1]], [0, 0]).map(n => n / round.length);
                    const within = k ? rounds[k - 1][0] : mean;
                    const point = new DOMPoint((round[0][0] + within[0]) / 2, (round[0][1] + within[1]) / 2);
                    return veil.isPointInFill(point) ? [] : [piece.getAttribute('aria-label').split(',')[0] + ' ' + k];
                  });
                });"""))
        .stream().map(String::valueOf).toList();
  }

  private static List<String> lit() {
    return litRounds().stream().map(each -> each.split(" ")[0]).distinct().sorted().toList();
  }

  @Test
  void oneYarnIsHighlighted() {
    JsonNode yarn = arrangement.get("yarns").get(3);
    String code = yarn.get("code").asText();
    browser.select("show", "yarn-3");
    long rounds =
        pieces().stream()
            .flatMap(p -> codes(p.get("at").asText()).stream())
            .filter(code::equals)
            .count();
    List<String> expected =
        pieces().stream()
            .map(p -> p.get("at").asText())
            .filter(at -> codes(at).contains(code))
            .sorted()
            .toList();
    assertEquals(expected, lit());
    assertEquals(rounds, litRounds().size());
    assertEquals(
        code
            + " "
            + yarn.get("name").asText()
            + ": "
            + rounds
            + " rounds in "
            + expected.size()
            + " pieces.",
        browser.text("#told"));
    assertTrue(browser.element("#veil").isDisplayed());
    assertEquals("true", browser.element("#legend [value=yarn-3]").getDomAttribute("aria-pressed"));
    browser.element("#legend [value=yarn-3]").click();
    assertFalse(browser.element("#veil").isDisplayed());
  }

  @Test
  void stripsWorkLeftWeakSpotsAndChangesAreHighlighted() {
    browser.select("show", "strip-1");
    assertEquals(List.of("top-left"), lit());
    browser.select("show", "left");
    assertEquals(
        pieces().stream()
            .filter(p -> p.get("state").asText().equals("planned"))
            .map(p -> p.get("at").asText())
            .sorted()
            .toList(),
        lit());
    browser.select("show", "weak");
    assertFalse(lit().isEmpty());
    browser.element("#score summary").click();
    WebElement see = browser.element("#score .see");
    String spot = see.findElement(By.xpath("..")).getText();
    see.click();
    assertFalse(lit().isEmpty());
    lit().forEach(name -> assertTrue(spot.contains(name), spot));
    browser.select("show", "changed");
    List<String> changed = new ArrayList<>();
    for (JsonNode before : arrangement.get("earlier")) {
      JsonNode now = piece(before.get("at").asText());
      if (!before.get("rounds").equals(now.get("rounds"))) {
        changed.add(before.get("at").asText());
      }
    }
    changed.sort(null);
    assertTrue(changed.containsAll(List.of("r1c3", "right2")), "these were planned otherwise");
    assertEquals(changed, lit());
    assertEquals(changed.size(), browser.elements("#changes li").size(), "the list says the same");
  }

  @Test
  void picksBecomeALineAndAFile() throws Exception {
    List<String> planned =
        pieces().stream()
            .filter(p -> p.get("state").asText().equals("planned"))
            .map(p -> p.get("at").asText())
            .limit(3)
            .toList();
    browser.select("mode", "lock");
    browser.piece(planned.get(0)).click();
    browser.piece(planned.get(1)).click();
    browser.piece(planned.get(1)).click();
    browser.select("mode", "look");
    browser.piece(planned.get(2)).click();
    browser.element("[data-pick=made]").click();
    String line = "";
    for (int wait = 0; wait < 100 && line.isEmpty(); wait++) {
      Thread.sleep(50);
      line = browser.element("#line").getDomProperty("value");
    }
    // The page lies beside the file, and names it so that any folder will do.
    String file = folder.toRealPath().resolve("throw-2.arrangement.json").toString();
    assertEquals(
        "./lozengy mark "
            + file
            + " --made "
            + planned.get(2)
            + "\n./lozengy solve "
            + file
            + " --lock "
            + planned.get(0),
        line);
    assertEquals("true", browser.piece(planned.get(0)).getDomAttribute("aria-selected"));
    assertEquals("false", browser.piece(planned.get(1)).getDomAttribute("aria-selected"));
    assertEquals(2, browser.elements("#picked g").size());
    browser.element("#save").click();
    Path saved = folder.resolve("picks.txt");
    for (int wait = 0; wait < 100 && !Files.exists(saved); wait++) {
      Thread.sleep(50);
    }
    assertEquals(line + "\n", Files.readString(saved));
    Files.delete(saved);
    takeBack(line.replace(file, "throw-2.arrangement.json"), planned.get(0), planned.get(2));
    browser.element("#drop").click();
    assertFalse(browser.element("#picks-out").isDisplayed());
    assertTrue(browser.text("#picks-told").contains("taken back"), browser.text("#picks-told"));
    assertEquals(0, browser.elements("#picked g").size());
    browser.element("#picks-undo").click();
    assertEquals(2, browser.elements("#picked g").size(), "nothing is lost");
  }

  /** Runs the lines as the terminal would, on a copy. */
  private static void takeBack(String lines, String locked, String made) throws Exception {
    Path elsewhere = Files.createDirectories(folder.resolve("taken-back"));
    Path file = elsewhere.resolve("throw-2.arrangement.json");
    Files.copy(folder.resolve("throw-2.arrangement.json"), file);
    for (String command : lines.split("\n")) {
      List<String> words = new ArrayList<>(List.of(command.split(" ")));
      assertEquals("./lozengy", words.remove(0));
      if (words.get(0).equals("solve")) {
        words.addAll(List.of("--moves", "20000"));
      }
      Program.done(elsewhere, words.toArray(String[]::new));
    }
    JsonNode solved =
        new ObjectMapper().readTree(elsewhere.resolve("throw-3.arrangement.json").toFile());
    for (JsonNode piece : solved.get("pieces")) {
      String at = piece.get("at").asText();
      if (at.equals(made)) {
        assertEquals("made", piece.get("state").asText());
      }
      if (at.equals(made) || at.equals(locked)) {
        assertEquals(piece(at).get("rounds"), piece.get("rounds"), at);
      }
    }
    assertTrue(solved.at("/brief/pieces").toString().contains("\"" + locked + "\""));
  }

  @Test
  void whatDoesNotFitAPieceIsNotPicked() {
    String made =
        pieces().stream()
            .filter(p -> p.get("state").asText().equals("made"))
            .map(p -> p.get("at").asText())
            .findFirst()
            .get();
    browser.select("mode", "lock");
    browser.piece(made).click();
    assertTrue(browser.text("#told").contains(made + " is made"), browser.text("#told"));
    assertEquals("false", browser.piece(made).getDomAttribute("aria-selected"));
  }

  @ParameterizedTest
  @CsvSource({"a4, 21, 29.7", "letter, 21.59, 27.94"})
  void printsWithALetterOnEveryRound(String name, double width, double height) throws Exception {
    PrintOptions options = new PrintOptions();
    options.setPageSize(new PageSize(height, width));
    options.setBackground(false);
    Pdf pdf = browser.driver().print(options);
    byte[] bytes = Base64.getDecoder().decode(pdf.getContent());
    Files.write(PICTURES.resolve("print-" + name + ".pdf"), bytes);
    String start = new String(Arrays.copyOf(bytes, 5), StandardCharsets.US_ASCII);
    assertEquals("%PDF-", start);
    long rounds = pieces().stream().mapToLong(p -> p.get("rounds").size()).sum();
    assertEquals(rounds, (long) browser.elements("#letters text").size());
    browser.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
    assertEquals("inline", browser.element("#letters").getCssValue("display"));
    assertFalse(browser.element("#picks").isDisplayed());
  }

  @ParameterizedTest
  @CsvSource({
    "1280, 900, false",
    "1280, 900, true",
    "768, 1024, false",
    "390, 844, false",
    "390, 844, true"
  })
  void accessibilityCheckFindsNothing(int width, int height, boolean dark) throws Exception {
    browser.open(page, width, height, dark);
    String name =
        (width < 600 ? "phone" : width < 1000 ? "tablet" : "desk") + (dark ? "-dark" : "-light");
    browser.picture(PICTURES.resolve(name + "-first.png"));
    assertEquals(List.of(), browser.findings());
    browser.script("document.querySelector('#p4').focus()");
    browser.element("[data-pick]").click();
    browser.select("show", "yarn-2");
    browser.picture(PICTURES.resolve(name + "-yarn.png"));
    assertEquals(List.of(), browser.findings());
    browser.script("document.querySelectorAll('details').forEach(d => d.open = true)");
    assertEquals(List.of(), browser.findings());
    browser.element("#whole").click();
    browser.picture(PICTURES.resolve(name + "-whole.png"));
    assertEquals(List.of(), browser.findings());
    browser.element("#whole").click();
    browser.element("#work-large").click();
    browser.picture(PICTURES.resolve(name + "-work.png"));
    assertEquals(List.of(), browser.findings());
    browser.element("#work-order [value=strip]").click();
    assertEquals(List.of(), browser.findings());
  }
}
