package lozengy.solver;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.Layout;

/** Random looks for a brief, each of its wishes now and then. */
public final class RandomLooks {

  private static final String[] GROUPS = {"all", "squares", "outline", "row1", "top"};

  private final SplittableRandom random;
  private final Layout layout;
  private final List<String> codes;

  private RandomLooks(long seed, Brief brief) {
    this.random = new SplittableRandom(seed * 31 + 7);
    this.layout = Layout.of(brief.layout());
    this.codes = brief.yarns().stream().map(Yarn::code).toList();
  }

  /** The brief with a random look, which may not fit it. */
  public static Brief of(long seed, Brief brief) {
    RandomLooks looks = new RandomLooks(seed, brief);
    return looks.ruled(looks.ordered(brief.withLook(looks.look())));
  }

  /** The brief with nothing but counts for a look. */
  public static Brief counted(long seed, Brief brief) {
    return brief.withLook(Look.NONE.withCounts(new RandomLooks(seed, brief).counts()));
  }

  /**
   * The brief with a symmetry, few copies, and images of each other that are worked: all alike, all
   * in their own way, or one of them; from few sequences, so that many are alike.
   */
  public static Brief symmetricWorked(long seed, Brief brief) {
    RandomLooks looks = new RandomLooks(seed, brief);
    int symmetry = 1 + looks.random.nextInt(Symmetry.values().length - 1);
    Rules rules = brief.rules();
    OptionalInt copies = OptionalInt.of(1 + looks.random.nextInt(2));
    Brief asked =
        brief
            .withLook(Look.NONE.withSymmetry(Symmetry.values()[symmetry]))
            .withRules(
                Rules.DEFAULT
                    .withMinContrast(rules.minContrast())
                    .withWithinPiece(rules.withinPiece())
                    .withCopies(copies)
                    .withKeepBack(rules.keepBackPercent()))
            .withPieces(List.of());
    return asked.withPieces(looks.worked(asked));
  }

  private List<PieceNote> worked(Brief asked) {
    Blanket plain = Blanket.ofUnjudged(asked);
    Map<Integer, List<List<String>>> sequences = new HashMap<>();
    List<PieceNote> notes = new ArrayList<>();
    for (int lead : plain.orbits().leads()) {
      List<List<String>> few =
          sequences.computeIfAbsent(
              plain.roundCount(lead), rounds -> List.of(codes(rounds), codes(rounds)));
      List<String> alike = few.get(random.nextInt(2));
      int way = random.nextInt(5);
      for (int piece : plain.orbits().members(lead)) {
        List<String> codes = way == 0 ? codes(alike.size()) : alike;
        PieceState state = PieceState.values()[1 + random.nextInt(2)];
        if (way < 2 || way == 2 && piece == lead) {
          List<Optional<String>> rounds = codes.stream().map(Optional::of).toList();
          notes.add(new PieceNote(List.of(plain.place(piece).name()), rounds, state, Set.of()));
        }
      }
    }
    return notes;
  }

  private List<String> codes(int rounds) {
    return Stream.generate(this::code).limit(rounds).toList();
  }

  /** The brief with centres that differ now and then, and yarns kept apart within pieces. */
  private Brief ruled(Brief brief) {
    Brief ruled = brief;
    if (chance(0.3)) {
      ruled = ruled.withRules(ruled.rules().withCentresDiffer(true));
    }
    if (chance(0.3)) {
      Look.Meeting on = chance(0.5) ? Look.Meeting.ROUNDS : Look.Meeting.BOTH;
      List<Look.Pair> pairs = new ArrayList<>(ruled.look().apart());
      pairs().forEach(pair -> pairs.add(new Look.Pair(pair.first(), pair.second(), on)));
      ruled = ruled.withLook(ruled.look().withApart(pairs));
    }
    ruled = chance(0.3) ? ruled.withYarns(lots(ruled)) : ruled;
    return chance(0.15) ? ruled.withYarns(oneGone(ruled)) : ruled;
  }

  private List<Yarn> oneGone(Brief brief) {
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    yarns.set(0, yarns.get(0).withGone(true));
    return yarns;
  }

