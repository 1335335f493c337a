package lozengy.solver;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.Round;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.Deficiency;
import lozengy.model.colour.Lab;
import lozengy.model.colour.LabColours;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.model.score.Targets;

/**
 * The score once more, written down from the formulas that users are told, for tests to hold the
 * program's against: from the brief and the places' coordinates, by plain loops over all pieces. It
 * takes over what joining and edging take, which pieces are images of each other, and the targets
 * of layers that a count of the look speaks of.
 */
final class PlainScore {

  private final Blanket blanket;
  private final Brief brief;
  private final List<Place> places;
  private final Sequences sequences;
  private final int yarns;
  private final boolean given;
  private final int[][] targets;

  private PlainScore(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.brief = blanket.brief();
    this.places = blanket.layout().places();
    this.sequences = sequences;
    this.yarns = brief.yarns().size();
    this.given = !brief.look().borders().isEmpty();
    this.targets = targets();
  }

  /** The objective: parts and keep by their weights. */
  static double objective(Blanket blanket, Sequences sequences, Optional<Sequences> earlier) {
    PlainScore plain = new PlainScore(blanket, sequences);
    Map<Part, Double> parts = plain.parts();
    earlier.ifPresent(before -> parts.put(Part.KEEP, plain.keep(before)));
    double sum = 0;
    double weights = 0;
    for (Map.Entry<Part, Double> part : parts.entrySet()) {
      double weight = plain.brief.prefer().weight(part.getKey());
      sum += weight * part.getValue();
      weights += weight;
    }
    return sum / weights;
  }

  private Map<Part, Double> parts() {
    Map<Part, Double> parts = new EnumMap<>(Part.class);
    parts.put(Part.BALANCE, balance());
    parts.put(Part.SPREAD, spread());
    parts.put(Part.CONTRAST, mean(List.of(between(), within())));
    parts.put(Part.CONTRAST_BETWEEN, mean(List.of(between())));
    parts.put(Part.CONTRAST_WITHIN, mean(List.of(within())));
    parts.put(Part.VARIETY, variety());
    parts.put(Part.LEEWAY, leeway());
    parts.put(Part.COLOUR_VISION, mean(List.of(seen())));
    parts.put(Part.FADE, brief.look().fade().map(this::fade).orElse(100.0));
    parts.put(Part.ORDER, brief.look().order().map(this::order).orElse(100.0));
    return parts;
  }

  /** The yarn of a layer, or -1 where the piece has no such layer. */
  private int yarn(int piece, int layer) {
    int round = sequences.rounds(piece) - 1 - layer;
    return round < 0 ? -1 : sequences.yarn(piece, round);
  }

  private static int weight(int layer) {
    return layer == 0 ? 2 : 1;
  }

  private int layers() {
    return IntStream.range(0, places.size()).map(sequences::rounds).max().orElseThrow();
  }

  /** Squared distance in quarters of a squared side on point, in fourths of it straight. */
  private double sidesSquared(Place a, Place b) {
    double x = a.x() - b.x();
    double y = a.y() - b.y();
    return (x * x + y * y) / (brief.layout().setting() == Setting.ON_POINT ? 2 : 4);
  }

  private int pairWeight(int a, int b) {
    double distance = sidesSquared(places.get(a), places.get(b));
    return distance == 1 ? 4 : distance == 2 ? 2 : distance <= 5 ? 1 : 0;
  }

  private void pairs(BiPredicate<Integer, Integer> each) {
    for (int a = 0; a < places.size(); a++) {
      for (int b = 0; b < a; b++) {
        each.test(a, b);
      }
    }
  }

  // --- targets ----------------------------------------------------------------------------------

  private int[][] targets() {
    if (!brief.look().counts().isEmpty()) {
      return Targets.of(blanket).counts();
    }
    int[][] targets = new int[layers()][yarns];
    for (int layer = 0; layer < targets.length; layer++) {
      Map<BitSet, Integer> alike = new HashMap<>();
      for (int piece = 0; piece < places.size(); piece++) {
        if (yarn(piece, layer) >= 0) {
          alike.merge(allowed(piece, sequences.rounds(piece) - 1 - layer), 1, Integer::sum);
        }
      }
      int[] wanted = targets[layer];
      alike.forEach((allowed, rounds) -> deal(allowed, rounds, wanted));
    }
    return targets;
  }

