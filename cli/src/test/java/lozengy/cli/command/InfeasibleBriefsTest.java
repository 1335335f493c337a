package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * What matters in what is told of briefs that cannot be done. It is read where {@link ToldTest}
 * keeps it, which holds it against the program word for word.
 */
class InfeasibleBriefsTest {

  private static final Path KEPT = Path.of("src/test/resources/lozengy/cli/told");

  private static String explained(String name) {
    try {
      String told = Files.readString(KEPT.resolve(name + ".txt"));
      assertTrue(told.startsWith("$ explain\n"), told);
      return told.substring(0, told.indexOf("$ explain --json")).replaceAll("\\s+", " ");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void tells(String name, String... words) {
    String out = explained(name);
    for (String each : words) {
      assertTrue(out.contains(each), each + " in: " + out);
    }
  }

  @Test
  void onlyLinesThatMatterAreTold() {
    String without = "without any one of them the others could: ";
    tells(
        "images-side-by-side",
        without + "rules.neighbour-borders: borders on a seam differ line 19, look.symmetry:");
    tells(
        "images-locked",
        "and no yarn may be the border of both",
        without + "line 21, pieces[0] r1c1:",
        "(CRK) line 19, look.symmetry: the blanket is its own mirror image (left-right) What");
    tells("images-banned", without + "line 10, motifs.square.rounds[2].tone:");
    tells(
        "pile-borders",
        without
            + "line 20, pile[0]: 13 finished squares in FOA, SAM, MUD to lay"
            + " rules.neighbour-borders: borders on a seam differ What",
        "1. Leave 1 of the pile's 13 squares in FOA, SAM, MUD out line 20, pile[0].count: 12");
    tells(
        "pile-stock",
        "Foam (FOA): the pile's pieces hold 12.00 m and joining takes 2.40 m; 10.00 m are there,"
            + " what finished pieces hold included: 2.40 m short beyond what the pile holds already,"
            + " unless they were counted since (counted in a brief, mark --left in an arrangement)",
        without
            + "line 20, pile[0]: 6 finished squares in FOA, SAM, CRK to lay line 17, yarns[5]:"
            + " Foam (FOA) has 10.00 m line 21, joining: joining takes 2.40 m of Foam (FOA) What");
    tells("pile-borders", "To start anyway No partial plan is shown: even with rounds left open");
    tells("pile-locks", without + "line 25, pile[0]:", "line 20, pieces[0]: row1 is locked:");
  }

  @Test
  void eachPairThatIsKeptApartIsALineOfItsOwn() {
    tells(
        "kept-apart",
        "can only be Tidal mud (MUD), Creek at dusk (CRK) or Peat (PEA), which are to be kept apart",
        "look.apart[0]: MUD and CRK",
        "look.apart[1]: MUD and PEA",
        "look.apart[2]: CRK and PEA");
  }

  @Test
  void lockedRowsAreToldAsRows() {
    tells(
        "many-locks",
        "row4 and row5 are joined along 12 sides, and the border of all can only be Creek at dusk"
            + " (CRK)",
        "and 11 more like it",
        "1. Free row4 of its lock line 55, pieces[0]: leave it out");
  }

  @Test
  void whatIsLeftWhenACauseIsMendedIsToldToo() {
    tells(
        "two-troubles",
        "Why r4c2 and r5c2 are joined along a side",
        "What is still in the way when that is mended Round 5 of 111 squares, round 4 of 28"
            + " triangles");
    assertFalse(explained("darks-short").contains("What is still in the way"));
  }

  @Test
  void namesAreNotTakenForWords() {
    tells(
        "nasty-names",
        "lines 13 to 18, yarns: What Nana has on (NAN), Coat he has worn (COA), This is locked:"
            + " round 2 in (THI), has 12.50 m and is it (HAS) and leave some of it (LEA) have 90.00"
            + " m each; She has is (SHE) has 120.00 m");
    tells(
        "nasty-locks",
        "row1 is joined along 4 sides, and the border of all can only be the border of both is"
            + " their borders (NAN)",
        "pieces[0]: leave r1c1..r1c4 out of it");
  }

  @Test
  void amountsThatAreTheSameAreToldOnce() {
    tells("keep-back-all", "Tidal mud (MUD) has 480.00 m; Creek at dusk (CRK),", "240.00 m each");
  }

  @Test
  void aLockAgainstAGivenBorderNamesTheLook() {
    tells(
        "lock-against-look",
        "The border of r1c1 is locked to Creek at dusk (CRK), but the look gives it Tidal mud"
            + " (MUD)");
  }
}