  /** The yarns, one of them a dye lot of the next of its tone. */
  private List<Yarn> lots(Brief brief) {
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    int lot = random.nextInt(yarns.size());
    Yarn yarn = yarns.get(lot);
    yarns.subList(lot + 1, yarns.size()).stream()
        .filter(other -> brief.toneOf(other) == brief.toneOf(yarn))
        .findFirst()
        .ifPresent(other -> yarns.set(lot, yarn.withLotOf(Optional.of(other.code()))));
    return yarns;
  }

  /** The brief with an order of borders now and then, and a weight for it. */
  private Brief ordered(Brief brief) {
    if (!chance(0.3)) {
      return brief;
    }
    Order order = Order.values()[random.nextInt(Order.values().length)];
    Map<Part, Double> weights = new EnumMap<>(brief.prefer().weights());
    weights.put(Part.ORDER, (double) random.nextInt(4));
    return brief
        .withLook(brief.look().withOrder(order))
        .withPrefer(new Preferences(weights, brief.prefer().words()));
  }

  private Look look() {
    Look look = Look.NONE;
    if (chance(0.6)) {
      look = look.withSymmetry(Symmetry.values()[random.nextInt(Symmetry.values().length)]);
    }
    if (chance(0.3)) {
      double between = contrast();
      look = look.withContrast(between, chance(0.5) ? between : contrast());
    }
    if (chance(0.25)) {
      String first = code();
      String second = code();
      look =
          chance(0.5) || first.equals(second)
              ? look.withBorders(first)
              : look.withBorders(first, second);
    }
    if (chance(0.35)) {
      look = look.withZones(zones());
    }
    if (chance(0.4)) {
      look = look.withFade(fade());
    }
    if (chance(0.3)) {
      look = look.withApart(pairs());
    }
    if (chance(0.4)) {
      look = look.withCounts(counts());
    }
    return look;
  }

  private double contrast() {
    return chance(0.5) ? Look.CALM : random.nextInt(101);
  }

  private List<Look.Zone> zones() {
    List<Look.Zone> zones = new ArrayList<>();
    for (int i = 1 + random.nextInt(2); i > 0; i--) {
      zones.add(
          new Look.Zone(
              where(), codes.stream().filter(code -> i(code) % 4 != random.nextInt(4)).toList()));
    }
    return zones.stream().filter(zone -> !zone.only().isEmpty()).toList();
  }

  private int i(String code) {
    return codes.indexOf(code);
  }

  /** Rounds of pieces that are there. */
  private Where where() {
    String group = GROUPS[random.nextInt(GROUPS.length)];
    List<String> at = List.of(layout.select(group).isEmpty() ? "all" : group);
    return switch (random.nextInt(3)) {
      case 0 -> new Where(at, List.of());
      case 1 -> new Where(at, List.of(Where.BORDER));
      default -> new Where(at, List.of(1));
    };
  }

  private Fade fade() {
    Fade.Towards towards = Fade.Towards.values()[random.nextInt(Fade.Towards.values().length)];
    Fade.Order order = Fade.Order.values()[random.nextInt(Fade.Order.values().length)];
    List<String> stated = order == Fade.Order.STATED ? List.of(codes.get(1), code()) : List.of();
    return new Fade(towards, order, stated.stream().distinct().toList(), where());
  }

  private List<Look.Pair> pairs() {
    String first = code();
    String second = code();
    return first.equals(second) ? List.of() : List.of(new Look.Pair(first, second));
  }

  private List<Look.Count> counts() {
    List<Look.Count> counts = new ArrayList<>();
    for (int i = 1 + random.nextInt(2); i > 0; i--) {
      Where where = where();
      int pieces = layout.select(where.at()).size();
      int least = chance(0.5) ? 0 : random.nextInt(Math.max(1, pieces / 2) + 1);
      OptionalInt most =
          chance(0.4) ? OptionalInt.empty() : OptionalInt.of(least + random.nextInt(3));
      counts.add(new Look.Count(code(), where, least, most));
    }
    return counts;
  }

  private String code() {
    return codes.get(random.nextInt(codes.size()));
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }
}
