package lozengy.solver.explain.remedy;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleBook;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.Limits;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Finding.Slot;
import lozengy.solver.explain.argument.Reason;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.argument.RoundReason;
import lozengy.solver.explain.conflict.Conflict;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.Root;
import org.junit.jupiter.api.Test;

/** Which findings are told as causes, and which causes come to light later. */
class CauseTest {

  private static final ConsistencyOracle ORACLE =
      new ConsistencyOracle(1, Limits.of(10_000, 10_000));

  private static final Set<Tone> LIGHT = Set.of(Tone.LIGHT);

  /** Where the lines are, and how many findings more rest on them. */
  private static List<String> told(Blanket blanket) {
    return told(Cause.of(blanket, Root.findings(Requirements.all(blanket)), ORACLE));
  }

  private static List<String> told(List<Cause> causes) {
    return causes.stream()
        .map(
            cause ->
                String.join(
                        ", ",
                        cause.conflict().lines().stream()
                            .map(line -> line.path().toString())
                            .toList())
                    + (cause.more() > 0 ? " and " + cause.more() : ""))
        .toList();
  }

  /** A square of so many rounds of a tone that no yarn has. */
  private static Blanket toneless(int rounds) {
    Round[] all = new Round[rounds];
    Arrays.fill(all, round(1000, Tone.LIGHT));
    return BlanketBuilder.straight(1, 1)
        .motif(PieceKind.SQUARE, all)
        .yarns(2, Tone.DARK, 1_000_000)
        .build();
  }

  @Test
  void fourFindingsOfASortAreToldAndTheOthersCounted() {
    String path = "motifs.square.rounds[%d].tone";
    List<String> four = Stream.of(0, 1, 2, 3).map(path::formatted).toList();
    assertEquals(four, told(toneless(4)));
    List<String> seven = new ArrayList<>(four);
    seven.set(3, path.formatted(3) + " and 3");
    assertEquals(seven, told(toneless(7)));
    List<Cause> causes =
        Cause.of(toneless(5), Root.findings(Requirements.all(toneless(5))), ORACLE);
    Reason first = new RoundReason.NoSuchTone(List.of(0), 0, LIGHT);
    assertEquals(Optional.of(first), causes.get(0).reason());
    assertEquals(Optional.of(first), causes.get(0).first());
    assertEquals(new BitSet(), causes.get(0).stocks());
  }

  /** Finds the same whatever is asked for, so that it rests on no line. */
  private record Always(boolean alike) implements Argument {
    @Override
    public List<Finding> findings(Requirements asked) {
      return List.of(finding(0));
    }

    @Override
    public Object sort(Reason reason) {
      return alike ? "all alike" : reason;
    }
  }

  @Test
  void whatIsNotToldIsCountedWithTheLastThatIs() {
    List<Finding> six = Stream.of(1, 2, 3, 4, 5, 6).map(CauseTest::finding).toList();
    Map<Argument, List<Finding>> found = new LinkedHashMap<>();
    found.put(new Always(false), six);
    assertEquals(List.of(" and 5"), told(Cause.of(toneless(7), found, ORACLE)));
    found.put(new Always(true), six);
    assertEquals(List.of(" and 11"), told(Cause.of(toneless(7), found, ORACLE)));
    found.remove(new Always(false));
    assertEquals(List.of(" and 5"), told(Cause.of(toneless(7), found, ORACLE)));
  }

