package lozengy.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.WheelInput;

/** The blanket is seen larger and smaller, and nothing lies over anything else meanwhile. */
class ZoomTest {

  @TempDir static Path folder;
  private static Browser browser;
  private static Path page;

  @BeforeAll
  static void report() throws Exception {
    Files.copy(Program.example("tour/saltmarsh-throw.arrangement.json"), folder.resolve("t.json"));
    Files.createDirectories(Path.of("target", "pictures"));
    Program.done(folder, "mark", "t.json", "--made", "strip1..strip2", "--gone", "THR");
    Program.done(folder, "solve", "t.json", "--moves", "20000", "-o", "t2.json");
    Program.done(folder, "report", "t2.json", "--as", "html", "-o", "t.html");
    page = folder.resolve("t.html");
    browser = new Browser(folder);
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  @AfterEach
  void browserHasNoComplaints() {
    assertEquals(List.of(), browser.complaints());
  }

  /** Left, top, width and height of what is seen of the chart, in its units. */
  private static double[] seen() {
    return Arrays.stream(browser.element("#chart").getDomAttribute("viewBox").split(" "))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  private static void holdsMiddleOf(String piece) {
    Object off =
        browser.script(
            "const a = document.querySelector(\".piece[aria-label^='"
                + piece
                + ",']\").getBoundingClientRect(), b ="
                + " document.querySelector('#view').getBoundingClientRect();"
                + "return Math.hypot(a.left + a.width / 2 - b.left - b.width / 2,"
                + " a.top + a.height / 2 - b.top - b.height / 2)");
    assertTrue(((Number) off).doubleValue() < 3, piece + " is " + off + " px off the middle");
  }

  @Test
  void buttonsAndKeysZoomAroundTheChosenPieceAndBack() {
    browser.openFresh(page, 1440, 900, false);
    double[] whole = seen();
    Object wide = browser.script("return document.documentElement.scrollWidth");
    browser.piece("r8c3").click();
    browser.element("#larger").click();
    browser.element("#larger").click();
    holdsMiddleOf("r8c3");
    assertEquals(whole[2] / 2.25, seen()[2], 0.01);
    assertEquals(wide, browser.script("return document.documentElement.scrollWidth"));
    browser.element("#reset").click();
    assertEquals(Arrays.toString(whole), Arrays.toString(seen()));
    browser.script("document.querySelector('.piece[tabindex=\"0\"]').focus()");
    browser.actions().sendKeys("++").perform();
    holdsMiddleOf("r8c3");
    browser.actions().sendKeys("-", Keys.ARROW_DOWN, "0").perform();
    assertEquals(Arrays.toString(whole), Arrays.toString(seen()));
  }

  @Test
  void lettersAppearOnceTheyCanBeRead() {
    browser.openFresh(page, 1024, 768, false);
    assertFalse(browser.element("#letters text").isDisplayed());
    browser.element("#show-letters").click();
    assertFalse(browser.element("#letters text").isDisplayed());
    assertTrue(browser.element("#letters-hint").isDisplayed());
    browser.element("#larger").click();
    browser.element("#larger").click();
    browser.element("#larger").click();
    assertTrue(
        (Boolean)
            browser.script(
                "return getComputedStyle(document.querySelector('#letters')).display != 'none'"));
    assertFalse(browser.element("#letters-hint").isDisplayed());
  }

  @Test
  void theWheelZoomsAtThePointerAndADragMovesWithoutPicking() {
    browser.openFresh(page, 1440, 900, false);
    double[] whole = seen();
    WheelInput.ScrollOrigin origin = WheelInput.ScrollOrigin.fromElement(browser.piece("r4c2"));
    browser.actions().scrollFromOrigin(origin, 0, -300).perform();
    assertTrue(seen()[2] < whole[2] * 0.7, Arrays.toString(seen()));
    double[] before = seen();
    browser
        .actions()
        .moveToElement(browser.element("#view"))
        .clickAndHold()
        .moveByOffset(-60, -40)
        .moveByOffset(-60, -40)
        .release()
        .perform();
    assertTrue(seen()[0] > before[0] + 1 && seen()[1] > before[1] + 1, Arrays.toString(seen()));
    assertEquals(before[2], seen()[2], 1e-6);
    assertEquals("0", browser.element("#p0").getDomAttribute("tabindex"), "none was chosen");
    browser.actions().scrollFromOrigin(origin, 0, 3000).perform();
    assertEquals(Arrays.toString(whole), Arrays.toString(seen()));
  }

  @Test
  void twoFingersZoomOnAPhoneAndNothingJumps() {
    browser.openFresh(page, 360, 740, false);
    double[] whole = seen();
    browser.script("document.querySelector('#plan').scrollIntoView()");
    String place = "return document.querySelector('#view').getBoundingClientRect().top";
    Object before = browser.script(place);
    browser.pinch(browser.element("#view"), 30, 120);
    assertTrue(seen()[2] < whole[2] / 2.5, Arrays.toString(seen()));
    browser.element("#reset").click();
    browser.tap(browser.piece("r5c3"));
    assertEquals("r5c3", browser.text("#card-head"));
    assertEquals(before, browser.script(place));
    browser.script("document.querySelector('[data-pick=made]').click()");
    assertTrue(browser.text("#told").contains("made"));
    assertEquals(before, browser.script(place));
  }

  @Test
  void aPieceIsFoundByItsName() {
    browser.openFresh(page, 1440, 900, false);
    browser.element("#found").sendKeys("Bottom Left", Keys.ENTER);
    assertEquals("bottom-left", browser.text("#card-head"));
    browser.element("#found").clear();
    browser.element("#found").sendKeys("r99c1", Keys.ENTER);
    assertTrue(browser.text("#told").contains("r99c1"));
  }

  /** From a line of a list to its piece, from there to its other lines, and back. */
  @Test
  void namesLightPiecesAndPiecesPointToTheirLines() {
    browser.openFresh(page, 360, 740, false);
    browser.element("#changes .see").click();
    String name = browser.text("#changes li b");
    assertEquals(name, browser.text("#card-head"));
    browser.element("#card-back").click();
    assertEquals(true, inSight("#changes li"));
    browser.script("document.querySelector('#plan').scrollIntoView()");
    browser.element("#card-body .lines button:last-child").click();
    assertEquals(true, inSight(".here"));
    assertTrue(browser.text(".here").contains(name));
    browser.script("document.querySelector('#strip-3').scrollIntoView({block: 'center'})");
    String third = browser.text("#strip-3 .row b");
    browser.element("#strip-3 .row b").click();
    assertEquals(third, browser.text("#card-head"));
    assertEquals(true, inSight("#card-head"));
  }

  private static Object inSight(String selector) {
    return browser.script(
        "const b = document.querySelector('"
            + selector
            + "').getBoundingClientRect(); return b.bottom > 0 && b.top < innerHeight");
  }

  @Test
  void thePictureToShareIsTheBlanketAlone() throws Exception {
    browser.openFresh(page, 1440, 900, false);
    browser.element("#share").click();
    Path saved = folder.resolve("blanket.png");
    for (int wait = 0; wait < 200 && !Files.exists(saved); wait++) {
      Thread.sleep(50);
    }
    ByteBuffer png = ByteBuffer.wrap(Files.readAllBytes(saved));
    assertEquals(0x89504e47, png.getInt(0));
    assertEquals(2000, Math.max(png.getInt(16), png.getInt(20)));
    double[] whole = seen();
    assertEquals(whole[2] / whole[3], (double) png.getInt(16) / png.getInt(20), 0.01);
  }

  @ParameterizedTest
  @CsvSource({"360, 740", "768, 1024", "1024, 768", "1440, 900", "1920, 1080"})
  void noElementCoversAnother(int width, int height) throws Exception {
    browser.openFresh(page, width, height, false);
    uncovered(width, height, "");
    browser.piece("r8c3").click();
    browser.element("[data-pick=made]").click();
    browser.element("#larger").click();
    browser.select("show", "yarn-2");
    uncovered(width, height, "zoomed");
    browser.element("#whole").click();
    uncoveredHere("whole screen");
    browser.element("#whole").click();
    browser.element("#work-large").click();
    for (String order : List.of("ball", "strip", "round")) {
      browser.element("#work-order [value=" + order + "]").click();
      uncoveredHere("at work by " + order);
    }
  }

  private static void uncovered(int width, int height, String state) throws Exception {
    long far = ((Number) browser.script("return document.body.scrollHeight")).longValue();
    for (double part : new double[] {0, 0.05, 0.1, 0.3, 0.6, 1}) {
      browser.script("window.scrollTo(0, " + Math.round(part * far) + ")");
      uncoveredHere(state + " scrolled to " + part);
      browser.picture(
          Path.of(
              "target", "pictures", "at-" + width + "-" + state + Math.round(part * 100) + ".png"));
    }
    browser.script("window.scrollTo(0, 0)");
  }

  /** Of what is in sight, no two boxes overlap of which neither is within the other. */
  private static void uncoveredHere(String state) {
    Object found =
        browser.script(
            """
            const boxes = [...document.querySelectorAll('button, select, input, textarea, summary, h1, h2, h3, h4,'
                + ' p, nav a, th, td, #view, #work-map, #strip-map, #legend, #card, label')].map(element => {
              const { left, top, right, bottom } = element.getBoundingClientRect();
              const box = { element, left, top, right, bottom };
              for (let up = element.parentElement; up; up = up.parentElement) {
                // what scrolls out of a box is not in sight
                if (up !== document.body && getComputedStyle(up).overflow !== 'visible') {
                  const clip = up.getBoundingClientRect();
                  box.left = Math.max(box.left, clip.left);
                  box.right = Math.min(box.right, clip.right);
                  box.top = Math.max(box.top, clip.top);
                  box.bottom = Math.min(box.bottom, clip.bottom);
                }
              }
              return box;
            }).filter(b => b.right - b.left > 2 && b.bottom - b.top > 2 && b.bottom > 0 && b.top < innerHeight
                && getComputedStyle(b.element).clipPath === 'none' && b.element.checkVisibility({ visibilityProperty: true })
                && !b.element.closest('.spoken, .file'));
            const told = b => (b.element.id || b.element.tagName + ' ' + b.element.textContent.slice(0, 20));
            const over = [];
            boxes.forEach((a, i) => boxes.slice(i + 1).forEach(b => {
              if (Math.min(a.right, b.right) - Math.max(a.left, b.left) > 1 && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > 1
                  && !a.element.contains(b.element) && !b.element.contains(a.element)) {
                over.push(told(a) + ' / ' + told(b));
              }
            }));
            if (document.documentElement.scrollWidth > innerWidth) over.push('it scrolls sideways');
            return boxes.length > 5 ? over.slice(0, 5) : ['too little is in sight'];""");
    assertEquals(List.of(), found, state);
  }
}
