package lozengy.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * What is ticked is kept, can be undone, and comes into the file; the work is walked to its end.
 */
class KeptTest {

  private static final String FILE = "small.arrangement.json";

  @TempDir static Path folder;
  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void solve() throws Exception {
    Program.done(folder, "new", "--across", "2", "--down", "2", "-o", "small.yaml");
    Program.done(folder, "solve", "small.yaml", "--moves", "2000");
    Program.done(folder, "report", FILE, "--as", "html");
    page = folder.resolve("small.html");
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

  private static String viewBox() {
    return browser.element("#chart").getDomAttribute("viewBox");
  }

  private static List<Boolean> boxes() {
    return browser.elements("#make .tick").stream().map(WebElement::isSelected).toList();
  }

  @Test
  void ticksZoomAndPlaceSurviveAReloadAndCanBeUndoneAfterIt() {
    browser.element("#make .tick").click();
    browser.piece("r2c1").click();
    browser.element("[data-pick=joined]").click();
    browser.element("#larger").click();
    browser.element("#work-order [value=strip]").click();
    browser.element("#work-skip").click();
    String told = browser.text("#progress-told");
    String head = browser.text("#work-head");
    List<Boolean> boxes = boxes();
    assertTrue(told.startsWith("1 of 13 made"), told);
    assertTrue(boxes.get(0));
    // What is looked at is kept a moment after it comes to rest.
    for (int wait = 0; wait < 100 && !kept().contains("\"eye\":[1.5"); wait++) {
      sleep();
    }
    String viewBox = viewBox();

    browser.reload();

    assertEquals(told, browser.text("#progress-told"));
    assertEquals(boxes, boxes());
    assertEquals(viewBox, viewBox());
    assertEquals("r2c1", browser.text("#card-head"));
    assertEquals("true", browser.element("[data-pick=joined]").getDomAttribute("aria-pressed"));
    assertEquals(head, browser.text("#work-head"));
    browser.element(".undo").click();
    assertTrue(browser.text("#progress-told").startsWith("0 of 13 made"));
    assertTrue(boxes().get(0), "one undo takes one act back");
    browser.element(".undo").click();
    assertFalse(boxes().get(0));
    assertFalse(browser.element(".undo").isEnabled());
  }

  private static String kept() {
    return String.valueOf(browser.script("return JSON.stringify(localStorage)").toString())
        .replace("\\", "");
  }

  private static void sleep() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The line is run in another folder; the page made anew then has nothing left to mark. */
  @Test
  void theLineMarksFromAnyFolderAndWhatIsMarkedIsNoTickAnyMore() throws Exception {
    Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    Path own = Files.createDirectories(folder.resolve("own"));
    Files.copy(folder.resolve(FILE), own.resolve(FILE));
    Program.done(own, "report", FILE, "--as", "html");
    Path copy = own.resolve("small.html");
    browser.openFresh(copy, 1280, 900, false);
    browser.piece("r1c1").click();
    browser.element("[data-pick=made]").click();
    String line = browser.element("#line").getDomProperty("value");
    List<String> words = new ArrayList<>(List.of(line.split(" ")));
    assertEquals("./lozengy", words.remove(0));
    Program.done(elsewhere, words.toArray(String[]::new));
    Program.done(own, "report", FILE, "--as", "html", "--overwrite");
    browser.open(copy, 1280, 900, false);
    assertTrue(browser.text("#progress-told").startsWith("1 of 13 made"));
    assertEquals("", browser.element("#line").getDomProperty("value"));
    assertEquals(0, browser.elements("#picked g").size());
  }

  @Test
  void anotherPlanOfTheBlanketTellsWhatWasTickedOnTheFirst() throws Exception {
    browser.piece("r1c1").click();
    browser.element("[data-pick=made]").click();
    String line = browser.element("#line").getDomProperty("value");
    Program.done(
        folder, "solve", "small.yaml", "--moves", "2000", "--seed", "7", "-o", "other.json");
    Program.done(folder, "report", "other.json", "--as", "html", "--overwrite");
    browser.open(folder.resolve("other.html"), 1280, 900, false);
    assertTrue(browser.text("#progress-told").startsWith("0 of 13 made"), "they are not its own");
    assertEquals(line, browser.element("#others textarea").getDomProperty("value"));
    browser.open(page, 1280, 900, false);
    assertTrue(browser.text("#progress-told").startsWith("1 of 13 made"), "nothing is lost");
  }

  @Test
  void ticksGoToAnotherDeviceByAFile() throws Exception {
    browser.element("#strips .tick").click();
    browser.element("#export").click();
    Path saved = folder.resolve("ticks.json");
    for (int wait = 0; wait < 100 && !Files.exists(saved); wait++) {
      sleep();
    }
    String told = browser.text("#progress-told");
    browser.openFresh(page, 1280, 900, false);
    assertNotEquals(told, browser.text("#progress-told"));
    browser.element("#import").sendKeys(saved.toString());
    for (int wait = 0; wait < 100 && !told.equals(browser.text("#progress-told")); wait++) {
      sleep();
    }
    assertEquals(told, browser.text("#progress-told"));
    Files.writeString(saved, Files.readString(saved).replace("\"plan\": \"", "\"plan\": \"x"));
    browser.element("#import").sendKeys(saved.toString());
    for (int wait = 0; wait < 100 && !browser.text("#picks-told").contains("another"); wait++) {
      sleep();
    }
    assertTrue(browser.text("#picks-told").contains("another plan"));
    Files.delete(saved);
  }

  /** Yarn by yarn as the make list has it, with one thumb, to the edging. */
  @Test
  void theWholeMakeListIsWalkedByTouch() throws Exception {
    browser.openFresh(page, 360, 740, false);
    List<String> listed =
        browser.elements("#make .work > li .yarn span").stream().map(WebElement::getText).toList();
    browser.script("document.querySelector('#work').scrollIntoView()");
    browser.tap(browser.element("#work-large"));
    List<String> walked = walk(() -> browser.tap(browser.element("#work-done")));
    assertEquals(listed, walked.subList(0, listed.size()).stream().map(KeptTest::name).toList());
    ends();
  }

  /** The name without the code, which stands behind it. */
  private static String name(String head) {
    return head.replaceAll("[\\s]+[A-Z0-9]+$", "");
  }

  @ParameterizedTest
  @ValueSource(strings = {"ball", "strip", "round"})
  void everyOrderIsWalkedByKeyboard(String order) throws Exception {
    browser.element("#work-order [value=" + order + "]").click();
    browser.element("#work-done").sendKeys("");
    List<String> walked = walk(() -> browser.actions().sendKeys(Keys.ENTER).perform());
    assertEquals(walked.size(), (int) Integer.valueOf(count()), walked.toString());
    browser.element("#work-done").sendKeys(Keys.ARROW_LEFT);
    assertEquals(walked.get(walked.size() - 2), browser.text("#work-head"));
    ends();
  }

  private static String count() {
    return browser.text("#work-count").replaceAll("Step \\d+ of (\\d+).*", "$1");
  }

  /** Does every step, and tells what each was headed by. */
  private static List<String> walk(Runnable done) {
    List<String> heads = new ArrayList<>();
    while (!browser.text("#work-count").contains("; 0 to do")) {
      heads.add(browser.text("#work-head").replace("\n", " "));
      assertTrue(heads.size() < 200, "it does not end");
      done.run();
    }
    return heads;
  }

  private static void ends() throws Exception {
    assertTrue(
        browser.text("#progress-told").startsWith("13 of 13 made, 5 of 5 strips joined"),
        browser.text("#progress-told"));
    String line = browser.element("#line").getDomProperty("value");
    assertTrue(line.contains("--joined ") && !line.contains("--made"), line);
    assertTrue(browser.elements("#strips .tick").stream().allMatch(WebElement::isSelected));
  }
}