  /** Yarns that the tones and the look allow, whatever is locked or banned. */
  private BitSet allowed(int piece, int round) {
    Place place = places.get(piece);
    List<Round> rounds = brief.motifs().get(place.kind()).rounds();
    BitSet allowed = new BitSet();
    if (given && round == rounds.size() - 1) {
      allowed.set(code(PlainJudge.givenBorder(brief, place)));
      return allowed;
    }
    for (int yarn = 0; yarn < yarns; yarn++) {
      allowed.set(
          yarn,
          rounds.get(round).tones().contains(brief.toneOf(brief.yarns().get(yarn)))
              && PlainJudge.zonesAllow(brief, blanket.layout(), place, round, codeOf(yarn)));
    }
    return allowed;
  }

  private String codeOf(int yarn) {
    return brief.yarns().get(yarn).code();
  }

  private int code(String code) {
    return IntStream.range(0, yarns).filter(y -> codeOf(y).equals(code)).findFirst().orElseThrow();
  }

  /** By share and largest remainder; shares are whole numbers here, so that all is exact. */
  private void deal(BitSet allowed, int rounds, int[] wanted) {
    Map<Integer, Long> shares = new TreeMap<>();
    allowed.stream().forEach(y -> shares.put(y, share(brief.yarns().get(y))));
    if (shares.values().stream().allMatch(share -> share == 0)) {
      shares.replaceAll((yarn, share) -> 1L);
    }
    long all = shares.values().stream().mapToLong(share -> share).sum();
    if (all == 0) {
      return;
    }
    int left = rounds;
    for (Map.Entry<Integer, Long> share : shares.entrySet()) {
      int whole = (int) (rounds * share.getValue() / all);
      wanted[share.getKey()] += whole;
      left -= whole;
    }
    Comparator<Integer> remainder =
        Comparator.comparing(y -> -(rounds * shares.get(y) % all), Comparator.<Long>naturalOrder());
    shares.keySet().stream()
        .sorted(
            remainder
                .thenComparing(y -> -shares.get(y), Comparator.<Long>naturalOrder())
                .thenComparing(this::codeOf))
        .limit(left)
        .forEach(y -> wanted[y]++);
  }

  private static long share(Yarn yarn) {
    return yarn.gone() ? 0 : (long) yarn.share();
  }

  // --- parts ------------------------------------------------------------------------------------

  private double balance() {
    double sum = 0;
    double weights = 0;
    for (int layer = 0; layer < layers(); layer++) {
      double off = 0;
      double pieces = 0;
      for (int yarn = 0; yarn < yarns; yarn++) {
        int n = 0;
        for (int piece = 0; piece < places.size(); piece++) {
          n += yarn(piece, layer) == yarn ? 1 : 0;
        }
        off += Math.abs(n - targets[layer][yarn]);
        pieces += n;
      }
      sum += weight(layer) * 100 * (1 - off / (2 * pieces));
      weights += weight(layer);
    }
    return sum / weights;
  }

  private double spread() {
    double[] repeats = {0, 0};
    for (int l = given ? 1 : 0; l < layers(); l++) {
      int layer = l;
      double[] all = {0};
      pairs(
          (a, b) -> {
            boolean have = yarn(a, layer) >= 0 && yarn(b, layer) >= 0;
            boolean equal = have && yarn(a, layer) == yarn(b, layer);
            all[0] += have ? pairWeight(a, b) : 0;
            return (repeats[0] += equal ? weight(layer) * pairWeight(a, b) : 0) > 0;
          });
      double pieces = IntStream.range(0, places.size()).filter(p -> yarn(p, layer) >= 0).count();
      repeats[1] += pieces < 2 ? 0 : weight(layer) * all[0] * alike(targets[layer], pieces);
    }
    return repeats[1] == 0 ? 100 : Math.max(0, 100 * (1 - repeats[0] / repeats[1]));
  }

  /** How likely two of the pieces have equal yarns once the counts are shuffled. */
  private static double alike(int[] counts, double pieces) {
    return Arrays.stream(counts).mapToDouble(n -> n * (n - 1.0)).sum() / (pieces * (pieces - 1));
  }

