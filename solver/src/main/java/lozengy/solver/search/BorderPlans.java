package lozengy.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.solver.problem.Domains;
import lozengy.solver.problem.Problem;

/**
 * Plans of borders for briefs where few border yarns may meet each other: which yarns each border
 * is to take, so that whatever is dealt within them keeps every seam. The borders are parted into
 * two sides, as every layout's seams are bipartite, or into three by the rows of the lattice, and
 * each part takes yarns that may all meet those of the others. Where locks or zones speak against
 * that, {@link BorderColouring} goes round them. The plan of counts then decides within the plan of
 * borders, so that both can be kept.
 *
 * <p>With five yarns or more that may all meet, on a small blanket four, single changes suffice:
 * there a random deal does as well, and these plans are only made where it fails. Centres that may
 * clash are planned in the same way, apart from the borders.
 */
final class BorderPlans {

  /** Yarns that all may meet each other, from which on borders are not few. */
  private static final int MANY = 5;

  /** The same where a board is so small that it is dealt afresh often. */
  private static final int MANY_OF_SMALL = 4;

  /** Most plans that are kept, those of least cost by their counts. */
  private static final int MOST_PLANS = 8;

  /** Most ways to part the yarns that are looked at. */
  private static final int MOST_WAYS = 24;

  private static final int EXCHANGES = 300;

  /** A seed of its own, so that all searches of a brief have the same plans in the same order. */
  private static final long SEED = 0x5eed;

  private final Problem problem;
  private final BorderGraph graph;
  private final BorderPlans centres;
  private final int[] yarns;
  private final boolean few;
  private List<Domains> plans;

  BorderPlans(Problem problem) {
    this(problem, BorderGraph.of(problem), BorderGraph.ofCentres(problem));
  }

  private BorderPlans(Problem problem, BorderGraph graph, BorderGraph centres) {
    this.problem = problem;
    this.graph = graph;
    this.centres = centres == null ? null : new BorderPlans(problem, centres, null);
    this.yarns = graph.yarns();
    int free = problem.slots().free().length;
    int many = free > DealSchedule.SLOTS_OF_SMALL ? MANY : MANY_OF_SMALL;
    this.few = free > 0 && cliques(many).isEmpty();
  }

  /** Whether so few yarns may meet that borders are to be planned. */
  boolean few() {
    return few || fewCentres();
  }

  /** Whether so few yarns of centres may meet, where centres may clash at all. */
  private boolean fewCentres() {
    return centres != null && centres.few;
  }

  /** The domains of each plan, best first by what its counts cost; at least one. */
  synchronized List<Domains> all() {
    if (plans == null) {
      plans = fewCentres() ? withCentres(make(), centres.make()) : make();
    }
    return plans;
  }

  /** Plans of borders, each with a plan of centres. */
  private List<Domains> withCentres(List<Domains> borders, List<Domains> ofCentres) {
    List<Domains> both = new ArrayList<>();
    for (int i = 0; i < Math.max(borders.size(), ofCentres.size()); i++) {
      Domains border = borders.get(i % borders.size());
      Domains centre = ofCentres.get(i % ofCentres.size());
      boolean[][] take = new boolean[graph.size()][problem.yarns()];
      for (int orbit = 0; orbit < take.length; orbit++) {
        for (int yarn : centre.yarns(centres.graph.slot(orbit))) {
          take[orbit][yarn] = true;
        }
      }
      both.add(centres.narrowed(border, take));
    }
    return both;
  }

  private record Plan(Domains domains, int clashes, long cost) {}

  private List<Domains> make() {
    List<Plan> found = new ArrayList<>();
    int[] sides = graph.sides();
    for (List<Set<Integer>> parts : pairs()) {
      add(found, sides, parts);
    }
    List<int[]> rows = List.of(rows(1), rows(-1));
    for (List<Set<Integer>> parts : triples()) {
      rows.forEach(row -> add(found, row, parts));
    }
    if (found.isEmpty()) {
      return List.of(problem.domains());
    }
    return found.stream()
        .sorted(Comparator.comparingInt(Plan::clashes).thenComparingLong(Plan::cost))
        .limit(MOST_PLANS)
        .map(Plan::domains)
        .toList();
  }

  private void add(List<Plan> found, int[] partOf, List<Set<Integer>> parts) {
    Draws draws = new Draws(SEED);
    boolean[][] take = new boolean[graph.size()][problem.yarns()];
    for (int orbit = 0; orbit < take.length; orbit++) {
      boolean any = false;
      for (int yarn : problem.domains().yarns(graph.slot(orbit))) {
        take[orbit][yarn] = parts.get(partOf[orbit]).contains(yarn);
        any |= take[orbit][yarn];
      }
      if (!any) {
        for (int yarn : problem.domains().yarns(graph.slot(orbit))) {
          take[orbit][yarn] = true;
        }
      }
    }
    int clashes = clashes(take);
    if (clashes > 0) {
      int[] colouring = new BorderColouring(problem, graph, draws, take).find();
      if (colouring != null) {
        narrow(take, colouring);
        clashes = 0;
      }
    }
    Domains domains = domains(take);
    CountPlan counts = new CountPlan(problem, domains, draws);
    counts.deal(EXCHANGES);
    found.add(new Plan(domains, clashes, counts.cost()));
  }

  /** Seams whose borders may clash. */
  private int clashes(boolean[][] take) {
    int clashes = 0;
    for (int orbit = 0; orbit < take.length; orbit++) {
      for (int other : graph.beside(orbit)) {
        clashes += other > orbit && mayClash(take[orbit], take[other]) ? 1 : 0;
      }
    }
    return clashes;
  }

