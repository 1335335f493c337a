package lozengy.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.score.Scorer;

/** Blankets to show, in invented shades, filled yarn by yarn without any care for the score. */
public final class Samples {

  private static final String[][] SHADES = {
    {"MUD", "Tidal mud", "#2c2a29"}, {"CRK", "Creek at dusk", "#1d4552"},
    {"SLO", "Sloe", "#2b2d5c"}, {"PEA", "Peat", "#553527"},
    {"SED", "Sedge", "#3d5230"}, {"GLA", "Glasswort", "#7d2a3a"},
    {"MUS", "Mussel shell", "#54406b"}, {"SAM", "Samphire", "#7f9440"},
    {"HEA", "Bell heather", "#a06a9c"}, {"TID", "Tidewater", "#3f8a90"},
    {"RUS", "Rusted chain", "#b0623a"}, {"REE", "Reed", "#b39b5c"},
    {"FOA", "Foam", "#f1eee3"}, {"MAR", "Marram", "#ccd48e"},
    {"SKY", "Washed sky", "#98bfdb"}, {"SHE", "Shell", "#e9c9b6"},
    {"SND", "Sand", "#dcc998"}, {"MIS", "Morning mist", "#c9cdd6"},
  };

  private Samples() {}

  /** Eighteen yarns with put-ups. */
  public static List<Yarn> yarns() {
    List<Yarn> yarns = new ArrayList<>();
    for (String[] shade : SHADES) {
      yarns.add(yarn(shade[0], shade[1], shade[2]));
    }
    return yarns;
  }

  /** Three balls of 50 g and 120 m. */
  public static Yarn yarn(String code, String name, String colour) {
    return Yarn.of(code, Srgb.parse(colour))
        .withName(name)
        .withBall(Optional.of(new Ball(50, 120_000)))
        .withBalls(3);
  }

  /** A cushion whose first yarns bear these names. */
  public static Arrangement named(String title, List<String> names) {
    List<Yarn> yarns = yarns();
    for (int i = 0; i < names.size(); i++) {
      yarns.set(i, yarn(SHADES[i][0], names.get(i), SHADES[i][2]));
    }
    return filled(brief(title, onPoint(3, 3), yarns, List.of()), 5);
  }

  /** A motif of rounds that grow by the same length; the border is dark, the centre light. */
  public static Motif motif(OptionalDouble edgeCm, int rounds) {
    List<Round> made = new ArrayList<>();
    for (int round = 0; round < rounds; round++) {
      Set<Tone> tones =
          round == rounds - 1
              ? EnumSet.of(Tone.DARK)
              : round == 0 ? EnumSet.of(Tone.LIGHT) : EnumSet.of(Tone.LIGHT, Tone.MID);
      made.add(new Round(tones, new YarnAmount.Length(1600 + 1300 * round)));
    }
    return new Motif(edgeCm, made);
  }

  /** A brief with default rules, joining and edging. */
  public static Brief brief(
      String title, LayoutSize size, List<Yarn> yarns, List<PieceNote> notes) {
    return brief(title, size, 5, yarns, notes);
  }

  /** A brief whose squares have so many rounds. */
  public static Brief brief(
      String title, LayoutSize size, int rounds, List<Yarn> yarns, List<PieceNote> notes) {
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    motifs.put(PieceKind.SQUARE, motif(OptionalDouble.of(10), rounds));
    if (size.sideTriangles()) {
      motifs.put(PieceKind.SIDE_TRIANGLE, motif(OptionalDouble.of(13.5), 4));
    }
    if (size.cornerTriangles()) {
      motifs.put(PieceKind.CORNER_TRIANGLE, motif(OptionalDouble.empty(), 3));
    }
    return Brief.of(title, size, motifs, yarns)
        .withJoining(Optional.of(new YarnUse(yarns.get(0).code(), 3.5)))
        .withEdging(List.of(new YarnUse(yarns.get(1).code(), 9)))
        .withPieces(notes);
  }