  private static BlanketBuilder row(int pieces) {
    return BlanketBuilder.straight(pieces, 1)
        .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT))
        .yarns(2, Tone.LIGHT, 1_000_000)
        .yarn(Tone.DARK, 1_000_000);
  }

  @Test
  void findingsThatRestOnTheSameLinesAreOneCause() {
    String tone = "motifs.square.rounds[0].tone, ";
    assertEquals(List.of(tone + "pieces[0].not r1c1"), told(row(2).ban("r1c1", "A", "B").build()));
    assertEquals(
        List.of(tone + "pieces[0].not row1 and 1"), told(row(2).ban("row1", "A", "B").build()));
    assertEquals(
        List.of(tone + "pieces[0].not r1c1", tone + "pieces[1].not r1c2"),
        told(row(2).ban("r1c1", "A", "B").ban("r1c2", "A", "B").build()));
    // more than three are put together
    assertEquals(
        List.of(tone + "pieces[0].not row1 and 4"), told(row(5).ban("row1", "A", "B").build()));
  }

  @Test
  void stocksThatACauseRestsOn() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT))
            .yarn(Tone.DARK, 1_000_000)
            .yarns(2, Tone.LIGHT, 900)
            .build();
    List<Cause> causes = Cause.of(blanket, Root.findings(Requirements.all(blanket)), ORACLE);
    assertEquals(List.of("motifs.square.rounds[0].tone, yarns[1], yarns[2]"), told(causes));
    assertEquals(set(1, 2), causes.get(0).stocks());
  }

  private static BitSet set(int... bits) {
    BitSet set = new BitSet();
    Arrays.stream(bits).forEach(set::set);
    return set;
  }

  @Test
  void theConstraintModelGivesLinesWithoutAReason() {
    // the middle border is hemmed in by three others
    Blanket blanket =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, round(1000))
            .yarns(2, Tone.DARK, 1_000_000)
            .note("r1c1", PieceState.PLANNED, "A")
            .note("r3c2", PieceState.PLANNED, "A")
            .build();
    Cause cause = Cause.ofRefuted(blanket, ORACLE);
    assertEquals(
        List.of("rules.neighbour-borders, pieces[0] r1c1, pieces[1] r3c2"), told(List.of(cause)));
    assertEquals(Optional.empty(), cause.reason());
    assertEquals(Optional.empty(), cause.first());
    assertEquals(0, cause.more());
  }

  /** A finding that says of a round that no yarn has its tone. */
  private static Finding finding(int round) {
    return Finding.of(
        new RoundReason.NoSuchTone(List.of(0), round, LIGHT), List.of(new Slot(0, round)));
  }

  private static Map<Argument, List<Finding>> findings(int... rounds) {
    Argument argument = asked -> List.of();
    return Map.of(argument, Arrays.stream(rounds).mapToObj(CauseTest::finding).toList());
  }

  private static Cause cause(Blanket blanket, int round, String... paths) {
    Optional<Reason> reason = Optional.of(round).filter(r -> r >= 0).map(r -> finding(r).reason());
    List<BriefLine> lines =
        RuleBook.lines(blanket).stream()
            .filter(line -> List.of(paths).contains(line.path().toString()))
            .toList();
    return new Cause(reason, reason, 0, new Conflict(lines, true));
  }

  @Test
  void aCauseIsNewThatSaysNothingThatWasSaid() {
    Blanket blanket = toneless(9);
    String tone = "motifs.square.rounds[%d].tone";
    Cause known = cause(blanket, 0, tone.formatted(0), "yarns[0]");
    LaterCauses later = new LaterCauses(findings(0, 1), List.of(known));
    assertEquals(List.of(), later.causes());
    // the same matter, though never told; the same lines; the same stock
    Cause matter = cause(blanket, 1, tone.formatted(1));
    Cause lines = cause(blanket, -1, tone.formatted(0), "yarns[0]");
    Cause stock = cause(blanket, 2, tone.formatted(2), "yarns[0]");
    later.add(findings(), List.of(matter, lines, stock));
    assertEquals(List.of(), later.causes());
    Cause other = cause(blanket, 3, tone.formatted(3), "yarns[1]");
    Cause refuted = cause(blanket, -1, tone.formatted(4));
    later.add(findings(3, 5), List.of(other, refuted));
    assertEquals(List.of(other, refuted), later.causes());
    // once they are known they are not new, nor is what was found and not told
    Cause found = cause(blanket, 5, tone.formatted(5));
    Cause again = cause(blanket, 6, tone.formatted(6), "yarns[1]");
    Cause same = cause(blanket, -1, tone.formatted(4));
    later.add(findings(), List.of(found, again, same));
    assertEquals(List.of(other, refuted), later.causes());
  }
}
