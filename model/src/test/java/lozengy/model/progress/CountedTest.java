package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.Counted;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** What a yarn that was counted in mid-work has, and what counts against it. */
class CountedTest {

  private static final String JOINED =
      "{ at: [r1c1, r3c1], rounds: [MUD, REE, PEA], state: joined }";
  private static final String BETWEEN = "{ at: r2c1, rounds: [MUD, SKY, REE], state: joined }";
  private static final String MADE = "{ at: r1c3, rounds: [MUD, REE, PEA], state: made }";

  private static Blanket blanket(String code, Counted counted, String... notes) {
    Brief brief = Sample.brief(notes);
    List<Yarn> yarns =
        brief.yarns().stream()
            .map(yarn -> yarn.code().equals(code) ? yarn.withCount(Optional.of(counted)) : yarn)
            .toList();
    return Blanket.of(brief.withYarns(yarns));
  }

  private static Counted counted(long metres, List<String> made, List<String> joined) {
    return new Counted(new YarnAmount.Length(metres * 1000), made, joined, 0);
  }

  private static long used(Blanket blanket, String code) {
    Sequences plan = Sample.plan(blanket.brief());
    return blanket.usedMillimetres(plan)[blanket.yarnIndex(code)];
  }

  @Test
  void whatWasWorkedByThenNoLongerCountsAgainstIt() {
    Blanket before = Blanket.of(Sample.brief(JOINED, BETWEEN, MADE));
    Blanket after =
        blanket(
            "REE",
            counted(77, List.of("r1c3"), List.of("r1c1", "r3c1", "r2c1")),
            JOINED,
            BETWEEN,
            MADE);

    // three squares with REE in their second round of 2 m, one with it in its border of 3 m
    assertEquals(used(before, "REE") - 3 * 2000 - 3000, used(after, "REE"));
    assertEquals(77_000, after.yarn(after.yarnIndex("REE")).stockMillimetres());
    assertEquals(used(before, "SKY"), used(after, "SKY"));
    assertEquals(400_000, before.yarn(before.yarnIndex("REE")).stockMillimetres());
  }

  @Test
  void aPieceThatIsPlannedAgainCountsAgain() {
    Counted counted = counted(77, List.of("r1c3"), List.of("r1c1"));
    Blanket givenUp = blanket("REE", counted, JOINED);
    Blanket kept = blanket("REE", counted, JOINED, MADE);

    assertEquals(used(kept, "REE") + 2000, used(givenUp, "REE"));
  }

  @Test
  void ofTheJoiningYarnSeamsBetweenJoinedPiecesNoLongerCount() {
    Blanket before = Blanket.of(Sample.brief(JOINED, BETWEEN));
    Blanket after =
        blanket("MUD", counted(9, List.of(), List.of("r1c1", "r2c1", "r3c1")), JOINED, BETWEEN);

    // two seams of 10 cm at 3 m a metre
    assertEquals(
        before.fixedUse().joiningMillimetres() - 600, after.fixedUse().joiningMillimetres());
    // and the centres of three squares at 1 m
    assertEquals(used(before, "MUD") - 600 - 3000, used(after, "MUD"));
    // a seam to a piece that was only made then is still to be joined
    Blanket made =
        blanket("MUD", counted(9, List.of("r2c1"), List.of("r1c1", "r3c1")), JOINED, BETWEEN);
    assertEquals(before.fixedUse().joiningMillimetres(), made.fixedUse().joiningMillimetres());
  }

  @Test
  void ofTheEdgingYarnThePartThatIsEdgedNoLongerCounts() {
    Blanket before = Blanket.of(Sample.brief());
    Blanket after =
        blanket("PEA", new Counted(new YarnAmount.Length(90_000), List.of(), List.of(), 40));

    double outline = before.measures().outlineLengthCm();
    assertEquals((long) (outline * 4 * 10), before.fixedUse().edgingMillimetres());
    assertEquals((long) (outline * 4 * 10 * 0.6), after.fixedUse().edgingMillimetres());
    assertEquals(
        used(before, "PEA")
            - before.fixedUse().edgingMillimetres()
            + after.fixedUse().edgingMillimetres(),
        used(after, "PEA"));
  }

  @Test
  void aWeightIsALengthThroughThePutUp() {
    Counted counted = new Counted(new YarnAmount.Weight(25_000), List.of(), List.of(), 0);

    assertEquals(50_000, blanket("REE", counted).yarn(1).stockMillimetres());
    assertThrows(IllegalArgumentException.class, () -> blanket("MUD", counted));
  }

  @Test
  void isReadFromABriefAndWrittenBack() {
    String text =
        BriefWriter.text(Sample.brief(JOINED))
            .replace(
                "\"code\": \"SKY\",",
                "\"code\": \"SKY\", \"counted\": { \"left\": \"85 m\", \"joined\": [\"r1c1\","
                    + " \"row3\"], \"edged\": \"10 %\" },");
    Brief brief = BriefReader.read(SourceText.of("b.json", text));

    assertEquals(
        Optional.of(
            new Counted(new YarnAmount.Length(85_000), List.of(), List.of("r1c1", "row3"), 10)),
        brief.yarns().get(3).counted());
    assertEquals(brief, BriefReader.read(SourceText.of("b.json", BriefWriter.text(brief))));
    assertEquals(PieceState.PLANNED, Blanket.of(brief).state(0 + 1));
  }

  @Test
  void itsMistakesAreTold() {
    String text = BriefWriter.text(Sample.brief());
    String wrong =
        text.replace(
                "\"code\": \"SKY\",",
                "\"code\": \"SKY\", \"counted\": { \"left\": \"85\", \"made\": \"r9c9\" },")
            .replace(
                "\"code\": \"PEA\",",
                "\"code\": \"PEA\", \"counted\": { \"left\": \"8 g\", \"joind\": [] },");

    String told =
        assertThrows(InputException.class, () -> BriefReader.read(SourceText.of("b.json", wrong)))
            .getMessage();

    assertTrue(told.contains("yarns[3].counted.left: \"85\" has no unit"), told);
    assertTrue(told.contains("yarns[2].counted.joind: The field \"joind\" is not known"), told);
    assertTrue(told.contains("yarns[2].ball: The yarn has a weight left but no put-up"), told);
    String noPiece =
        wrong.replace("\"85\"", "\"85 m\"").replace("8 g", "8 m").replace("joind", "made");
    String toldOfPiece =
        assertThrows(InputException.class, () -> BriefReader.read(SourceText.of("b.json", noPiece)))
            .getMessage();
    assertTrue(
        toldOfPiece.contains(
            "yarns[3].counted.made: There is no piece \"r9c9\". The rows are 1 to 3"),
        toldOfPiece);
  }
}
