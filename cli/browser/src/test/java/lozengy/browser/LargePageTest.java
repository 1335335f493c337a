package lozengy.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

/** A page of some 2,000 pieces can be used; how long it takes is written down, not judged. */
class LargePageTest {

  private static final int TIMES = 2;

  @Test
  void twoThousandPiecesCanBeUsed(@TempDir Path folder) throws Exception {
    Program.done(folder, "new", "--across", "25", "--down", "40", "-o", "large.yaml");
    Program.done(folder, "solve", "large.yaml", "--moves", "4000000");
    Program.done(folder, "report", "large.arrangement.json", "--as", "html");
    Path page = folder.resolve("large.html");
    List<String> rows = new ArrayList<>();
    rows.add("run,pieces,bytes,ready_ms,card_ms,highlight_ms,zoom_ms");
    try (Browser browser = new Browser(folder)) {
      for (int run = 1; run <= TIMES; run++) {
        browser.openFresh(page, 1280, 900, false);
        assertEquals(2066, browser.elements(".piece").size());
        Object ready = browser.script("return performance.getEntriesByName('ready')[0].startTime");
        Object card =
            timed(browser, "document.querySelector('#p700').focus()", "#card-head", "r29c15");
        Object highlight =
            timed(
                browser,
                "const s = document.querySelector('#show'); s.value = 'yarn-1';"
                    + " s.dispatchEvent(new Event('change'))",
                "#told",
                null);
        Object zoom =
            timed(browser, "document.querySelector('#larger').click()", "#card-head", "r29c15");
        rows.add(
            String.format(
                Locale.ROOT,
                "%d,%d,%d,%.1f,%.1f,%.1f,%.1f",
                run,
                2066,
                Files.size(page),
                ((Number) ready).doubleValue(),
                ((Number) card).doubleValue(),
                ((Number) highlight).doubleValue(),
                ((Number) zoom).doubleValue()));
      }
      browser.script("document.querySelector('#p0').focus()");
      browser.actions().sendKeys(Keys.ARROW_RIGHT).perform();
      assertEquals("r1c2", browser.text("#card-head"));
      assertEquals(
          List.of(),
          browser.script(
              """
              const boxes = [...document.querySelectorAll('#work-list .boxes label')];
              const past = boxes.filter(box => {
                const range = document.createRange();
                range.selectNodeContents(box);
                return range.getBoundingClientRect().right > box.getBoundingClientRect().right - 4;
              }).map(box => box.textContent);
              const six = boxes.some(box => /r\\d\\dc\\d\\d/.test(box.textContent));
              return six ? past.slice(0, 5) : ['no long name is there'];"""),
          "names past the frames of their boxes");
      assertEquals(List.of(), browser.complaints());
      Files.createDirectories(Path.of("target", "pictures"));
      browser.picture(Path.of("target", "pictures", "large.png"));
    }
    Files.write(Path.of("target", "large-page.csv"), rows);
  }

  /** Milliseconds of an act with the layout that follows it; what it should tell is told. */
  private static Object timed(Browser browser, String act, String told, String words) {
    Object took =
        browser.script(
            "const start = performance.now(); "
                + act
                + "; document.body.getBoundingClientRect(); return performance.now() - start");
    String said = browser.text(told);
    assertTrue(words == null ? !said.isEmpty() : said.equals(words), said);
    return took;
  }
}
