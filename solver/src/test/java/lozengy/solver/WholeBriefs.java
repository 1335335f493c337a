package lozengy.solver;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.brief.Ball;
import lozengy.model.brief.BorderJoining;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.StitchCounts;
import lozengy.model.brief.Stitching;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnRate;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefJudge;
import lozengy.model.stitch.Stitch;
import lozengy.model.stitch.Terms;

/**
 * Random briefs that draw from all that a brief can ask at once, each part now and then, and so
 * small that all arrangements can be tried. A third of the layouts are long, so that an order has
 * pairs enough to count and a fade has ranks.
 */
final class WholeBriefs {

  private static final LayoutSize[] SMALL = {
    straight(1, 1),
    straight(2, 1),
    straight(2, 2),
    straight(3, 2),
    straight(1, 4),
    straight(3, 3),
    onPoint(1, 1, true, true),
    onPoint(1, 2, true, false),
    onPoint(2, 2, false, false),
    onPoint(2, 1, true, true),
    onPoint(1, 3, false, true),
  };

  private static final LayoutSize[] LONG = {
    straight(2, 7), straight(11, 1), straight(1, 12), onPoint(1, 10, false, false), straight(7, 2),
  };

  private static final String[] GROUPS = {
    "all", "squares", "outline", "row1", "top", "left", "triangles", "corners", "strip1", "r1c1"
  };

  private final SplittableRandom random;
  private final boolean isLong;
  private final LayoutSize size;
  private final Layout layout;
  private final int yarnCount;

  private WholeBriefs(long seed) {
    random = new SplittableRandom(seed);
    isLong = random.nextInt(3) == 0;
    LayoutSize[] sizes = isLong ? LONG : SMALL;
    size = sizes[random.nextInt(sizes.length)];
    layout = Layout.of(size);
    yarnCount = 2 + random.nextInt(3);
  }

  /** The brief of a seed: the first of those drawn from it of which nothing contradicts itself. */
  static Brief of(long seed) {
    for (long tries = 0; ; tries++) {
      Brief brief = new WholeBriefs(seed * 1_000_003 + tries).brief();
      if (BriefJudge.mistakes(brief).isEmpty() && allLaid(brief)) {
        return brief;
      }
    }
  }

  /** Whether no piece of the pile has to stay out: which do is another question than this one. */
  private static boolean allLaid(Brief brief) {
    Layout layout = Layout.of(brief.layout());
    return brief.pile().stream()
        .map(PileEntry::kind)
        .distinct()
        .allMatch(
            kind ->
                brief.pile().stream()
                        .filter(entry -> entry.kind() == kind)
                        .mapToInt(PileEntry::count)
                        .sum()
                    <= layout.places().stream()
                        .filter(place -> place.kind() == kind)
                        .filter(place -> !worked(brief, layout, place))
                        .count());
  }

  private static boolean worked(Brief brief, Layout layout, Place place) {
    return brief.pieces().stream()
        .filter(PieceNote::anyWorked)
        .anyMatch(note -> layout.select(note.at()).contains(place));
  }

  private static LayoutSize straight(int across, int down) {
    return new LayoutSize(Setting.STRAIGHT, across, down, false, false);
  }

  private static LayoutSize onPoint(int across, int down, boolean sides, boolean corners) {
    return new LayoutSize(Setting.ON_POINT, across, down, sides, corners);
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }

  private String code() {
    return code(random.nextInt(yarnCount));
  }

  private static String code(int yarn) {
    return String.valueOf((char) ('A' + yarn));
  }

  private <T> T any(T[] values) {
    return values[random.nextInt(values.length)];
  }

  private Brief brief() {
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    layout.places().forEach(place -> motifs.computeIfAbsent(place.kind(), this::motif));
    List<Yarn> yarns = yarns(motifs);
    Brief bare =
        Brief.of("Whole", size, motifs, yarns)
            .withRules(rules())
            .withJoining(chance(0.3) ? Optional.of(use()) : Optional.empty())
            .withEdging(Stream.generate(this::use).limit(chance(0.3) ? 2 : 0).toList());
    Look look = look();
    Brief whole =
        bare.withLook(look)
            .withPrefer(new Preferences(weights(look)))
            .withPieces(notes(motifs))
            .withPile(look.symmetry() == Symmetry.NONE && chance(0.25) ? pile(motifs) : List.of());
    return counted(inStitches(joinedInBorders(whole)));
  }

  private Brief joinedInBorders(Brief brief) {
    if (!chance(0.3)) {
      return brief;
    }
    YarnRate rate = new YarnRate.PerMetre((1 + random.nextInt(60)) / 10.0);
    return brief.withJoining(Optional.of(new BorderJoining(rate, Optional.empty())));
  }

