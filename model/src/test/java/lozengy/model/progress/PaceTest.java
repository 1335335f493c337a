package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import org.junit.jupiter.api.Test;

class PaceTest {

  /** 60 squares of 2 rounds. */
  private static Arrangement plan() {
    return plan("{ metres: 1 }, { metres: 2 }", "");
  }

  private static Arrangement plan(String rounds, String more) {
    Blanket blanket =
        Blanket.of(
            BriefReader.read(
                SourceText.of(
                    "b.yaml",
                    """
                    format: lozengy-brief/1
                    title: Sixty
                    layout: { setting: straight, across: 6, down: 10 }
                    motifs: { square: { side: 10 cm, rounds: [ ROUNDS ] } }
                    yarns:
                      - { code: MUD, colour: "#2c2a29", left: 400 m }
                      - { code: REE, colour: "#d9d59a", left: 400 m }
                    """
                            .replace("ROUNDS", rounds)
                        + more)));
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      sequences.set(piece, 0, piece % 2);
      sequences.set(piece, 1, 1 - piece % 2);
    }
    return new Arrangement(
        blanket,
        sequences,
        Optional.empty(),
        Scorer.score(blanket, sequences, Optional.empty()),
        Optional.empty(),
        Optional.empty());
  }

  private static Arrangement on(Arrangement before, String day, int rounds, String... at) {
    return MarkedArrangement.of(
        before,
        Mark.NONE
            .withRounds(List.of(new Mark.Rounds("rounds", rounds, List.of(at))))
            .withOn(Optional.of(new Mark.Day("on", LocalDate.parse(day)))));
  }

  @Test
  void nothingIsToldBeforeTheFirstMark() {
    assertEquals(Optional.empty(), Pace.of(plan()));
  }

  @Test
  void noEndIsToldFromFewDays() {
    Arrangement two = on(on(plan(), "2025-03-01", 2, "row1"), "2025-03-08", 2, "row2");

    Pace pace = Pace.of(two).orElseThrow();
    assertEquals(12, pace.finished());
    assertEquals(48, pace.piecesToGo());
    assertEquals(96, pace.roundsToGo());
    assertEquals(6, pace.week().orElseThrow().pieces(), 1e-9);
    assertEquals(12, pace.week().orElseThrow().rounds(), 1e-9);
    assertEquals(Optional.empty(), pace.end());
    // many marks of few days, or in few days, tell no more
    Arrangement third = on(two, "2025-03-08", 2, "row3");
    assertEquals(Optional.empty(), Pace.of(third).orElseThrow().end());
    Arrangement quick = plan();
    for (int day = 1; day <= 6; day++) {
      quick = on(quick, "2025-03-0" + day, 2, "row" + day);
    }
    assertEquals(Optional.empty(), Pace.of(quick).orElseThrow().end());
  }

  @Test
  void aDayOnWhichOnlyYarnCameOrWentIsNoDayOfWork() {
    Arrangement work = bought(plan(), "2025-02-01");
    work = on(work, "2025-03-01", 2, "row1");
    work = bought(on(work, "2025-03-08", 2, "row2"), "2025-03-10");
    work = bought(work, "2025-04-30");

    Pace.Week week = Pace.of(work).orElseThrow().week().orElseThrow();
    assertEquals(LocalDate.parse("2025-03-01"), week.first());
    assertEquals(LocalDate.parse("2025-03-08"), week.last());
    assertEquals(6, week.pieces(), 1e-9);
    assertEquals(Optional.empty(), Pace.of(work).orElseThrow().end());
  }

  private static Arrangement bought(Arrangement before, String day) {
    return MarkedArrangement.of(
        before,
        Mark.NONE
            .withYarns(
                List.of(
                    new Mark.Bought(
                        "bought", "MUD", 0, Optional.of(new YarnAmount.Length(50_000)))))
            .withOn(Optional.of(new Mark.Day("on", LocalDate.parse(day)))));
  }

  @Test
  void anEvenPaceEndsOnOneDay() {
    Arrangement work = on(plan(), "2025-03-01", 2, "row1");
    work = on(work, "2025-03-08", 2, "row2");
    work = on(work, "2025-03-15", 2, "row3");
    work = on(work, "2025-03-22", 2, "row4");

    Pace pace = Pace.of(work).orElseThrow();
    // 72 rounds at 12 a week: six weeks
    LocalDate end = LocalDate.parse("2025-05-03");
    assertEquals(Optional.of(new Pace.End(end, Optional.of(end))), pace.end());
  }

  @Test
  void anUnevenPaceEndsBetweenTwoDaysWorkedOutByHand() {
    Arrangement work = on(plan(), "2025-03-01", 1, "row1");
    work = on(work, "2025-03-08", 2, "row1"); // 6 rounds
    work = on(work, "2025-03-15", 2, "row2..row3"); // 24
    work = on(work, "2025-03-22", 2, "row4"); // 12

    // r = 42/21 = 2 a day; off by -8, 10, -2, squares 168; error = sqrt(1.5 * 168) / 21 = 0.7559;
    // times 1.886: 1.4257. 72 rounds at 3.4257 take 21.02 days, at 0.5743 they take 125.4
    Pace pace = Pace.of(work).orElseThrow();
    assertEquals(
        Optional.of(
            new Pace.End(
                LocalDate.parse("2025-03-22").plusDays(22),
                Optional.of(LocalDate.parse("2025-03-22").plusDays(126)))),
        pace.end());
  }

  /**
   * The border takes four times as long as the centre, joining 12 minutes a metre, 10.4 m of it:
   * 104 seams of 10 cm. Told in rounds, a week of centres would count as much as one of borders.
   */
  @Test
  void whereMinutesAreToldTheEndGoesByThem() {
    Arrangement work =
        plan(
            "{ metres: 1, minutes: 5 }, { metres: 2, minutes: 20 }",
            "joining: { yarn: MUD, metres-per-metre: 3, minutes-per-metre: 12 }");
    work = on(work, "2025-03-01", 2, "row1");
    work = on(work, "2025-03-08", 1, "row2..row6"); // 30 centres: 150 minutes
    work = on(work, "2025-03-15", 2, "r2c1..r2c6"); // 6 borders: 120
    work = on(work, "2025-03-22", 2, "row3"); // 120
    work = on(work, "2025-03-29", 2, "row4"); // 120

    // 510 minutes in 28 days, r = 18.2143; off by 22.5, -7.5, -7.5, -7.5: squares 675;
    // error = sqrt(4/3 * 675) / 28 = 1.0714, times 1.638: 1.7550
    // left: 12 borders of 20, 24 pieces of 25, 124.8 of joining: 964.8 minutes, at 19.9693 they
    // take 48.3 days, at 16.4593 they take 58.6
    Pace pace = Pace.of(work).orElseThrow();
    assertTrue(pace.byTime());
    assertEquals(510 / 60.0 / 4, pace.week().orElseThrow().hours().orElseThrow(), 1e-9);
    assertEquals(
        Optional.of(
            new Pace.End(
                LocalDate.parse("2025-03-29").plusDays(49),
                Optional.of(LocalDate.parse("2025-03-29").plusDays(59)))),
        pace.end());
  }

  @Test
  void whereThePaceVariesTooMuchTheLaterDayIsOpenAndAtTheEndThereIsNone() {
    Arrangement work = on(plan(), "2025-03-01", 1, "row1");
    work = on(work, "2025-03-08", 1, "row2");
    work = on(work, "2025-03-09", 2, "row3..row8");
    work = on(work, "2025-03-16", 2, "row1");

    assertEquals(Optional.empty(), Pace.of(work).orElseThrow().end().orElseThrow().to());
    Arrangement done = on(work, "2025-03-17", 2, "all");
    assertEquals(Optional.empty(), Pace.of(done).orElseThrow().end());
    assertEquals(0, Pace.of(done).orElseThrow().piecesToGo());
  }

  @Test
  void daysAreNoPartOfAnythingElse() {
    Arrangement early = on(plan(), "2025-03-01", 2, "row1");
    Arrangement late = on(plan(), "2025-07-01", 2, "row1");

    assertEquals(early.blanket().brief(), late.blanket().brief());
    assertEquals(early.score(), late.score());
  }
}
