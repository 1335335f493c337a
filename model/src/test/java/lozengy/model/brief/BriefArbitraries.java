package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.colour.ToneLimits;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefJudge;
import lozengy.model.stitch.Stitch;
import lozengy.model.stitch.Terms;
import lozengy.model.stitch.YarnWeight;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Random briefs for properties. Small, so that each can be solved or searched through. */
public final class BriefArbitraries {

  private static final List<String> CODES =
      List.of("MUD", "REE", "NO", "101", "1e3", "null", "true", "y", "A-1", "_", "éa", "0x1F");

  private BriefArbitraries() {}

  /** Any valid brief: some can be met, some cannot. */
  public static Arbitrary<Brief> briefs() {
    return Combinators.combine(
            layouts(), yarns(), rules(), preferences(), limits(), Arbitraries.randoms())
        .as(BriefArbitraries::brief)
        .withoutEdgeCases(); // combining those of all parts takes longer than the properties
  }

  /**
   * Briefs that surely can be met: any tone anywhere, neighbours differ and adjacent rounds differ
   * or may not, more than enough of every yarn, nothing noted of single pieces.
   */
  public static Arbitrary<Brief> easyBriefs() {
    return briefs().map(BriefArbitraries::easy);
  }

  /** Layouts of 1 to 61 pieces. */
  public static Arbitrary<LayoutSize> layouts() {
    Arbitrary<Boolean> filled = Arbitraries.of(true, false);
    return Combinators.combine(
            Arbitraries.of(Setting.class),
            Arbitraries.integers().between(1, 5),
            Arbitraries.integers().between(1, 5),
            filled,
            filled)
        .as(
            (setting, across, down, sides, corners) ->
                new LayoutSize(
                    setting,
                    across,
                    down,
                    sides && setting == Setting.ON_POINT,
                    corners && setting == Setting.ON_POINT));
  }

  private static Arbitrary<List<Yarn>> yarns() {
    return Arbitraries.of(CODES)
        .list()
        .uniqueElements()
        .ofMinSize(2)
        .ofMaxSize(CODES.size())
        .flatMap(
            codes -> {
              List<Arbitrary<Yarn>> yarns = new ArrayList<>();
              codes.forEach(code -> yarns.add(yarn(code)));
              return Combinators.combine(yarns)
                  .as(list -> list)
                  .flatMap(
                      list ->
                          Arbitraries.integers()
                              .between(0, list.size() - 1)
                              .optional(0.3)
                              .map(lot -> lot.map(at -> lotOfTheNext(list, at)).orElse(list)));
            });
  }

  /** Yarns of which one is another dye lot of the next. */
  private static List<Yarn> lotOfTheNext(List<Yarn> yarns, int lot) {
    List<Yarn> tied = new ArrayList<>(yarns);
    Yarn yarn = yarns.get(lot);
    Yarn shade = yarns.get((lot + 1) % yarns.size());
    tied.set(
        lot,
        Yarn.of(yarn.code(), shade.colour())
            .withName(yarn.name())
            .withBall(yarn.ball())
            .withBalls(yarn.balls())
            .withLeft(yarn.left())
            .withShare(yarn.share())
            .withTone(shade.statedTone())
            .withGone(lot == 0)
            .withLotOf(Optional.of(shade.code())));
    return tied;
  }

  private static Arbitrary<Yarn> yarn(String code) {
    Arbitrary<Srgb> colours =
        Arbitraries.integers()
            .between(0, 0xffffff)
            .map(rgb -> new Srgb(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff));
    Arbitrary<Optional<Ball>> balls =
        Combinators.combine(
                Arbitraries.doubles().between(10, 200), Arbitraries.longs().between(2000, 800_000))
            .as(Ball::new)
            .optional(0.9);
    Arbitrary<String> names =
        Arbitraries.strings()
            .withChars("aZ9 :#-{}[]\"'\\&*!%@é✿~,")
            .ofMinLength(1)
            .ofMaxLength(12)
            .map(String::strip)
            .filter(name -> !name.isEmpty());
    Arbitrary<Double> shares =
        Arbitraries.frequencyOf(
            Tuple.of(4, Arbitraries.just(1.0)),
            Tuple.of(1, Arbitraries.doubles().between(0.1, 10)));
    return Combinators.combine(
            names,
            colours,
            balls,
            Arbitraries.doubles().between(0, 20),
            amounts(200_000).optional(0.5),
            shares,
            Arbitraries.of(Tone.class).optional(0.2),
            Arbitraries.longs()
                .between(0, 999_999)
                .map(hundredths -> new Price(BigDecimal.valueOf(hundredths, 2), "EUR"))
                .optional(0.3))
        .as(
            (name, colour, ball, count, left, share, tone, price) ->
                Yarn.of(code, colour)
                    .withName(name)
                    .withBall(ball)
                    .withBalls(ball.isPresent() ? count : 0)
                    .withLeft(left.filter(l -> ball.isPresent() || l instanceof YarnAmount.Length))
                    .withShare(share)
                    .withTone(tone)
                    .withPrice(price.filter(each -> ball.isPresent())));
  }

