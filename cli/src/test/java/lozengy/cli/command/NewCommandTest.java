package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lozengy.cli.Briefs;
import lozengy.cli.Run;
import lozengy.cli.Run.Result;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.input.SourceText;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefReader;
import lozengy.model.yarn.ToneNeeds;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NewCommandTest {

  @TempDir Path folder;

  @Property(tries = 40)
  void starterIsABriefOfThatSizeWithEnoughYarn(
      @ForAll Setting setting,
      @ForAll @IntRange(min = 1, max = 30) int across,
      @ForAll @IntRange(min = 1, max = 30) int down) {
    Result result =
        Run.of("new", "--setting", setting.word(), "--across", "" + across, "--down", "" + down);
    assertEquals(0, result.code(), result.err());
    Brief brief = BriefReader.read(SourceText.of("starter", result.out()));
    assertEquals(setting, brief.layout().setting());
    assertEquals(List.of(across, down), List.of(brief.layout().across(), brief.layout().down()));
    assertTrue(ToneNeeds.of(Blanket.of(brief)).enough());
  }

  @Test
  void starterOfEitherSettingIsSolved() {
    for (Setting setting : Setting.values()) {
      Result starter = Run.of("new", "--setting", setting.word(), "--across", "3", "--down", "2");
      Result solved =
          new Run().input(starter.bytes()).run("solve", "-", "--moves", "1000", "--threads", "1");
      assertEquals(0, solved.code(), solved.err());
    }
  }

  @Test
  void notesInTheStarterAreRightOnceTheyAreUsed() {
    for (Setting setting : Setting.values()) {
      String starter = Run.of("new", "--setting", setting.word()).out();
      Brief brief =
          BriefReader.read(
              SourceText.of(
                  "starter", starter.replace("# pieces:", "pieces:").replace("#   -", "   -")));
      assertEquals(3, brief.pieces().size());
    }
  }

  @Test
  void fileIsNotOverwrittenUnlessAsked() {
    String file = Briefs.write(folder, "mine.yaml", "mine");
    Result refused = Run.of("new", "-o", file);
    assertEquals(2, refused.code());
    assertEquals("mine", Briefs.text(file));
    assertTrue(refused.err().contains("--overwrite"), refused.err());
    Result written = Run.of("new", "-o", file, "--overwrite");
    assertEquals(0, written.code());
    assertEquals(Run.of("new").out(), Briefs.text(file));
    assertTrue(written.out().contains("lozengy solve " + file), written.out());
  }

  @Test
  void allWrongNumbersAreToldAtOnce() {
    Result result = Run.of("new", "--across", "0", "--down", "-3");
    assertEquals(2, result.code());
    assertEquals(
        """
        lozengy: --across: 0. Give a whole number, 1 or more
        lozengy: --down: -3. Give a whole number, 1 or more
        """,
        result.err());
  }

  @Test
  void sizeBeyondReachIsRefused() {
    Result result = Run.of("new", "--across", "100000", "--down", "100000");
    assertEquals(2, result.code());
    assertEquals("", result.out());
    assertTrue(result.err().startsWith("lozengy: --across"), result.err());
  }

  @Test
  void unknownSettingNamesTheKnownOnes() {
    Result result = Run.of("new", "--setting", "hexagonal");
    assertEquals(2, result.code());
    assertTrue(result.err().contains("'hexagonal' is none of on-point, straight"), result.err());
  }

  @Test
  void folderThatIsNotThereIsNamed() {
    Path file = folder.resolve("nowhere").resolve("throw.yaml");
    Result result = Run.of("new", "-o", file.toString());
    assertEquals(2, result.code());
    assertTrue(result.err().contains(folder.resolve("nowhere").toString()), result.err());
    assertTrue(Files.notExists(file.getParent()));
  }
}