  private double difference(int yarn, int other) {
    return ColourDifference.ciede2000(lab(yarn), lab(other));
  }

  private Lab lab(int yarn) {
    return LabColours.of(brief.yarns().get(yarn).colour());
  }

  private double wanted(double wanted, int yarn, int other) {
    double c = Math.min(1, difference(yarn, other) / 40);
    double t = wanted / 100;
    return wanted == Look.LIVELY ? c : 1 - Math.abs(c - t) / Math.max(t, 1 - t);
  }

  private List<Double> between() {
    List<Double> between = new ArrayList<>();
    pairs(
        (a, b) ->
            !given
                && pairWeight(a, b) == 4
                && between.add(wanted(brief.look().contrast().between(), yarn(a, 0), yarn(b, 0))));
    return between;
  }

  private List<Double> within() {
    List<Double> within = new ArrayList<>();
    for (int piece = 0; piece < places.size(); piece++) {
      for (int layer = 1; yarn(piece, layer) >= 0; layer++) {
        within.add(
            wanted(brief.look().contrast().within(), yarn(piece, layer - 1), yarn(piece, layer)));
      }
    }
    return within;
  }

  private List<Double> seen() {
    List<Double> seen = new ArrayList<>();
    pairs(
        (a, b) -> {
          double least = 5;
          for (Deficiency lacking : Deficiency.values()) {
            Lab one = lacking.seen(brief.yarns().get(yarn(a, 0)).colour());
            Lab other = lacking.seen(brief.yarns().get(yarn(b, 0)).colour());
            least = Math.min(least, ColourDifference.ciede2000(one, other));
          }
          return !given && pairWeight(a, b) == 4 && seen.add(least / 5);
        });
    return seen;
  }

  private static double mean(List<List<Double>> lists) {
    return 100
        * lists.stream()
            .filter(list -> !list.isEmpty())
            .mapToDouble(list -> list.stream().mapToDouble(d -> d).average().orElseThrow())
            .average()
            .orElse(1);
  }

  private double variety() {
    Set<List<Integer>> different = new HashSet<>();
    for (int piece = 0; piece < places.size(); piece++) {
      different.add(Arrays.stream(sequences.of(piece)).boxed().toList());
    }
    return 100.0 * different.size() / blanket.orbits().leads().length;
  }

  private double leeway() {
    double lost = 0;
    long[] taken = PlainUse.millimetres(blanket, sequences);
    for (int yarn = 0; yarn < yarns; yarn++) {
      Yarn of = brief.yarns().get(yarn);
      BigDecimal used = BigDecimal.valueOf(taken[yarn] + blanket.fixedUse().millimetres(yarn));
      BigDecimal balls =
          of.ball()
              .map(ball -> ball.millimetres().multiply(BigDecimal.valueOf(of.balls())))
              .orElse(BigDecimal.ZERO);
      BigDecimal loose =
          of.left().map(left -> millimetres(left, of, RoundingMode.UP)).orElse(BigDecimal.ZERO);
      BigDecimal there =
          of.counted()
              .map(count -> millimetres(count.left(), of, RoundingMode.UP))
              .orElse(balls.add(loose));
      double stock = of.gone() ? 0 : there.doubleValue();
      double tight = 1 - Math.min(1, (stock - used.doubleValue()) / (stock / 11));
      // without any stock, whatever is used is too much
      double bounded = stock == 0 ? 1 : Math.min(1, tight);
      lost += used.signum() == 0 ? 0 : bounded * bounded;
    }
    return 100 * (1 - lost / yarns);
  }

  private static BigDecimal millimetres(YarnAmount amount, Yarn yarn, RoundingMode rounding) {
    BigDecimal exact;
    if (amount instanceof YarnAmount.Length length) {
      exact = length.millimetres();
    } else {
      BigDecimal grams = ((YarnAmount.Weight) amount).milligrams().movePointLeft(3);
      BigDecimal full = yarn.ball().orElseThrow().millimetres();
      exact = grams.multiply(full).divide(yarn.ball().get().grams(), 12, rounding);
    }
    return exact.setScale(0, rounding);
  }

