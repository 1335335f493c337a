package lozengy.solver.problem;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.brief.Rules;
import lozengy.model.check.BriefLine;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleBook;
import lozengy.model.score.FadeMeasure;
import lozengy.model.score.Points;

/** Freezes a blanket to a {@link Problem}. O(slots x yarns + pairs) time and memory. */
public final class ProblemCompiler {

  private final Blanket blanket;
  private final Optional<Sequences> earlier;
  private final Points points;
  private final CostScale scale;
  private final int yarns;
  private final Slots slots;
  private final PilePlaces pile;
  private final RoundYarns unlocked;
  private final ClashGraph graph;

  private ProblemCompiler(Blanket blanket, Optional<Sequences> earlier) {
    this.blanket = blanket;
    this.earlier = earlier;
    this.points = Points.of(blanket, earlier);
    this.scale = new CostScale(points);
    this.yarns = blanket.yarnCount();
    this.pile = PilePlaces.of(blanket);
    this.slots = slots(blanket, pile);
    List<BriefLine> lines = RuleBook.lines(blanket);
    this.unlocked = RoundYarns.unlocked(blanket, lines);
    this.graph = ClashGraph.of(blanket, lines);
  }

  /**
   * Freezes a blanket.
   *
   * @param blanket the blanket
   * @param earlier sequences to stay close to, where re-solving
   * @return the problem
   */
  public static Problem compile(Blanket blanket, Optional<Sequences> earlier) {
    return new ProblemCompiler(blanket, earlier).compile();
  }

  private Problem compile() {
    Rules rules = blanket.brief().rules();
    int[] slotClass = new int[slots.count()];
    long[][] needs = needs(slotClass);
    long[] balanceCost = new long[blanket.layerCount()];
    Arrays.setAll(balanceCost, layer -> scale.units(points.balance(layer)));
    long[] stock = new long[yarns];
    long[] usable = new long[yarns];
    long[] fixedUse = new long[yarns];
    for (int yarn = 0; yarn < yarns; yarn++) {
      stock[yarn] = blanket.yarn(yarn).stockMillimetres();
      usable[yarn] = blanket.yarns().usableMillimetres(yarn);
      fixedUse[yarn] = blanket.fixedUse().millimetres(yarn);
    }
    PairCostsCompiler pairs = new PairCostsCompiler(blanket, slots, points, scale);
    PairCosts pairCosts = pairs.compile();
    return new Problem(
        blanket,
        earlier,
        yarns,
        slots,
        domains(),
        new RoundCosts(pairCosts, pairs.innerCost(), unaryCost(), pairs.constantCost()),
        Clashes.of(blanket, graph, slots),
        new Balance(flat(points.targets().counts()), balanceCost),
        new YarnSupply(
            needs,
            slotClass,
            stock,
            usable,
            fixedUse,
            points.whole(Part.LEEWAY) * scale.unitsPerPoint / yarns,
            CostScale.HARD_COST / 16,
            CostScale.STEP_COST / 100.0),
        rules.copies().orElse(Integer.MAX_VALUE),
        new Prices(
            scale.unitsPerPoint,
            CostScale.STEP_COST,
            CostScale.HARD_COST,
            scale.units(points.copy()),
            scale.units(points.changed())),
        pile,
        PieceCounts.of(blanket, slots),
        OrderCosts.of(blanket, slots, points, scale));
  }

  private static Slots slots(Blanket blanket, PilePlaces pile) {
    int[] lead = blanket.orbits().leads();
    int pieces = lead.length;
    int[][] members = new int[pieces][];
    int[] start = new int[pieces + 1];
    for (int piece = 0; piece < pieces; piece++) {
      members[piece] = blanket.orbits().members(lead[piece]);
      start[piece + 1] = start[piece] + blanket.roundCount(lead[piece]);
    }
    int count = start[pieces];
    int[] piece = new int[count];
    int[] layer = new int[count];
    int[] fixed = new int[count];
    int[] free = new int[count];
    int freeCount = 0;
    for (int p = 0; p < pieces; p++) {
      boolean filled =
          blanket.domains().takesPile(lead[p]) && pile.fills(blanket.kind(lead[p]).ordinal());
      for (int slot = start[p]; slot < start[p + 1]; slot++) {
        int round = slot - start[p];
        piece[slot] = p;
        layer[slot] = start[p + 1] - 1 - slot;
        fixed[slot] = blanket.locked(lead[p], round);
        if (blanket.free(lead[p], round) && !filled) {
          free[freeCount++] = slot;
        }
      }
    }
    int[] freeSlots = Arrays.copyOf(free, freeCount);
    boolean tied = pieces < blanket.pieceCount();
    return new Slots(count, start, piece, layer, freeSlots, fixed, members, lead, tied);
  }

