package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.YarnAmount;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/** Random blankets of every shape, so small that brute force settles them. */
public final class TinyBlankets {

  private static final LayoutSize[] SIZES = {
    new LayoutSize(Setting.STRAIGHT, 1, 1, false, false),
    new LayoutSize(Setting.STRAIGHT, 3, 1, false, false),
    new LayoutSize(Setting.STRAIGHT, 2, 2, false, false),
    new LayoutSize(Setting.ON_POINT, 2, 2, false, false),
    new LayoutSize(Setting.ON_POINT, 1, 1, false, true),
    new LayoutSize(Setting.ON_POINT, 1, 2, true, false),
  };

  private final SplittableRandom random;
  private int yarns;

  private TinyBlankets(long seed) {
    random = new SplittableRandom(seed);
  }

  /** The blanket of a seed. */
  public static Blanket of(long seed) {
    return new TinyBlankets(seed).build();
  }

  private Blanket build() {
    LayoutSize size = SIZES[random.nextInt(SIZES.length)];
    yarns = 2 + random.nextInt(3);
    BlanketBuilder builder = BlanketBuilder.of(size);
    int squareRounds = 1 + random.nextInt(size.pieces() > 3 ? 2 : 3);
    int rounds = 0;
    for (PieceKind kind : PieceKind.values()) {
      int count = kind == PieceKind.SQUARE ? squareRounds : 1 + random.nextInt(2);
      builder.motif(kind, rounds(count));
      rounds += count;
    }
    double typical = 1200.0 * size.pieces() * rounds / 3 / yarns;
    for (int yarn = 0; yarn < yarns; yarn++) {
      long stock = Math.round(typical * (0.9 + 2.5 * random.nextDouble()));
      builder.yarn(tone(), colour(), stock);
    }
    rules(builder);
    builder.prefer(weights());
    notes(builder, size, squareRounds);
    Look look =
        chance(0.5) ? Look.NONE : Look.NONE.withContrast(random.nextInt(101), random.nextInt(101));
    return Blanket.ofUnjudged(builder.build().brief().withLook(look));
  }

  private Map<Part, Double> weights() {
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      // without a look that asks for it, order is always full
      weights.put(part, part == Part.ORDER ? 0 : (double) random.nextInt(4));
    }
    return weights;
  }

  private Round[] rounds(int count) {
    Round[] rounds = new Round[count];
    for (int i = 0; i < count; i++) {
      List<Tone> tones = new ArrayList<>();
      for (Tone tone : Tone.values()) {
        if (chance(0.85)) {
          tones.add(tone);
        }
      }
      Round byLength =
          BlanketBuilder.round(100L * (5 + random.nextInt(20)), tones.toArray(Tone[]::new));
      rounds[i] =
          chance(0.2)
              ? new Round(byLength.tones(), new YarnAmount.Weight(300 + random.nextInt(700)))
              : byLength;
    }
    return rounds;
  }

  private void rules(BlanketBuilder builder) {
    builder.within(WithinPiece.values()[random.nextInt(3)]);
    if (chance(0.5)) {
      builder.copies(1 + random.nextInt(2));
    }
    if (chance(0.3)) {
      builder.minContrast(5 + random.nextInt(25));
    }
    if (chance(0.3)) {
      builder.keepBack(10);
    }
    if (chance(0.3)) {
      builder.joining("A", Math.max(1, random.nextInt(30)) / 10.0);
    }
  }

  private void notes(BlanketBuilder builder, LayoutSize size, int squareRounds) {
    int squares = (int) size.squares();
    for (int place = 0; place < squares; place++) {
      String name = Layout.of(size).places().get(place).name();
      if (chance(0.08)) {
        builder.ban(name, code());
      }
      if (chance(0.1)) {
        PieceState state = PieceState.values()[1 + random.nextInt(2)];
        String[] codes = new String[squareRounds];
        for (int round = 0; round < codes.length; round++) {
          codes[round] = code();
        }
        builder.note(name, state, codes);
      } else if (chance(0.1)) {
        String[] codes = new String[squareRounds];
        codes[random.nextInt(squareRounds)] = code();
        builder.note(name, PieceState.PLANNED, codes);
      } else if (chance(0.1)) {
        String[] codes = new String[squareRounds];
        int worked = 1 + random.nextInt(squareRounds);
        for (int round = 0; round < worked; round++) {
          codes[round] = code();
        }
        builder.begun(name, worked, codes);
      }
    }
  }

  private Srgb colour() {
    return new Srgb(20 * random.nextInt(13), 20 * random.nextInt(13), 20 * random.nextInt(13));
  }

  private Tone tone() {
    return Tone.values()[random.nextInt(3)];
  }

  private String code() {
    return String.valueOf((char) ('A' + random.nextInt(yarns)));
  }

  private boolean chance(double probability) {
    return random.nextDouble() < probability;
  }
}