  private double fade(Fade fade) {
    List<Integer> order = new ArrayList<>();
    if (fade.order() == Fade.Order.STATED) {
      fade.yarns().forEach(code -> order.add(code(code)));
    } else {
      IntStream.range(0, yarns).forEach(order::add);
      int sign = fade.order() == Fade.Order.DARK_TO_LIGHT ? 1 : -1;
      order.sort(
          Comparator.<Integer>comparingDouble(y -> sign * lab(y).lightness())
              .thenComparing(this::codeOf));
    }
    Set<Place> at = Set.copyOf(blanket.layout().select(fade.where().at()));
    double lost = 0;
    int all = 0;
    for (int layer = 0; layer < layers(); layer++) {
      List<Integer> fading = new ArrayList<>();
      for (int piece = 0; piece < places.size(); piece++) {
        int rounds = sequences.rounds(piece);
        if (layer < rounds
            && at.contains(places.get(piece))
            && fade.where().covers(rounds - 1 - layer, rounds)) {
          fading.add(piece);
        }
      }
      for (int piece : fading) {
        double d = rank(fade, fading, piece) - shade(order, targets[layer], yarn(piece, layer));
        lost += Double.isNaN(d) ? 1 / 6.0 : d * d;
        all++;
      }
    }
    return all == 0 ? 100 : Math.max(0, 100 - 300 * lost / all);
  }

  /** The part of the pieces that lie before a piece, with half of those that lie level with it. */
  private double rank(Fade fade, List<Integer> fading, int piece) {
    double before = 0;
    for (int other : fading) {
      int way = Long.compare(along(fade, places.get(other)), along(fade, places.get(piece)));
      before += way < 0 ? 1 : way == 0 ? 0.5 : 0;
    }
    return before / fading.size();
  }

  private long along(Fade fade, Place place) {
    return fade.towards()
        .along(place.x(), place.y(), 2 * brief.layout().across(), 2 * brief.layout().down());
  }

  /** The middle of a yarn's stretch, not a number for one out of the order. */
  private static double shade(List<Integer> order, int[] targets, int yarn) {
    double all = order.stream().mapToInt(y -> targets[y]).sum();
    double before = 0;
    for (int each : order) {
      if (each == yarn) {
        return all == 0
            ? (order.indexOf(yarn) + 0.5) / order.size()
            : (before + targets[yarn] / 2.0) / all;
      }
      before += targets[each];
    }
    return Double.NaN;
  }

  private double order(Order asked) {
    Map<List<Integer>, int[]> offsets = new LinkedHashMap<>();
    for (int a = 0; a < places.size(); a++) {
      for (int b = 0; b < places.size(); b++) {
        int x = places.get(b).x() - places.get(a).x();
        int y = places.get(b).y() - places.get(a).y();
        double distance = sidesSquared(places.get(a), places.get(b));
        if (distance > 5 && distance <= 25 && (y > 0 || y == 0 && x > 0)) {
          int[] of = offsets.computeIfAbsent(List.of(x, y), d -> new int[2]);
          of[0]++;
          of[1] += yarn(a, 0) == yarn(b, 0) ? 1 : 0;
        }
      }
    }
    offsets.values().removeIf(of -> of[0] < 8);
    double e = alike(targets[0], places.size());
    if (given || offsets.isEmpty() || e <= 0 || e >= 1) {
      return 100;
    }
    double r = 0;
    double all = 0;
    for (int[] of : offsets.values()) {
      double beyond = Math.max(0, ((double) of[1] / of[0] - e) / (1 - e));
      r += of[0] * beyond * beyond;
      all += of[0];
    }
    double regular = 100 * Math.min(1, r / (e * all));
    return asked == Order.ORDERED ? regular : 100 - regular;
  }

  private double keep(Sequences earlier) {
    double free = 0;
    double kept = 0;
    for (int piece = 0; piece < places.size(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (blanket.free(piece, round) && earlier.yarn(piece, round) != Sequences.OPEN) {
          free++;
          kept += sequences.yarn(piece, round) == earlier.yarn(piece, round) ? 1 : 0;
        }
      }
    }
    return free == 0 ? 100 : 100 * kept / free;
  }
}
