package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/** What the demonstration brief's comments promise, worked out apart from the program. */
class SaltmarshStockTest {

  private final Blanket blanket = ExampleBriefs.blanket("saltmarsh-throw");

  @Test
  void hasThePiecesItSays() {
    assertAll(
        () -> assertEquals(83, count(PieceKind.SQUARE)),
        () -> assertEquals(24, count(PieceKind.SIDE_TRIANGLE)),
        () -> assertEquals(4, count(PieceKind.CORNER_TRIANGLE)));
  }

  @Test
  void hasTheTonesItSays() {
    assertAll(
        () ->
            assertEquals(
                List.of("MUD", "CRK", "PEA", "SLO", "SL2", "SED", "GLA", "MUS"), codes(Tone.DARK)),
        () -> assertEquals(List.of("SAM", "HEA", "TID", "REE", "THR", "LIC"), codes(Tone.MID)),
        () -> assertEquals(List.of("FOA", "SND", "MIS", "SHE", "SKY", "MAR"), codes(Tone.LIGHT)));
  }

  @Test
  void theTwoDyeLotsOfSloeCountAsTheSameBorderAndNoOthersDo() {
    List<String> alike =
        IntStream.range(0, blanket.yarnCount())
            .boxed()
            .flatMap(
                a ->
                    IntStream.range(0, a)
                        .filter(b -> blanket.yarns().sameBorder(a, b))
                        .mapToObj(b -> blanket.yarn(b).code() + " " + blanket.yarn(a).code()))
            .toList();

    assertEquals(List.of("SLO SL2"), alike);
  }

  @Test
  void joiningAndEdgingTakeWhatGeometryAsksFor() {
    // 192 seams of 10 cm at 3.5 m/m; an outline of 2 (6 + 8) diagonals at 9 m/m
    double joining = 192 * 0.1 * 3.5;
    double edging = 2 * (6 + 8) * 0.1 * Math.sqrt(2) * 9;

    long mud = blanket.fixedUse().millimetres(blanket.yarnIndex("MUD"));

    assertEquals((joining + edging) * 1000, mud, 2);
  }

  @Test
  void darksSufficeWithATenthToSpareAndNoMore() {
    // borders: 83 squares of 7.4 m, 24 triangles of 4 m, 4 corners of 2.8 m; and mud's other use
    double need = 83 * 7.4 + 24 * 4 + 4 * 2.8 + 192 * 0.35 + 28 * Math.sqrt(2) * 0.9;
    double usable =
        IntStream.range(0, blanket.yarnCount())
                .filter(yarn -> blanket.yarns().tone(yarn) == Tone.DARK)
                .mapToLong(blanket.yarns()::usableMillimetres)
                .sum()
            / 1000.0;

    double spare = usable / need - 1;

    assertTrue(spare > 0.08 && spare < 0.12, "spare: " + spare);
  }

  @Test
  void cornersAreFramedInMudAndLichenIsKeptFromTheShortSides() {
    int corner = blanket.layout().find("top-left").orElseThrow().index();
    int short1 = blanket.layout().find("bottom3").orElseThrow().index();
    int long1 = blanket.layout().find("left3").orElseThrow().index();
    int lichen = blanket.yarnIndex("LIC");

    assertAll(
        () -> assertEquals(blanket.yarnIndex("MUD"), blanket.locked(corner, 2)),
        () -> assertEquals(Sequences.OPEN, blanket.locked(corner, 0)),
        () -> assertTrue(blanket.banned(short1, lichen)),
        () -> assertFalse(blanket.banned(long1, lichen)));
  }

  private long count(PieceKind kind) {
    return blanket.layout().places().stream().filter(place -> place.kind() == kind).count();
  }

  private List<String> codes(Tone tone) {
    return IntStream.range(0, blanket.yarnCount())
        .filter(yarn -> blanket.yarns().tone(yarn) == tone)
        .mapToObj(yarn -> blanket.yarn(yarn).code())
        .toList();
  }
}
