package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.zip.CRC32;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PileEntry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.RandomBriefs;
import lozengy.solver.RandomLooks;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Domains;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/**
 * The same brief, seed and moves give the same arrangement, also after a change that is to make
 * none: short searches of small drawn briefs are held against kept ends. What an end is worth the
 * other tests tell. {@code -Dlozengy.ends=write} keeps the ends anew, where they are to differ.
 */
class SameAnswerTest {

  private static final Path KEPT = Path.of("src/test/resources/lozengy/solver/search/ends.txt");

  private static final long NO_FLOOR = Long.MIN_VALUE;

  @Test
  void plainBriefs() throws IOException {
    compare("plain", 16, seed -> RandomDraws.problem(RandomBriefs.of(seed, 3, 6)), this::searched);
  }

  @Test
  void briefsWithALook() throws IOException {
    compare(
        "look",
        20,
        seed -> RandomDraws.problem(RandomLooks.of(seed, RandomBriefs.of(seed, 3, 6))),
        this::searched);
  }

  @Test
  void briefsWithAPile() throws IOException {
    compare("pile", 10, SameAnswerTest::piled, this::searched);
  }

  @Test
  void briefsOfFewBorders() throws IOException {
    compare(
        "few", 8, seed -> RandomDraws.problem(FewBorderBriefs.of(seed, 30)), this::searchedShortly);
  }

  /** More than {@link DealSchedule#SLOTS_OF_SMALL} rounds. */
  @Test
  void largerBriefs() throws IOException {
    compare(
        "larger",
        6,
        seed ->
            RandomDraws.problem(
                    seed % 2 == 0
                        ? FewBorderBriefs.of(seed, 110)
                        : RandomDraws.ample(
                            RandomBriefs.of(seed, 12, 12), new SplittableRandom(seed)))
                .filter(each -> each.slots().free().length > DealSchedule.SLOTS_OF_SMALL),
        this::searchedShortly);
  }

  @Test
  void plansThatAreMadeAgain() throws IOException {
    compare(
        "again",
        12,
        seed -> {
          Brief brief = RandomBriefs.of(seed, 3, 6);
          Brief asked = seed % 3 == 0 ? RandomLooks.of(seed, brief) : brief;
          return seed % 4 == 0 ? piled(seed) : RandomDraws.problem(asked);
        },
        this::plannedAgain);
  }

  @Test
  void plansOfBordersAndOfCounts() throws IOException {
    compare(
        "plans",
        10,
        seed ->
            RandomDraws.problem(
                seed % 3 == 0
                    ? FewBorderBriefs.of(seed, 40)
                    : RandomLooks.of(seed, RandomBriefs.of(seed, 4, 9))),
        this::planned);
  }

  @Test
  void patternsOfBorders() throws IOException {
    compare("pattern", 3, SameAnswerTest::roomy, this::patterned);
  }

  @Test
  void tiles() throws IOException {
    compare("tiles", 3, seed -> RandomDraws.problem(FewBorderBriefs.of(seed, 120)), this::tiled);
  }

  /** Searches with all there is, by one walker or two. */
  private String searched(Problem problem, long seed) {
    return search(problem, seed, seed % 2 == 0 ? 30_000 : 60_000);
  }

  private String searchedShortly(Problem problem, long seed) {
    return search(problem, seed, 40_000);
  }

  private String search(Problem problem, long seed, long moves) {
    int walkers = 1 + (int) (seed % 3 % 2);
    Budget budget = new Budget(OptionalLong.of(moves), OptionalDouble.empty(), () -> false);
    try (Search search =
        new Search(problem, seed, walkers, 1, budget, () -> NO_FLOOR, () -> {}, Assertions.OFF)) {
      boolean started = search.start() || search.startAgain();
      long after = budget.spent();
      if (seed % 5 == 0) {
        search.improve(moves / 4);
        after = budget.spent();
      }
      search.improve();
      return "%s at %d, %s, %d moves, apart %s, near %s"
          .formatted(started, after, best(search), budget.spent(), search.apart(), nearest(search));
    }
  }

  private static String best(Search search) {
    return search.best() == null ? "none" : search.bestCost() + " " + print(search.best());
  }

  private static String nearest(Search search) {
    return print(search.nearest());
  }

  private String plannedAgain(Problem problem, long seed) {
    int[] before = RandomDraws.of(problem, new SplittableRandom(seed), seed % 2 == 0);
    Sequences plan = problem.sequences(before);
    if (seed % 3 == 0) {
      plan.set(0, 0, Sequences.OPEN);
    }
    Problem again = ProblemCompiler.compile(problem.blanket(), Optional.of(plan));
    Budget budget = new Budget(OptionalLong.of(120_000), OptionalDouble.empty(), () -> false);
    int walkers = 1 + (int) (seed % 2);
    try (Search search =
        new Search(again, seed, walkers, 1, budget, () -> NO_FLOOR, () -> {}, Assertions.OFF)) {
      boolean started = search.startFromEarlier(seed % 5 == 0);
      long after = budget.spent();
      search.improve();
      return "%s at %d, %s, %d moves".formatted(started, after, best(search), budget.spent());
    }
  }