  /** Some rounds told in stitches of one sort, with tails, and perhaps a loose hand or a tight. */
  private Brief inStitches(Brief brief) {
    if (!chance(0.3)) {
      return brief;
    }
    Stitch stitch = any(Stitch.values());
    Map<Stitch, BigDecimal> lengths = new EnumMap<>(Stitch.class);
    lengths.put(Stitch.SLIP_STITCH, BigDecimal.valueOf(100 + random.nextInt(200), 1));
    lengths.put(stitch, BigDecimal.valueOf(200 + random.nextInt(300), 1));
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    brief
        .motifs()
        .forEach(
            (kind, motif) ->
                motifs.put(
                    kind,
                    new Motif(
                        motif.edgeCm(),
                        motif.rounds().stream().map(r -> told(r, stitch)).toList())));
    Stitching stitching =
        new Stitching(
            Terms.US,
            Optional.empty(),
            Optional.empty(),
            lengths,
            BigDecimal.valueOf(random.nextInt(200)),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            BigDecimal.valueOf(90 + random.nextInt(21)));
    return brief.withMotifs(motifs).withStitching(stitching);
  }

  private Round told(Round round, Stitch stitch) {
    return chance(0.6)
        ? new Round(round.tones(), new StitchCounts(Map.of(stitch, 12 + random.nextInt(48))))
        : round;
  }

  /** Some yarns counted when some of what is worked was so already. */
  private Brief counted(Brief brief) {
    if (!chance(0.3)) {
      return brief;
    }
    List<Yarn> yarns =
        brief.yarns().stream()
            .map(yarn -> chance(0.6) ? yarn.withCount(Optional.of(count(brief, yarn))) : yarn)
            .toList();
    return brief.withYarns(yarns);
  }

  private Counted count(Brief brief, Yarn yarn) {
    List<String> made = new ArrayList<>();
    List<String> joined = new ArrayList<>();
    List<PartWorked> parts = new ArrayList<>();
    for (PieceNote note : brief.pieces()) {
      if (!chance(0.7)) {
        continue;
      }
      if (note.state() == PieceState.JOINED && chance(0.7)) {
        joined.addAll(note.at());
      } else if (note.state() != PieceState.PLANNED) {
        made.addAll(note.at());
      } else if (note.anyWorked()) {
        parts.add(new PartWorked(1, note.at()));
      }
    }
    YarnAmount left =
        new YarnAmount.Length(
            yarn.left().orElseThrow() instanceof YarnAmount.Length had
                ? had.millimetres().multiply(BigDecimal.valueOf(5 + random.nextInt(10), 1))
                : BigDecimal.TEN);
    return new Counted(
        left, made, joined, parts, brief.edging().isEmpty() ? 0 : 10 * random.nextInt(11));
  }

  private Motif motif(PieceKind kind) {
    int rounds = isLong ? 1 : 1 + random.nextInt(layout.places().size() > 4 ? 2 : 3);
    List<Round> made = new ArrayList<>();
    for (int i = 0; i < rounds; i++) {
      Set<Tone> tones =
          Arrays.stream(Tone.values())
              .filter(tone -> chance(0.9))
              .collect(Collectors.toCollection(() -> EnumSet.noneOf(Tone.class)));
      made.add(
          new Round(
              tones.isEmpty() ? EnumSet.allOf(Tone.class) : tones,
              chance(0.2)
                  ? new YarnAmount.Weight(300 + random.nextInt(700))
                  : new YarnAmount.Length(100L * (5 + random.nextInt(20)))));
    }
    boolean measured = kind == PieceKind.SQUARE || kind == PieceKind.SIDE_TRIANGLE && chance(0.3);
    double edge = kind == PieceKind.SQUARE ? 10 : 13.5;
    return new Motif(measured ? OptionalDouble.of(edge) : OptionalDouble.empty(), made);
  }

  private List<Yarn> yarns(Map<PieceKind, Motif> motifs) {
    int rounds =
        layout.places().stream().mapToInt(place -> motifs.get(place.kind()).rounds().size()).sum();
    List<Yarn> yarns = new ArrayList<>();
    for (int yarn = 0; yarn < yarnCount; yarn++) {
      long left = Math.round(1500.0 * rounds / yarnCount * (1 + 3 * random.nextDouble()));
      yarns.add(
          Yarn.of(code(yarn), new Srgb(colour(), colour(), colour()))
              .withBall(Optional.of(new Ball(50, 90_000 + 5_000L * random.nextInt(9))))
              .withLeft(Optional.of(new YarnAmount.Length(left)))
              .withShare(random.nextInt(4))
              .withTone(chance(0.7) ? Optional.of(any(Tone.values())) : Optional.empty())
              .withGone(chance(0.05)));
    }
    if (chance(0.2)) {
      int lot = 1 + random.nextInt(yarnCount - 1);
      Yarn first = yarns.get(0);
      Tone tone = first.statedTone().orElse(Tone.MID);
      yarns.set(0, first.withTone(Optional.of(tone)));
      yarns.set(
          lot, yarns.get(lot).withTone(Optional.of(tone)).withLotOf(Optional.of(first.code())));
    }
    return yarns;
  }

  private int colour() {
    return 20 * random.nextInt(13);
  }

  private Rules rules() {
    return Rules.DEFAULT
        .withMinContrast(chance(0.2) ? 5 + random.nextInt(25) : 0)
        .withWithinPiece(any(Rules.WithinPiece.values()))
        .withCentresDiffer(!isLong && chance(0.2))
        .withLotsApart(chance(0.8))
        .withCopies(
            !isLong && chance(0.3) ? OptionalInt.of(1 + random.nextInt(3)) : OptionalInt.empty())
        .withKeepBack(chance(0.3) ? random.nextInt(15) : 0);
  }

