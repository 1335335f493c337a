package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Contradictions;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Check;
import lozengy.model.colour.Srgb;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.layout.Pairs;
import lozengy.model.making.MakeList;
import lozengy.model.progress.Anchor;
import lozengy.model.progress.Change;
import lozengy.model.progress.Changed;
import lozengy.model.progress.Changes;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.progress.Mark;
import lozengy.model.progress.MarkedArrangement;
import lozengy.model.reading.BriefReader;
import lozengy.model.yarn.YarnWork;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lives of a blanket, 50 events each, beside a plain diary: worked by rounds and steps, made,
 * joined, given up, worked otherwise, counted, counted by mistake, bought, gone, added, dealt to a
 * lot, swapped, resized, locked, undone, planned again. After each event states, rounds, yarns and
 * stock are those of the diary, to the millimetre, and so they are once the file is written and
 * read.
 */
class LivesTest {

  private static final int EVENTS = 50;
  private static final int ROUNDS = 3;
  private static final long SEAM_MM = 300;
  private static final String JOINING = "MUD";

  private static final String BRIEF =
      """
      format: lozengy-brief/1
      title: Life
      layout: { setting: straight, across: 3, down: 3 }
      motifs:
        square: { side: 10 cm, rounds: [ { metres: 1.1 }, { metres: 2.3 }, { metres: 3.7 } ] }
      yarns:
        - { code: MUD, name: Tidal mud, colour: "#2c2a29", left: 400 m }
        - { code: PEA, name: Peat, colour: "#4a3427", left: 400 m }
        - { code: SAM, name: Samphire, colour: "#5f7a4a", left: 400 m }
        - { code: REE, name: Reed, colour: "#a98d5c", left: 400 m }
        - { code: FOA, name: Foam, colour: "#e8e6df", left: 400 m }
      joining: { yarn: MUD, metres-per-metre: 3 }
      rules: { within-piece: adjacent-differ }
      """;

  /** What all lives have come to, so that the test can tell whether it tested anything. */
  private static final class Tally {
    int marks;
    int plannedWithBegun;
    int undone;
    int refused;
    int counted;
    int yarns;
    int plannedWithYarns;

    @Override
    public String toString() {
      return ("%d marks, %d plans with begun pieces, %d undone, %d refused, %d counted, %d of yarns,"
              + " %d plans after them")
          .formatted(marks, plannedWithBegun, undone, refused, counted, yarns, plannedWithYarns);
    }
  }

  private SplittableRandom random;
  private Arrangement now;
  private PlainDiary diary;

  /** The diary when it agreed last, before the event. */
  private PlainDiary agreed;

  private final Set<String> banned = new TreeSet<>();

  /** Whether yarns came or went since it was planned. */
  private boolean yarnsMoved;

