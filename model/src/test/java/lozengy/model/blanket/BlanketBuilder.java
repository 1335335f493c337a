package lozengy.model.blanket;

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

/** Builds small blankets for tests, step by step; what is not said takes any tone and a metre. */
public final class BlanketBuilder {

  private final LayoutSize layout;
  private final Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
  private final List<Yarn> yarns = new ArrayList<>();
  private final List<PieceNote> notes = new ArrayList<>();
  private Optional<YarnUse> joining = Optional.empty();
  private Rules rules = Rules.DEFAULT;
  private Preferences prefer = Preferences.DEFAULT;

  private BlanketBuilder(LayoutSize layout) {
    this.layout = layout;
  }

  /** On point, with open sides. */
  public static BlanketBuilder onPoint(int across, int down) {
    return new BlanketBuilder(new LayoutSize(Setting.ON_POINT, across, down, false, false));
  }

  /** On point, sides and corners filled. */
  public static BlanketBuilder filled(int across, int down) {
    return new BlanketBuilder(new LayoutSize(Setting.ON_POINT, across, down, true, true));
  }

  /** Straight. */
  public static BlanketBuilder straight(int across, int down) {
    return new BlanketBuilder(new LayoutSize(Setting.STRAIGHT, across, down, false, false));
  }

  /** A motif whose rounds take any tone and 1 m each. */
  public BlanketBuilder motif(PieceKind kind, int rounds) {
    Round[] all = new Round[rounds];
    Arrays.fill(all, round(1000, Tone.values()));
    return motif(kind, all);
  }

  /** A motif of 10 cm squares with these rounds. */
  public BlanketBuilder motif(PieceKind kind, Round... rounds) {
    OptionalDouble edge = kind == PieceKind.SQUARE ? OptionalDouble.of(10) : OptionalDouble.empty();
    motifs.put(kind, new Motif(edge, List.of(rounds)));
    return this;
  }

  /** A round of a motif. */
  public static Round round(long millimetres, Tone... tones) {
    return new Round(EnumSet.copyOf(List.of(tones)), new YarnAmount.Length(millimetres));
  }

  /** A yarn with plenty at hand and share 1. */
  public BlanketBuilder yarn(String code, String name, String colour) {
    return yarn(code, name, colour, 1_000_000_000, 1);
  }

  /** A yarn. */
  public BlanketBuilder yarn(
      String code, String name, String colour, long stockMillimetres, double share) {
    yarns.add(
        Yarn.of(code, Srgb.parse(colour))
            .withName(name)
            .withLeft(Optional.of(new YarnAmount.Length(stockMillimetres)))
            .withShare(share));
    return this;
  }

  /** The invented saltmarsh's yarns: dark MUD, mid SAM and HEA, light REE, SND and BAR. */
  public BlanketBuilder saltmarsh() {
    return yarn("MUD", "Tidal mud", "#2c2a29")
        .yarn("SAM", "Samphire", "#5f7f4a")
        .yarn("HEA", "Heather", "#8d6a9f")
        .yarn("REE", "Reed", "#b9b57a")
        .yarn("SND", "Sand", "#d9c9a3")
        .yarn("BAR", "Barley", "#dccca0");
  }

  /** Yarn along the seams. */
  public BlanketBuilder joining(String code, double metresPerMetre) {
    joining = Optional.of(new YarnUse(code, metresPerMetre));
    return this;
  }

  /** The rules. */
  public BlanketBuilder rules(
      double minContrast, WithinPiece withinPiece, OptionalInt copies, double keepBackPercent) {
    rules =
        Rules.DEFAULT
            .withMinContrast(minContrast)
            .withWithinPiece(withinPiece)
            .withCopies(copies)
            .withKeepBack(keepBackPercent);
    return this;
  }

  /** The weights of parts; others keep their defaults. */
  public BlanketBuilder prefer(Map<Part, Double> weights) {
    prefer = new Preferences(weights);
    return this;
  }

  /** A piece's state and rounds by their codes, {@code null} for an open one. */
  public BlanketBuilder piece(String name, PieceState state, String... codes) {
    List<Optional<String>> rounds = Arrays.stream(codes).map(Optional::ofNullable).toList();
    notes.add(new PieceNote(List.of(name), rounds, state, Set.of()));
    return this;
  }

  /** A piece of which some rounds are worked; {@code null} for an open one. */
  public BlanketBuilder begun(String name, int worked, String... codes) {
    List<Optional<String>> rounds = Arrays.stream(codes).map(Optional::ofNullable).toList();
    notes.add(new PieceNote(List.of(name), rounds, false, PieceState.PLANNED, worked, Set.of()));
    return this;
  }

  /** Keeps a yarn from a piece. */
  public BlanketBuilder ban(String name, String code) {
    notes.add(new PieceNote(List.of(name), List.of(), PieceState.PLANNED, Set.of(code)));
    return this;
  }

  /** The blanket; its brief is not judged, so that tests may ask for what no brief should. */
  public Blanket build() {
    return Blanket.ofUnjudged(
        Brief.of("Saltmarsh test", layout, motifs, yarns)
            .withJoining(joining)
            .withRules(rules)
            .withPrefer(prefer)
            .withPieces(notes));
  }

  /**
   * Sequences from text: pieces apart by spaces, the rounds of each by commas, {@code ~} for an
   * open one. Fewer pieces than the blanket has leave the others open.
   */
  public static Sequences sequences(Blanket blanket, String text) {
    Sequences sequences = blanket.open();
    String[] pieces = text.trim().split("\\s+");
    for (int piece = 0; piece < pieces.length; piece++) {
      String[] codes = pieces[piece].split(",");
      for (int round = 0; round < codes.length; round++) {
        if (!codes[round].equals("~")) {
          sequences.set(piece, round, blanket.yarnIndex(codes[round]));
        }
      }
    }
    return sequences;
  }
}
