package lozengy.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/**
 * Random briefs of 2 to 12 border yarns, in 2 to 5 classes where min-contrast joins them. Each is
 * known to be possible: borders are planted first, by the two sides of the layout and then by
 * changes that keep every seam, and the stock is what the planted arrangement takes and some more.
 */
final class FewBorderBriefs {

  /** Colours of classes, far apart; shades of one differ by a step of a channel. */
  private static final int[][] CLASSES = {
    {0x20, 0x20, 0x60},
    {0x70, 0x10, 0x10},
    {0x10, 0x50, 0x10},
    {0x40, 0x40, 0x40},
    {0x60, 0x20, 0x70}
  };

  /** Yarns for all rounds but the border. */
  static final int LIGHTS = 8;

  private final SplittableRandom random;
  private Blanket blanket;
  private Sequences planted;
  private int darks;

  private FewBorderBriefs(long seed) {
    random = new SplittableRandom(seed);
  }

  /**
   * A random brief.
   *
   * @param seed fixes it
   * @param mostPieces pieces that it has at most; at least 25
   */
  static Brief of(long seed, int mostPieces) {
    return new FewBorderBriefs(seed).brief(mostPieces);
  }

  private Brief brief(int mostPieces) {
    LayoutSize size = size(mostPieces);
    darks = 2 + random.nextInt(random.nextInt(3) == 0 ? 11 : 3);
    int classes = Math.min(darks, 2 + random.nextInt(random.nextBoolean() ? 2 : 4));
    boolean joined = classes < darks;
    int symmetry = random.nextInt(6);
    long plenty = 1_000_000_000L;
    long[] stock = new long[darks + LIGHTS];
    Arrays.fill(stock, plenty);
    Rules rules =
        Rules.DEFAULT
            .withMinContrast(joined ? 8 : 0)
            .withCopies(random.nextInt(3) == 0 ? OptionalInt.of(1) : OptionalInt.empty());
    Brief ample =
        Brief.of("Few", size, motifs(size, rules), yarns(classes, stock))
            .withRules(rules)
            .withPrefer(new Preferences(Map.of()));
    // a mirror keeps the sides of a layout on point; its stock stays ample
    if (symmetry == 0 && size.setting() == Setting.ON_POINT && rules.copies().isEmpty()) {
      return ample.withLook(Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT));
    }
    blanket = Blanket.of(ample);
    plantBorders(random.nextBoolean() ? 40 : 3);
    plantInside();
    double slack = 1 + new double[] {0.02, 0.05, 0.3}[random.nextInt(3)];
    long[] used = blanket.usedMillimetres(planted);
    Brief stocked =
        ample.withYarns(
            yarns(classes, Arrays.stream(used).map(use -> (long) (use * slack) + 1).toArray()));
    return switch (random.nextInt(4)) {
      case 0 -> stocked.withPieces(locks());
      case 1 -> stocked.withPieces(bans());
      case 2 -> stocked.withPile(pile());
      default -> stocked;
    };
  }

  private LayoutSize size(int mostPieces) {
    boolean onPoint = random.nextInt(4) > 0;
    boolean finished = onPoint && random.nextInt(4) > 0;
    while (true) {
      LayoutSize size =
          new LayoutSize(
              onPoint ? Setting.ON_POINT : Setting.STRAIGHT,
              2 + random.nextInt(40),
              2 + random.nextInt(40),
              finished,
              finished);
      if (size.pieces() >= 25 && size.pieces() <= mostPieces) {
        return size;
      }
    }
  }

  private Map<PieceKind, Motif> motifs(LayoutSize size, Rules rules) {
    int lights = rules.copies().isPresent() ? 5 : 1 + random.nextInt(3);
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    Layout.of(size)
        .places()
        .forEach(place -> motifs.computeIfAbsent(place.kind(), kind -> motif(kind, lights)));
    return motifs;
  }

  private static Motif motif(PieceKind kind, int lights) {
    int part = kind == PieceKind.SQUARE ? 4 : kind == PieceKind.SIDE_TRIANGLE ? 2 : 1;
    List<Round> rounds = new ArrayList<>();
    for (int round = 0; round <= lights; round++) {
      Tone tone = round == lights ? Tone.DARK : Tone.LIGHT;
      rounds.add(
          new Round(EnumSet.of(tone), new YarnAmount.Length(part * (400L + 300 * round) + 70)));
    }
    return new Motif(
        kind == PieceKind.SQUARE ? OptionalDouble.of(10) : OptionalDouble.empty(), rounds);
  }

  private List<Yarn> yarns(int classes, long[] stock) {
    List<Yarn> yarns = new ArrayList<>();
    for (int i = 0; i < stock.length; i++) {
      boolean dark = i < darks;
      int[] base = CLASSES[i % classes % CLASSES.length];
      int shade = i / classes;
      Srgb colour =
          dark
              ? darks > classes || classes <= CLASSES.length
                  ? new Srgb(base[0] + shade, base[1] + shade, base[2])
                  : new Srgb(10 * i, 5 * i, 3 * i)
              : new Srgb(200 + 5 * (i % 10), 255 - 7 * (i % 10), 180 + 4 * (i % 10));
      yarns.add(
          Yarn.of("Y" + i, colour)
              .withName("Yarn " + i)
              .withLeft(Optional.of(new YarnAmount.Length(stock[i])))
              .withTone(Optional.of(dark ? Tone.DARK : Tone.LIGHT)));
    }
    return yarns;
  }

  private void plantBorders(int turns) {
    int pieces = blanket.pieceCount();
    planted = blanket.open();
    double[] weight = new double[darks];
    boolean odd = random.nextBoolean();
    Arrays.setAll(weight, yarn -> odd ? 0.3 + random.nextDouble() : 1);
    List<List<Integer>> beside = new ArrayList<>();
    IntStream.range(0, pieces).forEach(piece -> beside.add(new ArrayList<>()));
    Pairs seams = blanket.layout().seams();
    for (int i = 0; i < seams.size(); i++) {
      beside.get(seams.first()[i]).add(seams.second()[i]);
      beside.get(seams.second()[i]).add(seams.first()[i]);
    }
    int other = 1;
    while (blanket.yarns().sameBorder(0, other)) {
      other++;
    }
    for (int piece = 0; piece < pieces; piece++) {
      boolean onPoint = blanket.layout().size().setting() == Setting.ON_POINT;
      int x = blanket.place(piece).x();
      int y = blanket.place(piece).y();
      int side = onPoint ? y % 2 : (x / 2 + y / 2) % 2;
      planted.set(piece, planted.rounds(piece) - 1, side == 0 ? 0 : other);
    }
    for (int turn = 0; turn < turns * pieces; turn++) {
      int piece = random.nextInt(pieces);
      int yarn = random.nextInt(darks);
      boolean meets =
          beside.get(piece).stream()
              .noneMatch(b -> blanket.yarns().sameBorder(yarn, planted.border(b)));
      if (meets && random.nextDouble() * 1.3 < weight[yarn]) {
        planted.set(piece, planted.rounds(piece) - 1, yarn);
      }
    }
  }

  private void plantInside() {
    Set<List<Integer>> seen = new HashSet<>();
    for (int piece = 0; piece < planted.pieces(); piece++) {
      do {
        for (int round = planted.rounds(piece) - 2; round >= 0; round--) {
          int outer = planted.yarn(piece, round + 1);
          int yarn = darks + random.nextInt(LIGHTS);
          planted.set(piece, round, yarn == outer ? darks + (yarn - darks + 1) % LIGHTS : yarn);
        }
      } while (!seen.add(Arrays.stream(planted.of(piece)).boxed().toList())
          && blanket.brief().rules().copies().isPresent());
    }
  }

  private List<String> codes(int piece) {
    return Arrays.stream(planted.of(piece)).mapToObj(yarn -> blanket.yarn(yarn).code()).toList();
  }

  private List<PieceNote> locks() {
    List<PieceNote> notes = new ArrayList<>();
    for (int piece = 0; piece < planted.pieces(); piece++) {
      if (random.nextInt(15) == 0) {
        List<Optional<String>> rounds = codes(piece).stream().map(Optional::of).toList();
        PieceState state = PieceState.values()[random.nextInt(3)];
        notes.add(new PieceNote(List.of(blanket.place(piece).name()), rounds, state, Set.of()));
      }
    }
    return notes;
  }

  /** One dark yarn banned wherever the planted arrangement lets that be, in one half. */
  private List<PieceNote> bans() {
    int yarn = random.nextInt(darks);
    List<PieceNote> notes = new ArrayList<>();
    for (int piece = 0; piece < planted.pieces() / 2; piece++) {
      if (planted.border(piece) != yarn && random.nextInt(3) > 0) {
        notes.add(
            new PieceNote(
                List.of(blanket.place(piece).name()),
                List.of(),
                PieceState.PLANNED,
                Set.of(blanket.yarn(yarn).code())));
      }
    }
    return notes;
  }

  private List<PileEntry> pile() {
    List<PileEntry> pile = new ArrayList<>();
    for (int piece = 0; piece < planted.pieces(); piece++) {
      if (random.nextInt(12) == 0) {
        pile.add(new PileEntry(blanket.kind(piece), codes(piece), 1, Set.of()));
      }
    }
    return pile;
  }
}