  private Domains domains() {
    Map<List<Integer>, Integer> known = new HashMap<>();
    List<int[]> yarnLists = new ArrayList<>();
    int[] of = new int[slots.count()];
    for (int slot = 0; slot < slots.count(); slot++) {
      List<Integer> allowed = allowed(slot);
      Integer domain = known.get(allowed);
      if (domain == null) {
        domain = yarnLists.size();
        known.put(allowed, domain);
        yarnLists.add(allowed.stream().mapToInt(Integer::intValue).toArray());
      }
      of[slot] = domain;
    }
    boolean[][] allows = new boolean[yarnLists.size()][yarns];
    for (int domain = 0; domain < allows.length; domain++) {
      for (int yarn : yarnLists.get(domain)) {
        allows[domain][yarn] = true;
      }
    }
    return new Domains(of, yarnLists.toArray(int[][]::new), allows);
  }

  private List<Integer> allowed(int slot) {
    int piece = slots.orbit()[slot];
    int round = slot - slots.orbitStart()[piece];
    int fixed = slots.fixedYarn()[slot];
    if (fixed != Sequences.OPEN) {
      boolean onlyFinished =
          blanket.domains().takesPile(piece) && !unlocked.allows(piece, round, fixed);
      return onlyFinished ? List.of() : List.of(fixed);
    }
    List<Integer> allowed = new ArrayList<>();
    for (int yarn = 0; yarn < yarns; yarn++) {
      boolean all = true;
      for (int member : slots.members()[piece]) {
        all &= unlocked.allows(member, round, yarn) && !besideImage(member, round, yarn);
      }
      if (all) {
        allowed.add(yarn);
      }
    }
    return allowed;
  }

  /**
   * Whether a round may not have a yarn because an image of it, which has the same, is beside it.
   */
  private boolean besideImage(int piece, int round, int yarn) {
    int number = blanket.index().number(piece, round);
    for (int entry = graph.from(number); slots.tied() && entry < graph.to(number); entry++) {
      int other = graph.other(entry);
      int with = blanket.index().piece(other);
      boolean image =
          with != piece
              && blanket.index().round(other) == round
              && blanket.orbits().lead(with) == blanket.orbits().lead(piece);
      if (image && graph.barred(entry).bars(yarn, yarn)) {
        return true;
      }
    }
    return false;
  }

  private long[][] needs(int[] slotClass) {
    Map<List<Integer>, Integer> known = new HashMap<>();
    List<long[]> needs = new ArrayList<>();
    for (int slot = 0; slot < slots.count(); slot++) {
      int piece = slots.orbit()[slot];
      int round = slot - slots.orbitStart()[piece];
      int lead = slots.lead()[piece];
      int kind = blanket.kind(lead).ordinal();
      int weight = slots.weight(piece);
      int[] members = slots.members()[piece];
      boolean border = round == blanket.roundCount(lead) - 1;
      int halves = border ? IntStream.of(members).map(blanket.borderSeams()::halves).sum() : 0;
      List<Integer> key = List.of(weight, kind, round, halves);
      Integer found = known.get(key);
      if (found == null) {
        long[] need = new long[yarns];
        for (int yarn = 0; yarn < yarns; yarn++) {
          for (int member : members) {
            need[yarn] += blanket.takenMillimetres(member, round, yarn);
          }
        }
        found = needs.size();
        known.put(key, found);
        needs.add(need);
      }
      slotClass[slot] = found;
    }
    return needs.toArray(long[][]::new);
  }

  private int[] unaryCost() {
    boolean keeps = points.changed() > 0;
    Optional<FadeMeasure> fades = points.fade();
    if (!keeps && fades.isEmpty()) {
      return null;
    }
    int[] cost = new int[slots.count() * yarns];
    if (keeps) {
      addKeep(cost);
    }
    fades.ifPresent(fade -> addFade(cost, fade));
    return cost;
  }

  private void addKeep(int[] cost) {
    int changed = scale.units(points.changed());
    for (int slot = 0; slot < slots.count(); slot++) {
      int piece = slots.orbit()[slot];
      if (!blanket.free(slots.lead()[piece], slot - slots.orbitStart()[piece])) {
        continue;
      }
      for (int member : slots.members()[piece]) {
        int before = earlier.get().yarn(member, slot - slots.orbitStart()[piece]);
        for (int yarn = 0; yarn < yarns; yarn++) {
          cost[slot * yarns + yarn] += yarn == before || before == Sequences.OPEN ? 0 : changed;
        }
      }
    }
  }

  private void addFade(int[] cost, FadeMeasure fade) {
    for (int slot = 0; slot < slots.count(); slot++) {
      int piece = slots.orbit()[slot];
      int round = slot - slots.orbitStart()[piece];
      for (int member : slots.members()[piece]) {
        for (int yarn = 0; yarn < yarns; yarn++) {
          double lost = points.share(Part.FADE) * fade.points(member, round, yarn);
          cost[slot * yarns + yarn] += scale.units(lost);
        }
      }
    }
  }

  private int[] flat(int[][] byLayer) {
    int[] flat = new int[byLayer.length * yarns];
    for (int layer = 0; layer < byLayer.length; layer++) {
      System.arraycopy(byLayer[layer], 0, flat, layer * yarns, yarns);
    }
    return flat;
  }
}
