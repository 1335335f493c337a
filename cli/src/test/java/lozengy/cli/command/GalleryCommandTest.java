package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GalleryCommandTest {

  @TempDir Path folder;

  private Path brief() {
    Path brief = folder.resolve("throw.yaml");
    assertEquals(0, Run.of("new", "--across", "3", "--down", "3", "-o", brief.toString()).code());
    return brief;
  }

  @Test
  void commandsGoOnFromEachLook() throws IOException {
    Result result =
        Run.of("gallery", brief().toString(), "--looks", "ordered,fade-down", "--moves", "20000");
    assertEquals(0, result.code(), result.err());
    String page = Files.readString(folder.resolve("throw-gallery.html"));
    for (String look : new String[] {"as-asked", "ordered", "fade-down"}) {
      Path arrangement = folder.resolve("throw-" + look + ".arrangement.json");
      assertTrue(page.contains(arrangement.getFileName().toString()), look);
      assertEquals(0, Run.of("check", arrangement.toString()).code(), look);
      assertEquals(0, Run.of("mark", arrangement.toString(), "--made", "r1c1").code(), look);
      assertEquals(0, Run.of("solve", arrangement.toString(), "--moves", "2000").code(), look);
    }
    assertEquals(3, page.split("<img", -1).length - 1, "a picture for each look");
    assertTrue(page.indexOf("<img") < page.indexOf("What each look costs"), "pictures first");
    assertTrue(
        Files.readString(folder.resolve("throw-ordered.arrangement.json")).contains("\"ordered\""));
  }

  @Test
  void aLookThatTheBriefCannotHoldIsToldWithTheReason() throws IOException {
    // every piece lies along the outline: there is nothing within
    Path brief = folder.resolve("throw.yaml");
    Run.of("new", "--setting", "straight", "--across", "2", "--down", "2", "-o", brief.toString());
    Result result = Run.of("gallery", brief.toString(), "--looks", "zones", "--moves", "20000");
    assertEquals(0, result.code(), result.err());
    assertTrue(result.out().contains("The brief leaves it no room"), result.out());
    assertFalse(Files.exists(folder.resolve("throw-zones.arrangement.json")));
    String page = Files.readString(folder.resolve("throw-gallery.html"));
    assertTrue(page.contains("Looks that this brief does not hold"), page);
  }

  @Test
  void nothingIsReplacedUnlessAsked() {
    Path brief = brief();
    String[] call = {"gallery", brief.toString(), "--looks", "calm", "--moves", "2000"};
    assertEquals(0, Run.of(call).code());
    assertEquals(2, Run.of(call).code());
    assertEquals(
        0,
        Run.of("gallery", brief.toString(), "--looks", "calm", "--moves", "2000", "--overwrite")
            .code());
  }

  /** Its lines are there to be pasted to a shell. */
  @Test
  void aNameWithABlankStandsWithinQuotes() throws IOException {
    Path brief = Files.move(brief(), folder.resolve("my throw.yaml"));
    assertEquals(
        0, Run.of("gallery", brief.toString(), "--looks", "calm", "--moves", "2000").code());
    String page = Files.readString(folder.resolve("my throw-gallery.html"));
    String text = page.replace("&#39;", "'").replace("&apos;", "'");
    assertTrue(text.contains("lozengy mark '"), text);
    assertTrue(text.contains("my throw-calm.arrangement.json' --made"), text);
  }

  @Test
  void wordsOfUnknownLooksAreRefusedWithThoseThatAreKnown() {
    Result result = Run.of("gallery", brief().toString(), "--looks", "wild");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("scattered, ordered"), result.err());
  }
}