  private int newYarns;
  private static final Tally TALLY = new Tally();

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void allCommandsAgreeWithAPlainDiary(long seed) {
    random = new SplittableRandom(seed);
    Blanket blanket = Blanket.of(BriefReader.read(SourceText.of("b.yaml", BRIEF)));
    now = found(blanket, Optional.empty(), seed).orElseThrow();
    diary = new PlainDiary();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      diary.rounds.put(name(piece), 0);
      diary.yarns.put(name(piece), codes(now, piece));
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      diary.add(blanket.yarn(yarn).code(), 400_000);
    }
    agree("at first");
    for (int event = 0; event < EVENTS; event++) {
      String told = "seed " + seed + ", event " + event;
      switch (random.nextInt(15)) {
        case 0, 1, 2 -> mark(rounds());
        case 3 -> mark(states(PieceState.MADE));
        case 4 -> mark(states(PieceState.JOINED));
        case 5 -> mark(states(PieceState.PLANNED));
        case 6 -> step();
        case 7 -> otherwise(told);
        case 8 -> mark(counted());
        case 9 -> undo();
        case 12, 13 -> yarn(told);
        case 10 -> planAgain(seed + event, List.of());
        default -> planAgain(seed + event, List.of(change()));
      }
      now = read(now);
      agree(told);
    }
  }

  @AfterAll
  static void somethingWasTested() {
    assertTrue(
        TALLY.marks > 120
            && TALLY.plannedWithBegun > 10
            && TALLY.undone > 10
            && TALLY.refused > 5
            && TALLY.counted > 10
            && TALLY.yarns > 15
            && TALLY.plannedWithYarns > 10,
        TALLY.toString());
  }

  // --- events -----------------------------------------------------------------------------------

  private List<String> somePieces() {
    List<String> names = new ArrayList<>();
    diary.rounds.keySet().stream().filter(name -> random.nextInt(4) == 0).forEach(names::add);
    return names.isEmpty() ? List.of(name(random.nextInt(now.blanket().pieceCount()))) : names;
  }

  private Mark rounds() {
    List<String> at = somePieces();
    int worked = 1 + random.nextInt(ROUNDS);
    List<String> overlapping = random.nextInt(3) == 0 ? somePieces() : List.of();
    for (String name : diary.rounds.keySet()) {
      if (overlapping.contains(name)) {
        diary.set(name, ROUNDS, true);
      } else if (at.contains(name)) {
        diary.set(name, worked, false);
      }
    }
    return Mark.NONE
        .withStates(
            overlapping.isEmpty()
                ? List.of()
                : List.of(new Mark.State("joined", PieceState.JOINED, overlapping)))
        .withRounds(List.of(new Mark.Rounds("rounds", worked, at)));
  }

  private Mark states(PieceState state) {
    List<String> at = somePieces();
    at.forEach(
        name ->
            diary.set(name, state == PieceState.PLANNED ? 0 : ROUNDS, state == PieceState.JOINED));
    return Mark.NONE.withStates(List.of(new Mark.State(state.word(), state, at)));
  }

  private String any(List<String> codes) {
    return codes.get(random.nextInt(codes.size()));
  }

  /**
   * A yarn comes, goes, is bought, or was counted by mistake, half the time beside worked rounds.
   */
  private void yarn(String told) {
    Mark worked = random.nextBoolean() ? rounds() : Mark.NONE;
    List<String> there =
        diary.stock.keySet().stream().filter(code -> !diary.gone.contains(code)).toList();
    List<String> counted = there.stream().filter(diary.countedRounds::containsKey).toList();
    int way = random.nextInt(6);
    if (way == 0 && diary.gone.size() < 2) {
      String code = any(there.stream().filter(each -> !each.equals(JOINING)).toList());
      refused(
          worked.withYarns(
              List.of(new Mark.Gone("gone", code), new Mark.Bought("b", code, 0, loose(1)))),
          told);
      diary.gone(code);
      mark(worked.withYarns(List.of(new Mark.Gone("gone", code))));
    } else if (way == 1 && !counted.isEmpty()) {
      String code = any(counted);
      diary.uncount(code);
      mark(worked.withYarns(List.of(new Mark.Uncounted("uncount", code))));
    } else if (way == 2 && newYarns < 4) {
      String code = "NEW" + newYarns++;
      Yarn added = Yarn.of(code, new Srgb(random.nextInt(256), 99, 99)).withLeft(loose(50_000));
      diary.add(code, 50_000);
      mark(worked.withYarns(List.of(new Mark.Added("add", added))));
    } else if (way == 3 && newYarns < 4) {
      String code = "LOT" + newYarns++;
      Mark.OfYarn lot = new Mark.Lot("lot", code, any(there));
      diary.add(code, 70_000);
      mark(worked.withYarns(List.of(lot, new Mark.Bought("bought", code, 0, loose(70_000)))));
    } else {
      boolean back = !diary.gone.isEmpty() && random.nextBoolean();
      String code = back ? diary.gone.iterator().next() : any(there);
      long more = 1 + random.nextInt(200_000);
      refused(
          worked
              .withYarns(List.of(new Mark.Bought("bought", code, 0, loose(more))))
              .withCounts(List.of(new Mark.Count("left", code, loose(more).get()))),
          told);
      diary.buy(code, more);
      mark(worked.withYarns(List.of(new Mark.Bought("bought", code, 0, loose(more)))));
    }
    TALLY.yarns++;
    yarnsMoved = true;
  }

  private static Optional<YarnAmount> loose(long millimetres) {
    return Optional.of(new YarnAmount.Length(millimetres));
  }

  private void refused(Mark mark, String told) {
    assertThrows(InputException.class, () -> MarkedArrangement.of(now, mark), told);
    TALLY.refused++;
  }

  private Mark counted() {
    String yarn = any(diary.stock.keySet().stream().filter(y -> !diary.gone.contains(y)).toList());
    long left = 300_000 + random.nextInt(100_000);
    diary.count(yarn, left);
    TALLY.counted++;
    return Mark.NONE.withCounts(List.of(new Mark.Count("left", yarn, new YarnAmount.Length(left))));
  }

  private void step() {
    MakeList list = MakeList.whole(now.blanket(), now.sequences(), now.diary().workedWhenPlanned());
    if (list.steps() == 0) {
      return;
    }
    int from = 1 + random.nextInt(list.steps());
    int to = Math.min(list.steps(), from + random.nextInt(2));
    List<String> at = random.nextBoolean() ? List.of() : somePieces();
    boolean any = false;
    for (MakeList.Batch batch : list.batches().subList(from - 1, to)) {
      for (MakeList.Task task : batch.tasks()) {
        String name = name(task.piece());
        boolean meant = at.isEmpty() || at.contains(name);
        any |= meant;
        if (meant && diary.rounds.get(name) <= task.round()) {
          diary.set(name, task.round() + 1, false);
        }
      }
    }
    Mark mark = Mark.NONE.withSteps(List.of(new Mark.Step("step", from, to, at)));
    if (any) {
      mark(mark);
    } else {
      assertThrows(InputException.class, () -> MarkedArrangement.of(now, mark));
      TALLY.refused++;
    }
  }

  /** A round within the border is worked otherwise: the rest can still be planned around it. */
  private void otherwise(String told) {
    int piece = random.nextInt(now.blanket().pieceCount());
    String name = name(piece);
    int round = random.nextInt(ROUNDS - 1);
    int worked = diary.rounds.get(name);
    String code = any(diary.stock.keySet().stream().toList());
    List<Optional<String>> codes = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      codes.add(i == round ? Optional.of(code) : Optional.empty());
    }
    PieceNote note = new PieceNote(List.of(name), codes, PieceState.PLANNED, Set.of());
    Mark mark = Mark.NONE.withWorked(List.of(new Mark.Work("worked", note)));
    if (worked > 0 && worked <= round) {
      assertThrows(InputException.class, () -> MarkedArrangement.of(now, mark), told);
      TALLY.refused++;
      return;
    }
    diary.yarns.get(name).set(round, code);
    diary.set(name, worked == 0 ? ROUNDS : worked, diary.joined.contains(name));
    mark(mark);
  }

  /** Marks what the diary has already. */
  private void mark(Mark mark) {
    Arrangement marked = MarkedArrangement.of(now, mark);
    if (marked != now) {
      diary.remember(agreed);
      TALLY.marks++;
    }
    now = marked;
  }

  private void undo() {
    if (!diary.canUndo()) {
      assertEquals(Optional.empty(), MarkedArrangement.undone(now));
      return;
    }
    for (int i = random.nextInt(3); i >= 0 && diary.canUndo(); i--) {
      diary.undo();
      now = MarkedArrangement.undone(read(now)).orElseThrow();
      TALLY.undone++;
    }
  }

  private Change change() {
    List<String> codes =
        diary.stock.keySet().stream().filter(code -> !code.equals(JOINING)).toList();
    String from = codes.get(random.nextInt(codes.size()));
    // of more than one yarn that went, one comes back, so that the rest is enough
    String to =
        banned.size() > 1 ? banned.iterator().next() : codes.get(random.nextInt(codes.size()));
    int down = now.blanket().layout().size().down();
    return switch (random.nextInt(5)) {
      case 0 -> new Change.Swap("swap", from, to);
      case 1 -> new Change.Resize("size", 3, down + (down > 5 ? -1 : 1), Anchor.TOP_LEFT);
      case 2 -> new Change.Resize("size", 3, Math.max(1, down - 1), Anchor.TOP_LEFT);
      case 3 -> new Change.Lock("lock", somePieces());
      default -> new Change.Free("free", somePieces());
    };
  }

  private void planAgain(long seed, List<Change> changes) {
    Changed changed;
    try {
      changed =
          Changes.apply(
              new CurrentPlan(now.blanket().brief(), Optional.of(now.sequences())), changes);
    } catch (InputException e) {
      TALLY.refused++; // the same yarn, the same size, a worked piece outside, nothing locked
      return;
    }
    if (changes.stream().anyMatch(Change.Resize.class::isInstance)) {
      Set<String> there = Set.copyOf(names(changed.blanket()));
      for (String gone : List.copyOf(diary.rounds.keySet())) {
        if (!there.contains(gone)) {
          assertEquals(0, diary.rounds.get(gone), gone + " is worked");
        }
      }
    }
    Optional<Arrangement> found = found(changed.blanket(), changed.earlier(), seed);
    if (found.isEmpty()) {
      return;
    }
    assertEquals(List.of(), Check.faults(changed.blanket(), found.get().sequences()));
    boolean begun = diary.rounds.values().stream().anyMatch(n -> n > 0 && n < ROUNDS);
    TALLY.plannedWithBegun += begun ? 1 : 0;
    TALLY.plannedWithYarns += yarnsMoved ? 1 : 0;
    yarnsMoved = false;
    Arrangement plan = found.get();
    now = plan.withDiary(now.diary().plannedAgain(plan.blanket(), plan.sequences()));
    List<String> names = names(now.blanket());
    diary.rounds.keySet().retainAll(names);
    diary.yarns.keySet().retainAll(names);
    for (int piece = 0; piece < names.size(); piece++) {
      int worked = diary.rounds.computeIfAbsent(names.get(piece), name -> 0);
      List<String> planned = codes(now, piece);
      List<String> before = diary.yarns.getOrDefault(names.get(piece), planned);
      assertEquals(before.subList(0, worked), planned.subList(0, worked), names.get(piece));
      diary.yarns.put(names.get(piece), planned);
    }
    diary.planned();
    for (Change change : changes) {
      if (change instanceof Change.Swap swap) {
        banned.add(swap.from());
        banned.remove(swap.to());
      }
    }
  }

  private static Optional<Arrangement> found(
      Blanket blanket, Optional<Sequences> earlier, long seed) {
    SolveOptions options = SolveOptions.defaults().withSeed(seed).withMoves(2000).withThreads(1);
    return Solver.solve(blanket, earlier, options) instanceof SolveResult.Found found
        ? Optional.of(found.arrangement())
        : Optional.empty();
  }

  // --- agreement --------------------------------------------------------------------------------

  private void agree(String told) {
    Blanket blanket = now.blanket();
    assertEquals(List.copyOf(diary.rounds.keySet()), names(blanket), told);
    long[] needed = new long[blanket.yarnCount()];
    long[] worked = new long[needed.length];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      String name = name(piece);
      int rounds = diary.rounds.get(name);
      PieceState state =
          diary.joined.contains(name)
              ? PieceState.JOINED
              : rounds == ROUNDS ? PieceState.MADE : PieceState.PLANNED;
      assertEquals(state, blanket.state(piece), told + ": " + name);
      assertEquals(rounds, blanket.roundsWorked(piece), told + ": " + name);
      assertEquals(diary.yarns.get(name), codes(now, piece), told + ": " + name);
      for (int round = 0; round < ROUNDS; round++) {
        String code = diary.yarns.get(name).get(round);
        long millimetres = new long[] {1100, 2300, 3700}[round];
        if (!diary.settled(code, name, round)) {
          needed[blanket.yarnIndex(code)] += millimetres;
          worked[blanket.yarnIndex(code)] += round < rounds ? millimetres : 0;
        }
      }
    }
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      String first = name(seams.first()[seam]);
      String second = name(seams.second()[seam]);
      if (!diary.seamSettled(JOINING, first, second)) {
        needed[blanket.yarnIndex(JOINING)] += SEAM_MM;
        worked[blanket.yarnIndex(JOINING)] += diary.seamJoined(first, second) ? SEAM_MM : 0;
      }
    }
    long[] used = blanket.usedMillimetres(now.sequences());
    List<YarnWork> work = YarnWork.of(blanket, now.sequences());
    for (int yarn = 0; yarn < needed.length; yarn++) {
      String code = blanket.yarn(yarn).code();
      assertEquals(
          diary.stock.get(code), blanket.yarn(yarn).stockMillimetres(), told + ": " + code);
      assertEquals(needed[yarn], used[yarn], told + ": " + code);
      assertEquals(
          diary.stock.get(code) - worked[yarn],
          work.get(yarn).atHandMillimetres(),
          told + ": at hand of " + code);
    }
    agreed = diary.copy();
  }

  private static Arrangement read(Arrangement arrangement) {
    String text = ArrangementWriter.text(arrangement);
    StatedArrangement stated = ArrangementReader.read(SourceText.of("a.json", text));
    assertFalse(text.contains("last_mark"));
    assertEquals(List.of(), Contradictions.of(stated));
    Arrangement read = stated.scored();
    assertEquals(text, ArrangementWriter.text(read));
    return read;
  }

  private String name(int piece) {
    return now.blanket().place(piece).name();
  }

  private static List<String> names(Blanket blanket) {
    return blanket.layout().places().stream().map(place -> place.name()).toList();
  }

  private static List<String> codes(Arrangement arrangement, int piece) {
    List<String> codes = new ArrayList<>();
    Arrays.stream(arrangement.sequences().of(piece))
        .forEach(yarn -> codes.add(arrangement.blanket().yarn(yarn).code()));
    return codes;
  }
}
