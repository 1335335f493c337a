package lozengy.benchmarks.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BriefSetTest {

  static Stream<BriefSpec> specs() {
    return Stream.concat(BriefSet.all().stream(), BriefSet.growth().stream().limit(2));
  }

  @ParameterizedTest
  @MethodSource("specs")
  void thePlantedArrangementIsValid(BriefSpec spec) {
    PlantedBrief made = PlantedBrief.of(spec);
    assertEquals(List.of(), Check.faults(made.blanket(), made.planted()));
  }

  @ParameterizedTest
  @MethodSource("specs")
  void theStockIsThePlantedUseAndTheSlackAndNoMillimetreMore(BriefSpec spec) {
    PlantedBrief made = PlantedBrief.of(spec);
    long[] used = made.blanket().usedMillimetres(made.planted());
    for (int yarn = 0; yarn < used.length; yarn++) {
      double usable = used[yarn] * (1 + spec.slackPercent() / 100);
      assertEquals(usable, made.blanket().yarns().usableMillimetres(yarn), 1.0, "yarn " + yarn);
      assertTrue(used[yarn] > 0, "yarn " + yarn + " is not used");
    }
  }

  @ParameterizedTest
  @MethodSource("specs")
  void generatesTheSameTwice(BriefSpec spec) {
    PlantedBrief made = PlantedBrief.of(spec);
    PlantedBrief again = PlantedBrief.of(spec);
    assertEquals(made.blanket().brief(), again.blanket().brief());
    assertEquals(made.planted(), again.planted());
  }

  @ParameterizedTest
  @MethodSource("specs")
  void theFileReadsBackAsTheBrief(BriefSpec spec) {
    Brief brief = PlantedBrief.of(spec).blanket().brief();
    SourceText file = SourceText.of(spec.name() + ".json", BriefWriter.text(brief));
    assertEquals(brief, BriefReader.read(file));
  }

  @Test
  void theSetIsAsWideAsPromised() {
    List<BriefSpec> all = BriefSet.all();
    assertTrue(all.size() >= 12);
    assertEquals(all.size(), all.stream().map(BriefSpec::name).distinct().count());
    assertEquals(3, all.stream().mapToInt(BriefSpec::borderYarns).min().orElseThrow());
    assertEquals(12, all.stream().mapToInt(BriefSpec::borderYarns).max().orElseThrow());
    assertEquals(0.05, all.stream().mapToDouble(BriefSpec::slackPercent).min().orElseThrow());
    assertEquals(20, all.stream().mapToDouble(BriefSpec::slackPercent).max().orElseThrow());
  }

  @Test
  void theReferenceIsAsDescribed() {
    Blanket blanket = PlantedBrief.of(BriefSet.named("reference")).blanket();
    assertEquals(143, blanket.pieceCount());
    assertEquals(4, blanket.layerCount());
    int dark = 0;
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      dark += blanket.yarns().tone(yarn) == Tone.DARK ? 1 : 0;
    }
    assertEquals(8, dark);
    assertEquals(20, blanket.yarnCount());
    assertEquals(OptionalInt.of(1), blanket.brief().rules().copies());
  }

  @Test
  void theReferencesDifferInSlackAlone() {
    PlantedBrief ample = PlantedBrief.of(BriefSet.named("reference"));
    PlantedBrief tight = PlantedBrief.of(BriefSet.named("reference-0.05"));
    assertEquals(ample.planted(), tight.planted());
    assertNotEquals(ample.blanket().brief().yarns(), tight.blanket().brief().yarns());
  }

  @Test
  void minContrastMakesSomeYarnsTheSame() {
    Blanket blanket = PlantedBrief.of(BriefSet.named("throw-contrast")).blanket();
    Set<String> alike = new HashSet<>();
    for (int a = 0; a < 9; a++) {
      for (int b = 0; b < a; b++) {
        if (blanket.yarns().sameBorder(a, b)) {
          alike.add(blanket.yarn(a).code() + blanket.yarn(b).code());
        }
      }
    }
    assertTrue(alike.size() >= 2, alike.toString());
  }

  @Test
  void oddStockIsUneven() {
    PlantedBrief made = PlantedBrief.of(BriefSet.named("throw-odd-ample"));
    Sequences planted = made.planted();
    int[] borders = new int[made.blanket().yarnCount()];
    for (int piece = 0; piece < planted.pieces(); piece++) {
      borders[planted.border(piece)]++;
    }
    int most = 0;
    int least = Integer.MAX_VALUE;
    for (int yarn = 0; yarn < 10; yarn++) {
      most = Math.max(most, borders[yarn]);
      least = Math.min(least, borders[yarn]);
    }
    assertTrue(most >= 1.5 * least, least + " to " + most);
  }
}