  private boolean mayClash(boolean[] one, boolean[] other) {
    for (int a : yarns) {
      for (int b : yarns) {
        if (one[a] && other[b] && graph.clash(a, b)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Leaves a colouring's own yarns where more would clash. */
  private void narrow(boolean[][] take, int[] colouring) {
    for (int orbit = 0; orbit < take.length; orbit++) {
      if (!take[orbit][colouring[orbit]]) {
        only(take, orbit, colouring);
      }
    }
    for (int orbit = 0; orbit < take.length; orbit++) {
      for (int other : graph.beside(orbit)) {
        if (mayClash(take[orbit], take[other])) {
          only(take, orbit, colouring);
          only(take, other, colouring);
        }
      }
    }
  }

  private static void only(boolean[][] take, int orbit, int[] colouring) {
    Arrays.fill(take[orbit], false);
    take[orbit][colouring[orbit]] = true;
  }

  /** The problem's domains with those of borders narrowed. */
  private Domains domains(boolean[][] take) {
    return narrowed(problem.domains(), take);
  }

  /** Domains with those of the graph's slots narrowed. */
  private Domains narrowed(Domains all, boolean[][] take) {
    List<int[]> lists = new ArrayList<>(List.of(all.yarns()));
    int[] of = all.of().clone();
    Map<BitSet, Integer> known = new HashMap<>();
    for (int orbit = 0; orbit < take.length; orbit++) {
      BitSet set = new BitSet();
      for (int yarn : all.yarns(graph.slot(orbit))) {
        set.set(yarn, take[orbit][yarn]);
      }
      if (set.isEmpty()) {
        continue;
      }
      Integer domain = known.get(set);
      if (domain == null) {
        domain = lists.size();
        known.put(set, domain);
        lists.add(set.stream().toArray());
      }
      of[graph.slot(orbit)] = domain;
    }
    boolean[][] allows = new boolean[lists.size()][problem.yarns()];
    for (int domain = 0; domain < allows.length; domain++) {
      for (int yarn : lists.get(domain)) {
        allows[domain][yarn] = true;
      }
    }
    return new Domains(of, lists.toArray(int[][]::new), allows);
  }

  /**
   * By piece 0 to 2, so that no two on a seam are alike: rows of the lattice one way or the other.
   */
  private int[] rows(int way) {
    boolean onPoint = problem.blanket().layout().size().setting() == Setting.ON_POINT;
    int[] row = new int[graph.size()];
    for (int orbit = 0; orbit < row.length; orbit++) {
      Place place = problem.blanket().place(problem.slots().lead()[orbit]);
      int across = onPoint ? place.x() : place.x() / 2 + place.y() / 2;
      int down = onPoint ? place.y() : place.x() / 2 - place.y() / 2;
      row[orbit] = Math.floorMod(way > 0 ? across : down, 3);
    }
    return row;
  }

  /** Ways to part yarns in two, each yarn of the one part free to meet each of the other. */
  private List<List<Set<Integer>>> pairs() {
    Set<List<Set<Integer>>> pairs = new LinkedHashSet<>();
    for (int a : yarns) {
      for (int b : yarns) {
        Set<Integer> other = meetAll(new LinkedHashSet<>(List.of(a, b)));
        if (!other.isEmpty()) {
          Set<Integer> one = meetAll(other);
          pairs.add(List.of(one, other));
          pairs.add(List.of(other, one));
        }
      }
    }
    return pairs.stream().limit(MOST_WAYS).toList();
  }

  /** Ways to part yarns in three. */
  private List<List<Set<Integer>>> triples() {
    Set<List<Set<Integer>>> triples = new LinkedHashSet<>();
    for (int[] clique : cliques(3)) {
      List<Set<Integer>> parts = new ArrayList<>();
      for (int yarn : clique) {
        parts.add(new LinkedHashSet<>(List.of(yarn)));
      }
      for (int yarn : yarns) {
        grow(parts, yarn);
      }
      for (int[] order : ORDERS) {
        triples.add(List.of(parts.get(order[0]), parts.get(order[1]), parts.get(order[2])));
      }
    }
    return triples.stream().limit(MOST_WAYS).toList();
  }

  private static final int[][] ORDERS = {
    {0, 1, 2}, {1, 2, 0}, {2, 0, 1}, {0, 2, 1}, {2, 1, 0}, {1, 0, 2}
  };

  private void grow(List<Set<Integer>> parts, int yarn) {
    for (Set<Integer> part : parts) {
      boolean fits = true;
      for (Set<Integer> other : parts) {
        fits &= other == part || other.stream().noneMatch(each -> graph.clash(yarn, each));
      }
      if (fits) {
        part.add(yarn);
        return;
      }
    }
  }

  private Set<Integer> meetAll(Set<Integer> all) {
    Set<Integer> meet = new LinkedHashSet<>();
    for (int yarn : yarns) {
      if (all.stream().noneMatch(each -> graph.clash(yarn, each))) {
        meet.add(yarn);
      }
    }
    return meet;
  }

  /** Sets of so many yarns that all may meet; the first {@link #MOST_WAYS}. */
  private List<int[]> cliques(int size) {
    List<int[]> found = new ArrayList<>();
    extend(new int[size], 0, 0, found);
    return found;
  }

  private void extend(int[] clique, int length, int from, List<int[]> found) {
    if (length == clique.length) {
      found.add(clique.clone());
      return;
    }
    for (int i = from; i < yarns.length && found.size() < MOST_WAYS; i++) {
      boolean meets = true;
      for (int j = 0; j < length; j++) {
        meets &= !graph.clash(yarns[i], clique[j]);
      }
      if (meets) {
        clique[length] = yarns[i];
        extend(clique, length + 1, i + 1, found);
      }
    }
  }
}
