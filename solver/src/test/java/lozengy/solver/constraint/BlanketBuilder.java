package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/** Builds blankets for tests in a few words. Yarns are coded {@code A}, {@code B}, … */
public final class BlanketBuilder {

  private final LayoutSize size;
  private final Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
  private final List<Yarn> yarns = new ArrayList<>();
  private final List<PieceNote> notes = new ArrayList<>();
  private double minContrast;
  private WithinPiece withinPiece = WithinPiece.ADJACENT_DIFFER;
  private OptionalInt copies = OptionalInt.empty();
  private double keepBackPercent;
  private Optional<YarnUse> joining = Optional.empty();
  private Preferences prefer = Preferences.DEFAULT;

  private BlanketBuilder(LayoutSize size) {
    this.size = size;
  }

  /** Any layout. */
  public static BlanketBuilder of(LayoutSize size) {
    return new BlanketBuilder(size);
  }

  /** Squares set straight. */
  public static BlanketBuilder straight(int across, int down) {
    return new BlanketBuilder(new LayoutSize(Setting.STRAIGHT, across, down, false, false));
  }

  /** Squares on point, outline open. */
  public static BlanketBuilder open(int across, int down) {
    return new BlanketBuilder(new LayoutSize(Setting.ON_POINT, across, down, false, false));
  }

  /** Squares on point, sides and corners filled with triangles. */
  public static BlanketBuilder filled(int across, int down) {
    return new BlanketBuilder(new LayoutSize(Setting.ON_POINT, across, down, true, true));
  }

  /** Gives a kind of piece a motif. */
  public BlanketBuilder motif(PieceKind kind, Round... rounds) {
    OptionalDouble edgeCm =
        kind == PieceKind.SQUARE ? OptionalDouble.of(10) : OptionalDouble.empty();
    motifs.put(kind, new Motif(edgeCm, List.of(rounds)));
    return this;
  }

  /** A round by length. */
  public static Round round(long millimetres, Tone... tones) {
    Set<Tone> allowed = tones.length == 0 ? Set.of(Tone.values()) : Set.of(tones);
    return new Round(allowed, new YarnAmount.Length(millimetres));
  }

  /** Adds a yarn, 100 m to a ball of 50 g for the first, 10 m more for each later one. */
  public BlanketBuilder yarn(Tone tone, Srgb colour, long millimetres) {
    int index = yarns.size();
    String code = index < 26 ? String.valueOf((char) ('A' + index)) : "Y" + index;
    Optional<Ball> ball = Optional.of(new Ball(50, 100_000 + 10_000L * index));
    Optional<YarnAmount> left = Optional.of(new YarnAmount.Length(millimetres));
    yarns.add(Yarn.of(code, colour).withBall(ball).withLeft(left).withTone(Optional.of(tone)));
    return this;
  }

  /** Adds a yarn of a tone, its colour far from the others of this builder where few. */
  public BlanketBuilder yarn(Tone tone, long millimetres) {
    int index = yarns.size();
    int red = index * 97 % 256;
    int green = index * 57 % 256;
    int blue = index * 151 % 256;
    return yarn(tone, new Srgb(red, green, blue), millimetres);
  }

  /** Adds equal yarns. */
  public BlanketBuilder yarns(int count, Tone tone, long millimetres) {
    IntStream.range(0, count).forEach(i -> yarn(tone, millimetres));
    return this;
  }

  /** Sets the contrast that borders on a seam must reach. */
  public BlanketBuilder minContrast(double contrast) {
    minContrast = contrast;
    return this;
  }

  /** Sets the rule within a piece. */
  public BlanketBuilder within(WithinPiece rule) {
    withinPiece = rule;
    return this;
  }

  /** Sets how many pieces may share a sequence. */
  public BlanketBuilder copies(int allowed) {
    copies = OptionalInt.of(allowed);
    return this;
  }

  /** Sets what is kept back. */
  public BlanketBuilder keepBack(double percent) {
    keepBackPercent = percent;
    return this;
  }

  /** Joins in a yarn. */
  public BlanketBuilder joining(String code, double metresPerMetre) {
    joining = Optional.of(new YarnUse(code, metresPerMetre));
    return this;
  }

  /** Sets what weighs. */
  public BlanketBuilder prefer(Map<Part, Double> weights) {
    prefer = new Preferences(weights);
    return this;
  }

  /** Notes a piece of which some rounds are worked, from the centre; null codes are open. */
  public BlanketBuilder begun(String name, int worked, String... codes) {
    List<Optional<String>> rounds = Stream.of(codes).map(Optional::ofNullable).toList();
    notes.add(new PieceNote(List.of(name), rounds, false, PieceState.PLANNED, worked, Set.of()));
    return this;
  }

  /** Notes rounds of a piece, centre first; {@code null} leaves one open. */
  public BlanketBuilder note(String piece, PieceState state, String... rounds) {
    List<Optional<String>> codes = Stream.of(rounds).map(Optional::ofNullable).toList();
    notes.add(new PieceNote(List.of(piece), codes, state, Set.of()));
    return this;
  }

  /** Bans yarns from a piece. */
  public BlanketBuilder ban(String piece, String... codes) {
    notes.add(
        new PieceNote(
            List.of(piece), List.of(), PieceState.PLANNED, new LinkedHashSet<>(List.of(codes))));
    return this;
  }

  /** The blanket; locks may break rules. */
  public Blanket build() {
    return Blanket.ofUnjudged(
        Brief.of("test", size, motifs, yarns)
            .withJoining(joining)
            .withRules(
                Rules.DEFAULT
                    .withMinContrast(minContrast)
                    .withWithinPiece(withinPiece)
                    .withCopies(copies)
                    .withKeepBack(keepBackPercent))
            .withPrefer(prefer)
            .withPieces(notes));
  }
}
