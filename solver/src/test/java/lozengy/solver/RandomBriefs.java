package lozengy.solver;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;

/** Random briefs of every shape, for tests that hold one way of working against another. */
public final class RandomBriefs {

  private final SplittableRandom random;
  private final SplittableRandom apart;

  private RandomBriefs(long seed) {
    random = new SplittableRandom(seed);
    apart = new SplittableRandom(~seed);
  }

  /**
   * A random brief.
   *
   * @param seed fixes it
   * @param most largest number of squares across and down
   * @param mostYarns largest number of yarns
   */
  public static Brief of(long seed, int most, int mostYarns) {
    return new RandomBriefs(seed).brief(most, mostYarns);
  }

  private int below(int bound) {
    return random.nextInt(bound);
  }

  private Brief brief(int most, int mostYarns) {
    boolean onPoint = below(4) > 0;
    LayoutSize size =
        new LayoutSize(
            onPoint ? Setting.ON_POINT : Setting.STRAIGHT,
            1 + below(most),
            1 + below(most),
            onPoint && below(3) > 0,
            onPoint && below(3) > 0);
    int yarnCount = 2 + below(mostYarns - 1);
    Layout layout = Layout.of(size);
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    for (Place place : layout.places()) {
      motifs.computeIfAbsent(place.kind(), this::motif);
    }
    List<Yarn> yarns = new ArrayList<>();
    double roundsEach = 4.0 * layout.places().size() / yarnCount;
    for (int i = 0; i < yarnCount; i++) {
      long stock = Math.round(3000 * roundsEach * (0.7 + 2 * random.nextDouble()));
      yarns.add(
          Yarn.of("Y" + i, new Srgb(below(256), below(256), below(256)))
              .withName("Yarn " + i)
              .withBall(Optional.of(new Ball(50, 110_000 + 5_000L * below(5))))
              .withLeft(Optional.of(new YarnAmount.Length(stock)))
              .withShare(1 + below(3))
              .withTone(Optional.of(Tone.values()[i % 3])));
    }
    Rules rules =
        Rules.DEFAULT
            .withMinContrast(below(3) == 0 ? 6 : 0)
            .withWithinPiece(Rules.WithinPiece.values()[below(3)])
            .withCopies(below(2) == 0 ? OptionalInt.empty() : OptionalInt.of(1 + below(3)))
            .withKeepBack(below(2) == 0 ? 0 : 5);
    Map<Part, Double> weights = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      // without a look that asks for it, order is always full
      double weight = part.ordinal() >= Part.ORDER.ordinal() ? 0 : below(4);
      weights.put(part, weight);
    }
    // told apart by a source of its own, so that a seed gives the pieces that it gave before
    weights.put(Part.CONTRAST_BETWEEN, (double) apart.nextInt(4));
    weights.put(Part.CONTRAST_WITHIN, (double) apart.nextInt(4));
    return Brief.of("Random", size, motifs, yarns)
        .withJoining(below(2) == 0 ? Optional.empty() : Optional.of(new YarnUse("Y0", 3.5)))
        .withEdging(below(2) == 0 ? List.of() : List.of(new YarnUse("Y1", 9)))
        .withRules(rules)
        .withPrefer(new Preferences(weights))
        .withPieces(notes(layout, motifs, yarns));
  }

  private Motif motif(PieceKind kind) {
    int rounds = 1 + below(kind == PieceKind.SQUARE ? 4 : 3);
    List<Round> made = new ArrayList<>();
    for (int i = 0; i < rounds; i++) {
      Set<Tone> tones = EnumSet.noneOf(Tone.class);
      for (Tone tone : Tone.values()) {
        if (below(3) > 0) {
          tones.add(tone);
        }
      }
      boolean byWeight = below(4) == 0;
      made.add(
          new Round(
              tones.isEmpty() ? EnumSet.allOf(Tone.class) : tones,
              byWeight
                  ? new YarnAmount.Weight(500 + 100L * below(20))
                  : new YarnAmount.Length(1000 + 100L * below(50))));
    }
    return new Motif(
        kind == PieceKind.SQUARE ? OptionalDouble.of(10) : OptionalDouble.empty(), made);
  }

  private List<PieceNote> notes(Layout layout, Map<PieceKind, Motif> motifs, List<Yarn> yarns) {
    List<PieceNote> notes = new ArrayList<>();
    int count = below(3) == 0 ? below(4) : 0;
    Set<String> noted = new LinkedHashSet<>();
    for (int i = 0; i < count; i++) {
      Place place = layout.places().get(below(layout.places().size()));
      if (!noted.add(place.name())) {
        continue;
      }
      boolean made = below(2) == 0;
      List<Optional<String>> rounds = new ArrayList<>();
      for (Round round : motifs.get(place.kind()).rounds()) {
        boolean given = made || below(2) == 0;
        rounds.add(given ? Optional.of(fitting(round, yarns)) : Optional.empty());
      }
      PieceState state = made ? PieceState.values()[1 + below(2)] : PieceState.PLANNED;
      Set<String> not = made ? Set.of() : Set.of(yarns.get(below(yarns.size())).code());
      int worked = 0;
      while (!made && worked < rounds.size() && rounds.get(worked).isPresent()) {
        worked++;
      }
      for (int round = worked; !made && round < rounds.size(); round++) {
        rounds.set(round, Optional.empty());
      }
      List<Optional<String>> held = made || worked > 0 ? rounds : List.of();
      notes.add(new PieceNote(List.of(place.name()), held, false, state, worked, not));
    }
    return notes;
  }

  private String fitting(Round round, List<Yarn> yarns) {
    for (int tries = 0; tries < 20; tries++) {
      Yarn yarn = yarns.get(below(yarns.size()));
      if (round.tones().contains(yarn.statedTone().orElseThrow())) {
        return yarn.code();
      }
    }
    return yarns.get(0).code();
  }
}