  private YarnUse use() {
    int rounds = 1 + random.nextInt(2);
    YarnRate rate =
        chance(0.5)
            ? new YarnRate.PerMetre(Math.max(1, random.nextInt(10)) / 10.0)
            : new YarnRate.Strip(
                BigDecimal.valueOf(400), 1, new YarnAmount.Length(100L * random.nextInt(4)));
    return new YarnUse(code(), rate, rounds, Optional.empty());
  }

  private Look look() {
    Look look = Look.NONE;
    if (chance(0.25)) {
      look = look.withSymmetry(any(Symmetry.values()));
    }
    if (chance(0.3)) {
      look = look.withContrast(random.nextInt(101), random.nextInt(101));
    }
    if (chance(0.12)) {
      String first = code();
      String second = code();
      look = first.equals(second) ? look.withBorders(first) : look.withBorders(first, second);
    }
    if (chance(0.3)) {
      look = look.withZones(List.of(new Look.Zone(where(), some())));
    }
    if (chance(0.25)) {
      String first = code();
      String second = code();
      look =
          first.equals(second)
              ? look
              : look.withApart(List.of(new Look.Pair(first, second, any(Look.Meeting.values()))));
    }
    if (chance(0.25)) {
      int least = random.nextInt(3);
      OptionalInt most =
          chance(0.5) ? OptionalInt.empty() : OptionalInt.of(least + random.nextInt(3));
      look = look.withCounts(List.of(new Look.Count(code(), where(), least, most)));
    }
    if (chance(isLong ? 0.6 : 0.3)) {
      look = look.withFade(fade());
    }
    return chance(isLong ? 0.7 : 0.1) ? look.withOrder(any(Order.values())) : look;
  }

  private List<String> some() {
    List<String> some =
        IntStream.range(0, yarnCount).filter(y -> chance(0.6)).mapToObj(WholeBriefs::code).toList();
    return some.isEmpty() ? List.of(code()) : some;
  }

  private Where where() {
    String group = any(GROUPS);
    boolean there = layout.find(group).isPresent();
    try {
      there |= !layout.select(group).isEmpty();
    } catch (IllegalArgumentException none) {
      there = false;
    }
    List<List<Integer>> rounds = List.of(List.of(), List.of(Where.BORDER), List.of(1));
    return new Where(List.of(there ? group : "all"), rounds.get(random.nextInt(3)));
  }

  private Fade fade() {
    Fade.Order order = any(Fade.Order.values());
    List<String> stated = order == Fade.Order.STATED ? some() : List.of();
    return new Fade(any(Fade.Towards.values()), order, stated, where());
  }

  private Map<Part, Double> weights(Look look) {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      boolean wished = part != Part.ORDER || look.order().isPresent();
      weights.put(part, wished ? random.nextInt(4) : 0.0);
    }
    weights.put(Part.KEEP, 1.0 + random.nextInt(3));
    weights.put(Part.SPREAD, 1.0 + random.nextInt(3));
    return weights;
  }

  private List<PieceNote> notes(Map<PieceKind, Motif> motifs) {
    List<PieceNote> notes = new ArrayList<>();
    for (Place place : layout.places()) {
      int rounds = motifs.get(place.kind()).rounds().size();
      List<String> at = List.of(place.name());
      List<Optional<String>> codes = new ArrayList<>();
      for (int round = 0; round < rounds; round++) {
        codes.add(Optional.of(code()));
      }
      int way = random.nextInt(isLong ? 60 : 30);
      if (way == 0) {
        PieceState state = chance(0.5) ? PieceState.MADE : PieceState.JOINED;
        notes.add(new PieceNote(at, codes, state, Set.of()));
      } else if (way == 1) {
        int worked = 1 + random.nextInt(rounds);
        for (int round = worked; round < rounds; round++) {
          codes.set(round, Optional.empty());
        }
        notes.add(new PieceNote(at, codes, false, PieceState.PLANNED, worked, Set.of()));
      } else if (way == 2) {
        int kept = random.nextInt(rounds);
        codes.replaceAll(code -> Optional.empty());
        codes.set(kept, Optional.of(code()));
        notes.add(new PieceNote(at, codes, PieceState.PLANNED, Set.of()));
      } else if (way == 3) {
        notes.add(new PieceNote(at, List.of(), PieceState.PLANNED, Set.of(code())));
      }
    }
    return notes;
  }

  private List<PileEntry> pile(Map<PieceKind, Motif> motifs) {
    List<PileEntry> pile = new ArrayList<>();
    for (int i = random.nextInt(3); i >= 0; i--) {
      PieceKind kind = layout.places().get(random.nextInt(layout.places().size())).kind();
      List<String> rounds = motifs.get(kind).rounds().stream().map(round -> code()).toList();
      pile.add(new PileEntry(kind, rounds, 1 + random.nextInt(2), Set.of()));
    }
    return pile;
  }
}