  private static Arbitrary<YarnAmount> amounts(long mostThousandths) {
    Arbitrary<BigDecimal> numbers =
        Arbitraries.longs()
            .between(1, mostThousandths * 1_000_000)
            .map(millionths -> BigDecimal.valueOf(millionths, 6));
    return Arbitraries.oneOf(
        numbers.map(YarnAmount.Length::new), numbers.map(YarnAmount.Weight::new));
  }

  private static Arbitrary<Rules> rules() {
    return Combinators.combine(
            Arbitraries.frequencyOf(
                Tuple.of(1, Arbitraries.just(0.0)),
                Tuple.of(1, Arbitraries.doubles().between(0, 30))),
            Arbitraries.of(WithinPiece.class),
            Arbitraries.integers().between(1, 4).optional(0.3),
            Arbitraries.doubles().between(0, 20),
            Arbitraries.of(true, false))
        .as(
            (contrast, within, copies, keepBack, lots) ->
                Rules.DEFAULT
                    .withMinContrast(contrast)
                    .withWithinPiece(within)
                    .withCopies(copies.map(OptionalInt::of).orElse(OptionalInt.empty()))
                    .withKeepBack(keepBack)
                    .withLotsApart(lots));
  }

  private static Arbitrary<Preferences> preferences() {
    return Arbitraries.maps(Arbitraries.of(Part.class), Arbitraries.doubles().between(0, 10))
        .ofMaxSize(Part.values().length)
        .map(BriefArbitraries::preferences);
  }

  /** The smaller half of what is drawn becomes words. */
  private static Preferences preferences(Map<Part, Double> drawn) {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    Map<Part, Weight> words = new EnumMap<>(Part.class);
    drawn.forEach(
        (part, weight) -> {
          Weight word = Weight.values()[(int) (weight * 1000) % Weight.values().length];
          boolean said = weight < 5;
          weights.put(part, said ? word.number() : weight);
          if (said) {
            words.put(part, word);
          }
        });
    return new Preferences(weights, words);
  }

  private static Arbitrary<ToneLimits> limits() {
    Arbitrary<Double> lightness = Arbitraries.doubles().between(0, 100);
    return Combinators.combine(lightness, lightness)
        .as((a, b) -> new ToneLimits(Math.min(a, b), Math.max(a, b)));
  }

  private static Brief brief(
      LayoutSize layout,
      List<Yarn> yarns,
      Rules rules,
      Preferences prefer,
      ToneLimits limits,
      Random random) {
    boolean putUps = yarns.stream().allMatch(yarn -> yarn.ball().isPresent());
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    motifs.put(PieceKind.SQUARE, motif(PieceKind.SQUARE, putUps, random));
    if (layout.sideTriangles()) {
      motifs.put(PieceKind.SIDE_TRIANGLE, motif(PieceKind.SIDE_TRIANGLE, putUps, random));
    }
    if (layout.cornerTriangles()) {
      motifs.put(PieceKind.CORNER_TRIANGLE, motif(PieceKind.CORNER_TRIANGLE, putUps, random));
    }
    Brief without =
        Brief.of("Brief " + random.nextInt(1000), layout, motifs, yarns)
            .withTones(limits)
            .withJoining(
                random.nextInt(4) == 0
                    ? Optional.of(
                        new BorderJoining(
                            new YarnRate.PerMetre((1 + random.nextInt(60)) / 10.0),
                            Optional.of(BigDecimal.valueOf(1 + random.nextInt(90)))))
                    : use(yarns, false, random))
            .withEdging(Stream.of(1, 2).flatMap(i -> use(yarns, true, random).stream()).toList())
            .withRules(rules)
            .withPrefer(prefer);
    if (random.nextInt(3) == 0) {
      without = stitched(without, random);
    }
    Brief noted = counted(without.withPieces(notes(without, random)), random);
    Brief judged = BriefJudge.mistakes(noted).isEmpty() ? noted : without;
    return random.nextInt(3) > 0
        ? judged
        : judged.withForSale(Optional.of(new ForSale(BigDecimal.valueOf(random.nextInt(1000), 1))));
  }

