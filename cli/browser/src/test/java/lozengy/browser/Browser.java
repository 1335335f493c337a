package lozengy.browser;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.Select;

/** A headless Chromium with one page open. */
final class Browser implements AutoCloseable {

  private final ChromeDriver driver;

  Browser(Path downloads) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(program("chromium", "chromium-browser", "google-chrome"));
    options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars");
    options.setExperimentalOption(
        "prefs", Map.of("download.default_directory", downloads.toString()));
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(program("chromedriver"))
            .usingAnyFreePort()
            .build();
    driver = new ChromeDriver(service, options);
  }

  private static File program(String... names) {
    return Arrays.stream(names)
        .flatMap(
            name ->
                Stream.of(System.getenv("PATH").split(File.pathSeparator))
                    .map(folder -> new File(folder, name)))
        .filter(File::canExecute)
        .findFirst()
        .orElseThrow(() -> new AssertionError("install " + names[0] + ": it is not on the PATH"));
  }

  /** Opens a page at a size, in light or dark. */
  void open(Path page, int width, int height, boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
    driver.executeCdpCommand("Emulation.setTouchEmulationEnabled", Map.of("enabled", width < 600));
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(
                Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"),
                Map.of("name", "prefers-reduced-motion", "value", "reduce"))));
    driver.get(page.toUri().toString());
    if (!"true".equals(element("html").getDomAttribute("data-ready"))) {
      throw new AssertionError("the page's script did not run: " + complaints());
    }
  }

  ChromeDriver driver() {
    return driver;
  }

  Actions actions() {
    return new Actions(driver);
  }

  WebElement element(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  List<WebElement> elements(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** The piece of that name. */
  WebElement piece(String name) {
    return element(".piece[aria-label^='" + name + ",']");
  }

  String text(String selector) {
    return element(selector).getText();
  }

  void select(String id, String value) {
    new Select(element("#" + id)).selectByValue(value);
  }

  /** Opens the page anew that is open, as it was left. */
  void reload() {
    driver.navigate().refresh();
  }

  /** Forgets what pages have kept, and opens a page as if for the first time. */
  void openFresh(Path page, int width, int height, boolean dark) {
    open(page, width, height, dark);
    script("localStorage.clear()");
    open(page, width, height, dark);
  }

  /** Touches the middle of an element that is in sight; the driver itself would scroll to it. */
  void tap(WebElement element) {
    List<?> middle =
        (List<?>)
            driver.executeScript(
                "const b = arguments[0].getBoundingClientRect();"
                    + "return [Math.round(b.left + b.width / 2), Math.round(b.top + b.height / 2)]",
                element);
    int x = ((Number) middle.get(0)).intValue();
    int y = ((Number) middle.get(1)).intValue();
    PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, "finger");
    Sequence tap = new Sequence(finger, 0);
    tap.addAction(finger.createPointerMove(Duration.ZERO, PointerInput.Origin.viewport(), x, y));
    tap.addAction(finger.createPointerDown(PointerInput.MouseButton.LEFT.asArg()));
    tap.addAction(finger.createPointerUp(PointerInput.MouseButton.LEFT.asArg()));
    driver.perform(List.of(tap));
  }

  /** Moves two fingers on an element, one still in its middle, one from one distance to another. */
  void pinch(WebElement element, int from, int to) {
    List<Sequence> fingers = new ArrayList<>();
    for (int each = 0; each < 2; each++) {
      PointerInput finger = new PointerInput(PointerInput.Kind.TOUCH, "finger" + each);
      PointerInput.Origin origin = PointerInput.Origin.fromElement(element);
      Sequence moves = new Sequence(finger, 0);
      moves.addAction(finger.createPointerMove(Duration.ZERO, origin, each * from, 0));
      moves.addAction(finger.createPointerDown(PointerInput.MouseButton.LEFT.asArg()));
      moves.addAction(finger.createPointerMove(Duration.ofMillis(200), origin, each * to, 0));
      moves.addAction(finger.createPointerUp(PointerInput.MouseButton.LEFT.asArg()));
      fingers.add(moves);
    }
    driver.perform(fingers);
  }

  /** What a script returns. */
  Object script(String body) {
    return driver.executeScript(body);
  }

  /** What the browser complained of since the page was opened. */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  /** The findings of axe-core, WCAG 2.2 AA and best practice: impact, rule and places. */
  List<String> findings() throws IOException {
    try (InputStream script = Browser.class.getClassLoader().getResourceAsStream("axe.min.js")) {
      driver.executeScript(new String(script.readAllBytes(), StandardCharsets.UTF_8));
    }
    Object found =
        driver.executeAsyncScript(
            "const done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa',"
                + " 'wcag22aa', 'best-practice']}).then(r => done(r.violations.map(v =>"
                + " v.impact + ' ' + v.id + ': ' + v.nodes.slice(0, 3).map(n =>"
                + " n.target.join(' ') + ' ' + n.failureSummary).join(' | '))),"
                + " e => done(['failed: ' + e]))");
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }

  /** Keeps a picture of what is seen. */
  void picture(Path file) throws IOException {
    Files.write(file, driver.getScreenshotAs(OutputType.BYTES));
  }

  @Override
  public void close() {
    driver.quit();
  }
}