  /** On point with triangles. */
  public static LayoutSize onPoint(int across, int down) {
    return new LayoutSize(Setting.ON_POINT, across, down, true, true);
  }

  /** On point with open sides and corners. */
  public static LayoutSize open(int across, int down) {
    return new LayoutSize(Setting.ON_POINT, across, down, false, false);
  }

  public static LayoutSize straight(int across, int down) {
    return new LayoutSize(Setting.STRAIGHT, across, down, false, false);
  }

  /** A throw of 6 by 8 with some pieces made and joined. */
  public static Arrangement saltmarshThrow() {
    return filled(
        brief(
            "Saltmarsh throw",
            onPoint(6, 8),
            yarns(),
            List.of(
                worked(PieceState.JOINED, "top-left", "FOA", "SAM", "MUD"),
                worked(PieceState.JOINED, "r1c1", "FOA", "SAM", "SKY", "HEA", "SLO"),
                worked(PieceState.MADE, "r4c3", "SND", "HEA", "MIS", "RUS", "CRK"))),
        1);
  }

  /** A cushion whose yarns are dark or mid, and whose rounds take any tone. */
  public static Brief withoutLights(String title) {
    List<Yarn> darker = yarns().subList(0, 12);
    Brief usual = brief(title, onPoint(2, 3), darker, List.of());
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    usual
        .motifs()
        .forEach(
            (kind, motif) ->
                motifs.put(
                    kind,
                    new Motif(
                        motif.edgeCm(),
                        motif.rounds().stream()
                            .map(round -> new Round(EnumSet.allOf(Tone.class), round.amount()))
                            .toList())));
    return usual.withMotifs(motifs);
  }

  /** A note of a piece that has been worked. */
  public static PieceNote worked(PieceState state, String at, String... codes) {
    List<Optional<String>> rounds = new ArrayList<>();
    for (String code : codes) {
      rounds.add(Optional.of(code));
    }
    return new PieceNote(List.of(at), rounds, state, Set.of());
  }

  /** Fills a brief: tones, adjacent rounds and borders on seams hold. */
  public static Arrangement filled(Brief brief, long seed) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    Sequences sequences = blanket.locks();
    Random random = new Random(seed);
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (sequences.yarn(piece, round) == Sequences.OPEN) {
          sequences.set(piece, round, choose(blanket, sequences, piece, round, random));
        }
      }
    }
    return new Arrangement(
        blanket,
        sequences,
        Optional.empty(),
        Scorer.score(blanket, sequences, Optional.empty()),
        Optional.of(new Arrangement.Bound(95.5, "parts apart")),
        Optional.of(new Arrangement.Solved(7, 250_000, Optional.of(1.5), "0.1.0", "none")));
  }

  private static int choose(
      Blanket blanket, Sequences sequences, int piece, int round, Random random) {
    List<Integer> yarns = new ArrayList<>(IntStream.range(0, blanket.yarnCount()).boxed().toList());
    Collections.shuffle(yarns, random);
    for (int yarn : yarns) {
      boolean repeats = round > 0 && sequences.yarn(piece, round - 1) == yarn;
      boolean border = round == blanket.roundCount(piece) - 1;
      if (blanket.motifs().toneAllows(blanket.kind(piece), round, yarn)
          && !repeats
          && !(border && neighbourHas(blanket, sequences, piece, yarn))) {
        return yarn;
      }
    }
    throw new IllegalStateException("no yarn left for round " + round + " of piece " + piece);
  }

  private static boolean neighbourHas(Blanket blanket, Sequences sequences, int piece, int yarn) {
    Pairs seams = blanket.layout().seams();
    for (int i = 0; i < seams.size(); i++) {
      int other =
          seams.first()[i] == piece
              ? seams.second()[i]
              : seams.second()[i] == piece ? seams.first()[i] : -1;
      if (other >= 0 && sequences.border(other) == yarn) {
        return true;
      }
    }
    return false;
  }
}
