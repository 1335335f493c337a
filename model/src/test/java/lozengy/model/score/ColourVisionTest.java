package lozengy.model.score;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.Deficiency;
import lozengy.model.colour.Srgb;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** Seams that are hard to tell apart. */
class ColourVisionTest {

  private static BlanketBuilder row(int squares, String... colours) {
    BlanketBuilder builder = BlanketBuilder.straight(squares, 1).motif(PieceKind.SQUARE, 1);
    for (int yarn = 0; yarn < colours.length; yarn++) {
      String code = "ABCDEF".substring(yarn, yarn + 1);
      builder.yarn(code, "Yarn " + code, colours[yarn]);
    }
    return builder;
  }

  @Test
  void seamsOfTwoYarnsThatLookAlikeAreFoundAndNoOthers() {
    // alike, one yarn on both sides, far apart, open
    Blanket blanket = row(6, "#000000", "#000000", "#ffffff").build();
    Map<Deficiency, int[]> alike =
        ColourVisionSeams.alike(blanket, BlanketBuilder.sequences(blanket, "A B B C ~ A"));
    assertEquals(Deficiency.values().length, alike.size());
    alike.values().forEach(seams -> assertArrayEquals(new int[] {0}, seams));
  }

  /** Against each deficiency's own picture of the two colours. */
  @Test
  void eachDeficiencyHasItsOwnSeams() {
    String[] colours = {"#c04040", "#707020", "#4060a0", "#407070", "#d0b0c0", "#b8b8c4"};
    Blanket blanket = row(6, colours).build();
    boolean differ = false;
    for (int first = 0; first < colours.length; first++) {
      for (int second = 0; second < colours.length; second++) {
        Sequences sequences = blanket.open();
        sequences.set(2, 0, first);
        sequences.set(3, 0, second);
        Map<Deficiency, int[]> alike = ColourVisionSeams.alike(blanket, sequences);
        double least = 5;
        int found = 0;
        for (Deficiency deficiency : Deficiency.values()) {
          double seen =
              ColourDifference.ciede2000(
                  deficiency.seen(Srgb.parse(colours[first])),
                  deficiency.seen(Srgb.parse(colours[second])));
          least = Math.min(least, seen);
          boolean expected = first != second && seen < 5;
          found += expected ? 1 : 0;
          assertArrayEquals(expected ? new int[] {2} : new int[0], alike.get(deficiency));
        }
        differ |= found == 1 || found == 2;
        assertEquals(least / 5, ColourVisionSeams.toldApart(blanket, first, second), 1e-12);
      }
    }
    assertTrue(differ, "a pair that not all confuse");
  }

  @Test
  void tellsWhichSeamsAreHardToTellApart() {
    Blanket blanket =
        row(4, "#000000", "#000000", "#ffffff").prefer(Map.of(Part.COLOUR_VISION, 1.0)).build();
    Sequences sequences = BlanketBuilder.sequences(blanket, "A B C A");
    ColourVisionPart part = new ColourVisionPart(blanket, sequences);
    assertEquals(200 / 3.0, part.score(), 1e-9);
    List<Loss> losses = part.losses();
    assertEquals(1, losses.size());
    assertEquals(100 / 3.0, losses.get(0).points(), 1e-9);
    assertEquals(List.of(0, 1), losses.get(0).pieces());
    assertEquals(
        "hard to tell apart with a %s deficiency: Yarn A beside Yarn B on the seam of r1c1 and r1c2,"
                .formatted(blanket.yarns().seen().worst(0, 1).word())
            + " 0.0 (CIEDE2000) apart",
        losses.get(0).words().get());
    Blanket alone = row(1, "#000000").prefer(Map.of(Part.COLOUR_VISION, 1.0)).build();
    assertEquals(100, new ColourVisionPart(alone, BlanketBuilder.sequences(alone, "A")).score());
  }

  @Test
  void lossesAddUpToWhatThePartLacks() {
    // the first two are told apart in part
    Blanket blanket = row(4, "#606060", "#666666", "#ffffff").build();
    double apart = ColourVisionSeams.toldApart(blanket, 0, 1);
    assertTrue(apart > 0.1 && apart < 0.9, "apart " + apart);
    ColourVisionPart part =
        new ColourVisionPart(blanket, BlanketBuilder.sequences(blanket, "A B C A"));
    assertEquals(1, part.losses().size());
    assertEquals(100 * (1 - apart) / 3, part.losses().get(0).points(), 1e-9);
    assertEquals(100 - part.score(), part.losses().get(0).points(), 1e-9);
  }
}
