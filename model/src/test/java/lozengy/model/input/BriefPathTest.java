package lozengy.model.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class BriefPathTest {

  private static final BriefPath YARN = BriefPath.of("yarns").item(3);

  @Test
  void isPrintedAsMessagesWriteIt() {
    assertEquals("yarns[3].colour", YARN.field("colour").toString());
    assertEquals(
        "pieces[2].not row1", BriefPath.of("pieces").item(2).field("not").part("row1") + "");
    assertEquals("brief.yarns[3]", YARN.in(BriefPath.of("brief")).toString());
    assertEquals("", BriefPath.ROOT.toString());
    assertEquals("[0].at[1]", BriefPath.ROOT.item(0).field("at").item(1).toString());
  }

  @Test
  void liesWithinByStepsAndNotByLetters() {
    assertTrue(YARN.field("colour").within(YARN));
    assertTrue(YARN.within(YARN));
    assertTrue(YARN.within(BriefPath.ROOT));
    assertFalse(YARN.within(YARN.field("colour")));
    assertFalse(BriefPath.of("yarns").item(31).within(YARN));
    assertFalse(BriefPath.of("yarnsOf", "x").within(BriefPath.of("yarns")));
    assertTrue(YARN.inItem("yarns"));
    assertFalse(BriefPath.of("yarns").inItem("yarns"));
    assertFalse(BriefPath.of("yarns", "colour").inItem("yarns"));
  }

  @Test
  void tellsItsFirstFieldAndIndex() {
    BriefPath zone = BriefPath.of("look", "zones").item(2).field("at").item(5);
    assertEquals(Optional.of("look"), zone.first());
    assertEquals(OptionalInt.of(2), zone.index());
    assertEquals(OptionalInt.empty(), BriefPath.of("look").index());
    assertEquals(Optional.empty(), BriefPath.ROOT.first());
  }

  @Test
  void isSeenFromThePlaceThatItLiesIn() {
    BriefPath brief = BriefPath.of("brief");
    assertEquals(YARN, YARN.in(brief).from(brief));
    assertEquals(YARN, YARN.from(brief));
  }

  @Test
  void aSingleValueStandsForItsList() {
    assertEquals(YARN, YARN.itemOf(0, 1));
    assertEquals(YARN.item(0), YARN.itemOf(0, 2));
  }

  @Test
  void partsDiffer() {
    assertFalse(YARN.part("a").equals(YARN.part("b")));
    assertEquals(YARN, YARN.part("a").whole());
  }
}