  private static Motif motif(PieceKind kind, boolean putUps, Random random) {
    List<Round> rounds = new ArrayList<>();
    int count = 1 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      Set<Tone> tones = new LinkedHashSet<>(Arrays.asList(Tone.values()));
      while (tones.size() > 1 && random.nextInt(3) == 0) {
        tones.remove(Tone.values()[random.nextInt(3)]);
      }
      BigDecimal finer =
          BigDecimal.valueOf(random.nextInt(3) == 0 ? random.nextInt() >>> 1 : 0, 15);
      BigDecimal thousandths = BigDecimal.valueOf(1 + random.nextInt(9_999)).add(finer);
      rounds.add(
          new Round(
              tones,
              putUps && random.nextBoolean()
                  ? new YarnAmount.Weight(thousandths)
                  : new YarnAmount.Length(thousandths)));
    }
    boolean edge =
        kind == PieceKind.SQUARE || kind == PieceKind.SIDE_TRIANGLE && random.nextBoolean();
    return new Motif(
        edge ? OptionalDouble.of(1 + 20 * random.nextDouble()) : OptionalDouble.empty(), rounds);
  }

  /** With rounds in stitches, and what turns them into yarn. */
  private static Brief stitched(Brief brief, Random random) {
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    brief
        .motifs()
        .forEach(
            (kind, motif) ->
                motifs.put(
                    kind,
                    new Motif(
                        motif.edgeCm(),
                        motif.rounds().stream().map(r -> stitched(r, random)).toList())));
    Map<Stitch, BigDecimal> perStitch =
        Map.of(Stitch.values()[random.nextInt(8)], BigDecimal.valueOf(10 + random.nextInt(900), 1));
    Sample sample =
        new Sample(
            PieceKind.SQUARE,
            random.nextBoolean() ? List.of() : List.of(1),
            1 + random.nextInt(3),
            List.of(
                new YarnAmount.Length(100_000 + random.nextInt(9_000)),
                new YarnAmount.Length(100_000 + random.nextInt(9_000))),
            random.nextBoolean() ? List.of() : List.of(brief.yarns().get(0).code()));
    Brief made =
        brief
            .withMotifs(motifs)
            .withStitching(
                new Stitching(
                    Terms.values()[random.nextInt(2)],
                    Optional.of(YarnWeight.values()[random.nextInt(5)]),
                    Optional.of(BigDecimal.valueOf(20 + random.nextInt(70), 1)),
                    random.nextBoolean() ? perStitch : Map.of(),
                    BigDecimal.valueOf(random.nextInt(300)),
                    random.nextBoolean() ? List.of(sample) : List.of(),
                    random.nextBoolean()
                        ? Optional.of(BigDecimal.valueOf(random.nextInt(200), 1))
                        : Optional.empty(),
                    random.nextBoolean()
                        ? Optional.of(BigDecimal.valueOf(1 + random.nextInt(200), 1))
                        : Optional.empty(),
                    random.nextBoolean()
                        ? BigDecimal.valueOf(500 + random.nextInt(1501), 1)
                        : Stitching.AS_RECKONED));
    return BriefJudge.mistakes(made).isEmpty() ? made : brief;
  }

  private static Round stitched(Round round, Random random) {
    Map<Stitch, Integer> counts = new EnumMap<>(Stitch.class);
    for (int i = random.nextInt(4); i > 0; i--) {
      counts.put(Stitch.values()[random.nextInt(8)], 1 + random.nextInt(40));
    }
    return counts.isEmpty()
        ? round
        : new Round(
            round.tones(),
            new StitchCounts(counts),
            random.nextBoolean()
                ? Optional.of(BigDecimal.valueOf(1 + random.nextInt(200), 1))
                : Optional.empty());
  }

  private static Optional<YarnUse> use(List<Yarn> yarns, boolean edging, Random random) {
    Yarn yarn = yarns.get(random.nextInt(yarns.size()));
    int rounds = edging ? 1 + random.nextInt(3) : 1;
    YarnRate rate =
        random.nextBoolean()
            ? new YarnRate.PerMetre(random.nextDouble() * 10)
            : new YarnRate.Strip(
                BigDecimal.valueOf(100 + random.nextInt(9000), 1),
                edging ? 1 + random.nextInt(3) : 1,
                yarn.ball().isPresent() && random.nextBoolean()
                    ? new YarnAmount.Weight(random.nextInt(90))
                    : new YarnAmount.Length(random.nextInt(300)));
    return random.nextBoolean()
        ? Optional.of(
            new YarnUse(
                yarn.code(),
                rate,
                rounds,
                random.nextBoolean()
                    ? Optional.empty()
                    : Optional.of(BigDecimal.valueOf(1 + random.nextInt(500), 1))))
        : Optional.empty();
  }

  /** Some yarns counted in mid-work. */
  private static Brief counted(Brief brief, Random random) {
    List<String> names = Layout.of(brief.layout()).places().stream().map(Place::name).toList();
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      long left = random.nextInt(200_000);
      YarnAmount amount =
          yarn.ball().isPresent() && random.nextBoolean()
              ? new YarnAmount.Weight(left)
              : new YarnAmount.Length(left);
      Counted counted =
          new Counted(
              amount,
              some(names, random),
              random.nextBoolean() ? List.of("row1") : some(names, random),
              random.nextBoolean()
                  ? List.of()
                  : List.of(new PartWorked(1 + random.nextInt(3), List.of(names.get(0)))),
              random.nextInt(101));
      yarns.add(random.nextInt(4) == 0 ? yarn.withCount(Optional.of(counted)) : yarn);
    }
    return brief.withYarns(yarns);
  }

  private static List<String> some(List<String> names, Random random) {
    return names.stream().filter(name -> random.nextInt(3) == 0).toList();
  }

  private static List<PieceNote> notes(Brief brief, Random random) {
    List<PieceNote> notes = new ArrayList<>();
    List<Place> places = Layout.of(brief.layout()).places();
    List<String> codes = brief.yarns().stream().map(Yarn::code).toList();
    for (int i = random.nextInt(4); i > 0; i--) {
      Place place = places.get(random.nextInt(places.size()));
      Set<String> not = new LinkedHashSet<>();
      List<Optional<String>> rounds = new ArrayList<>();
      PieceState state = PieceState.values()[random.nextInt(3)];
      int count = brief.motifs().get(place.kind()).rounds().size();
      for (int round = 0; round < count; round++) {
        String code = codes.get(random.nextInt(codes.size()));
        boolean open = state == PieceState.PLANNED && random.nextBoolean();
        rounds.add(open ? Optional.empty() : Optional.of(code));
      }
      if (random.nextBoolean()) {
        not.add(codes.get(random.nextInt(codes.size())));
      }
      int worked = 0;
      while (worked < count && rounds.size() == count && rounds.get(worked).isPresent()) {
        worked++;
      }
      boolean begun = state == PieceState.PLANNED && worked > 0 && random.nextBoolean();
      notes.add(
          new PieceNote(
              List.of(place.name()),
              rounds,
              false,
              state,
              begun ? 1 + random.nextInt(worked) : 0,
              not));
    }
    if (random.nextInt(3) == 0) {
      String code = codes.get(random.nextInt(codes.size()));
      List<Optional<String>> border = List.of(Optional.of(code));
      List<String> at = random.nextBoolean() ? List.of("row1") : List.of("row1", "r1c1..r1c1");
      Set<String> not = Set.of(codes.get(random.nextInt(codes.size())));
      notes.add(
          random.nextBoolean()
              ? new PieceNote(at, border, true, PieceState.PLANNED, 0, Set.of())
              : new PieceNote(List.of("squares"), List.of(), PieceState.PLANNED, not));
    }
    return notes;
  }

  private static Brief easy(Brief brief) {
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    brief.motifs().forEach((kind, motif) -> motifs.put(kind, easy(motif)));
    List<Yarn> yarns = brief.yarns().stream().map(BriefArbitraries::easy).toList();
    WithinPiece within = brief.rules().withinPiece();
    Rules rules =
        Rules.DEFAULT
            .withWithinPiece(
                within == WithinPiece.ALL_DIFFER ? WithinPiece.ADJACENT_DIFFER : within)
            .withKeepBack(brief.rules().keepBackPercent());
    return brief.withMotifs(motifs).withYarns(yarns).withRules(rules).withPieces(List.of());
  }

  private static Motif easy(Motif motif) {
    Set<Tone> any = Set.of(Tone.values());
    return new Motif(
        motif.edgeCm(),
        motif.rounds().stream()
            .map(round -> new Round(any, new YarnAmount.Length(lengthOf(round))))
            .toList());
  }

  private static long lengthOf(Round round) {
    return round.amount() instanceof YarnAmount.Length length
        ? length.millimetres().longValue()
        : 1000;
  }

  /** Ten kilometres: more than all pieces, joining and edging of the largest layout take. */
  private static Yarn easy(Yarn yarn) {
    return yarn.withBalls(0).withLeft(Optional.of(new YarnAmount.Length(10_000_000)));
  }
}