  private String planned(Problem problem, long seed) {
    Draws draws = new Draws(seed);
    CountPlan counts = new CountPlan(problem, draws);
    StringBuilder said = new StringBuilder();
    said.append(print(counts.deal(60))).append(' ').append(counts.cost());
    said.append(counts.settled() ? " " + print(counts.dealAgain(1200)) : " not settled");
    BorderPlans plans = new BorderPlans(problem);
    said.append(plans.few() ? ", few" : ", many");
    CRC32 all = new CRC32();
    for (Domains domains : plans.all()) {
      for (int slot = 0; slot < problem.slots().count(); slot++) {
        add(all, domains.yarns(slot));
      }
    }
    return said + ", " + plans.all().size() + " plans " + Long.toHexString(all.getValue());
  }

  private String patterned(Problem problem, long seed) {
    BorderPattern pattern = new BorderPattern(problem, new Draws(seed));
    int[] planned = pattern.yarns(() -> false);
    return print(planned) + ", " + pattern.moves() + " moves";
  }

  private String tiled(Problem problem, long seed) {
    Walker walker = new Walker(problem, seed, Assertions.OFF);
    walker.deal(300, true);
    walker.barOverdrawing(true);
    walker.bordersOnly(seed % 2 == 0);
    double step = problem.prices().step();
    walker.beginLeg(step, step / 10, 12_000);
    Tiles tiles = Tiles.of(problem, 60);
    CRC32 all = new CRC32();
    tiles.phases().forEach(phase -> phase.forEach(tile -> add(all, tile)));
    StringBuilder made = new StringBuilder();
    try (Lockstep lockstep = new Lockstep(1)) {
      TiledWalk walk = new TiledWalk(walker, tiles, lockstep, seed);
      for (long done = 0; done < 12_000; ) {
        long now = walk.walk(12_000 - done);
        made.append(now).append(' ');
        done += now;
      }
    }
    return "%s, %s%s".formatted(Long.toHexString(all.getValue()), made, print(walker.state().yarn));
  }

  /** A brief of which some pieces, as they were dealt, lie finished on a pile. */
  private static Optional<Problem> piled(long seed) {
    Brief brief = RandomBriefs.of(seed, 3, 6);
    return RandomDraws.problem(brief)
        .flatMap(
            whole -> {
              int[] dealt = RandomDraws.of(whole, new SplittableRandom(seed), true);
              Brief piled = brief.withPile(pile(whole, whole.sequences(dealt), seed));
              return piled.pile().isEmpty() ? Optional.empty() : RandomDraws.problem(piled);
            });
  }

  private static List<PileEntry> pile(Problem whole, Sequences dealt, long seed) {
    Blanket blanket = whole.blanket();
    List<PileEntry> pile = new ArrayList<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      boolean laid = seed % 3 == 0 || (piece * 7 + seed) % 3 == 0;
      if (laid && blanket.roundsWorked(piece) == 0) {
        List<String> codes =
            Arrays.stream(dealt.of(piece)).mapToObj(yarn -> blanket.yarn(yarn).code()).toList();
        pile.add(new PileEntry(blanket.kind(piece), codes, 1, Set.of()));
      }
    }
    return pile;
  }

  /** A small board with yarn to spare. */
  private static Optional<Problem> roomy(long seed) {
    BlanketBuilder builder =
        seed % 2 == 0 ? BlanketBuilder.straight(3, 4) : BlanketBuilder.filled(2, 3);
    for (PieceKind kind : PieceKind.values()) {
      builder.motif(kind, BlanketBuilder.round(900), BlanketBuilder.round(1000, Tone.DARK));
    }
    builder.yarns(4, Tone.DARK, 20_000).yarns(3, Tone.LIGHT, 60_000);
    builder.ban("r1c1", "A").minContrast(seed % 3 == 0 ? 4 : 0);
    return Optional.of(ProblemCompiler.compile(builder.build(), Optional.empty()));
  }

  private static void compare(
      String name,
      int count,
      Function<Long, Optional<Problem>> drawn,
      BiFunction<Problem, Long, String> end)
      throws IOException {
    Map<String, String> ends = new TreeMap<>();
    for (long seed = 1; ends.size() < count; seed++) {
      Optional<Problem> problem = drawn.apply(seed);
      if (problem.isPresent()) {
        ends.put("%s %03d".formatted(name, seed), end.apply(problem.get(), seed));
      }
    }
    Map<String, String> kept = new TreeMap<>();
    for (String line : Files.exists(KEPT) ? Files.readAllLines(KEPT) : List.<String>of()) {
      kept.put(line.substring(0, line.indexOf(": ")), line.substring(line.indexOf(": ") + 2));
    }
    if ("write".equals(System.getProperty("lozengy.ends"))) {
      kept.keySet().removeIf(key -> key.startsWith(name + " "));
      kept.putAll(ends);
      Files.write(
          KEPT, kept.entrySet().stream().map(e -> e.getKey() + ": " + e.getValue()).toList());
    }
    kept.keySet().removeIf(key -> !key.startsWith(name + " "));
    assertEquals(lines(kept), lines(ends));
  }

  private static String lines(Map<String, String> ends) {
    StringBuilder lines = new StringBuilder();
    ends.forEach((key, end) -> lines.append(key).append(": ").append(end).append('\n'));
    return lines.toString();
  }

  private static String print(int[] yarns) {
    CRC32 sum = new CRC32();
    add(sum, yarns);
    return Long.toHexString(sum.getValue());
  }

  private static void add(CRC32 sum, int[] numbers) {
    for (int number : numbers) {
      sum.update(number);
      sum.update(number >> 8);
    }
    sum.update(255);
  }
}
