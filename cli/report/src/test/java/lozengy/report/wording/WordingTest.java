package lozengy.report.wording;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Fault;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.check.Subject;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;
import lozengy.solver.SolveResult;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.explain.conflict.Conflict;
import lozengy.solver.explain.remedy.Relaxation;
import lozengy.solver.explain.remedy.Remedy;
import org.junit.jupiter.api.Test;

/** Words come from values: no name changes what is told together. */
class WordingTest {

  private static final Wording.Places PLACES =
      new Wording.Places() {
        @Override
        public String place(BriefPath path) {
          return path.toString();
        }

        @Override
        public String range(List<BriefLine> lines) {
          return lines.get(0).path() + " to " + lines.get(lines.size() - 1).path();
        }

        @Override
        public String path(BriefPath path) {
          return path.toString();
        }
      };

  private static Blanket named(BlanketBuilder builder, String... names) {
    Blanket blanket = builder.build();
    List<Yarn> yarns = new ArrayList<>();
    for (int i = 0; i < blanket.yarnCount(); i++) {
      Yarn yarn = blanket.yarn(i);
      yarns.add(yarn.withName(names[i]));
    }
    return Blanket.of(blanket.brief().withYarns(yarns));
  }

  private static List<BriefLine> lines(Blanket blanket, RuleId rule) {
    return RuleBook.lines(blanket).stream().filter(line -> line.rule() == rule).toList();
  }

  @Test
  void yarnsStayTogetherWhateverTheirNames() {
    Blanket blanket =
        named(
            BlanketBuilder.straight(2, 2)
                .motif(PieceKind.SQUARE, round(1000))
                .yarns(3, Tone.DARK, 10_000)
                .yarns(2, Tone.LIGHT, 20_000),
            "What Nana has on",
            "Coat he has worn",
            "It is 12.50 m",
            "She has 3",
            "out of it");
    assertEquals(
        List.of(
            "yarns[0] to yarns[4]: What Nana has on (A), Coat he has worn (B) and It is 12.50 m (C)"
                + " have 10.00 m each; She has 3 (D) and out of it (E) have 20.00 m each"),
        new Wording(blanket).lines(lines(blanket, RuleId.YARN_TOTALS), PLACES));
  }

  @Test
  void locksOfOneNoteStayTogetherAndOthersApart() {
    BlanketBuilder builder =
        BlanketBuilder.straight(5, 2)
            .motif(PieceKind.SQUARE, round(1000), round(1000))
            .yarns(2, Tone.DARK, 1_000_000)
            .note("row1", PieceState.PLANNED, "A", null)
            .note("r2c1", PieceState.PLANNED, "A", null);
    Blanket blanket = named(builder, "This is locked: round 2 in", "Coat he has worn");
    assertEquals(
        List.of(
            "pieces[0]: row1 is locked: round 1 in This is locked: round 2 in (A)",
            "pieces[1] r2c1: r2c1 is locked: round 1 in This is locked: round 2 in (A)"),
        new Wording(blanket).lines(lines(blanket, RuleId.LOCKS), PLACES));
  }

  @Test
  void aConflictIsToldByItsLines() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000, Tone.DARK))
            .yarns(1, Tone.DARK, 1_000_000)
            .build();
    Wording wording = new Wording(blanket);
    List<BriefLine> lines = RuleBook.lines(blanket);
    BriefLine borders =
        lines.stream()
            .filter(line -> line.subject() instanceof Subject.Differ)
            .findFirst()
            .orElseThrow();
    Conflict two = new Conflict(List.of(borders, lines.get(lines.size() - 1)), false);
    SolveResult.Impossible impossible = new SolveResult.Impossible(List.of(), Optional.of(two));
    assertEquals(
        List.of(
            "These lines of the brief cannot hold together; perhaps not all of them matter:",
            "rules.neighbour-borders: borders on a seam differ",
            "yarns[0]: A has 1000.00 m"),
        wording.of(impossible));
    assertEquals(
        List.of(
            "One line of the brief cannot hold by itself:",
            "rules.neighbour-borders: borders on a seam differ"),
        wording.of(new Conflict(List.of(borders), true)));
  }

  @Test
  void optionsAreThoseOfSolve() {
    Blanket blanket =
        BlanketBuilder.straight(3, 2)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(1, Tone.DARK, 1_000_000)
            .build();
    Wording wording = new Wording(blanket);
    Relaxation row = new Relaxation.FreePieces(List.of(0, 1, 2), false, true);
    assertEquals(List.of("--free", "row1"), wording.options(row));
    assertEquals("free row1 of its lock", wording.of(row));
    assertEquals(
        Optional.of("leave row1 out of it"),
        wording.value(new Remedy.Step(row, BriefPath.of("pieces").item(0), Optional.empty())));
    assertEquals(List.of("--down", "1"), wording.options(new Relaxation.WorkFewerRows(1, 1)));
    assertEquals("work 1 row less", wording.of(new Relaxation.WorkFewerRows(1, 1)));
    assertEquals(List.of(), wording.options(new Relaxation.DropSymmetry()));
  }

  @Test
  void ofManyFaultsTheFirstAreToldAndTheOthersCounted() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(1, Tone.DARK, 1_000_000)
            .build();
    Fault fault = new Fault(RuleId.COMPLETE, List.of(0), List.of(0), List.of());
    SolveResult.Unfinished ten = new SolveResult.Unfinished(Collections.nCopies(10, fault));
    List<String> words = new Wording(blanket).of(ten);
    assertEquals(9, words.size());
    assertEquals("r1c1: round 1 has no yarn", words.get(7));
    assertEquals("and 2 more faults", words.get(8));
  }
}
