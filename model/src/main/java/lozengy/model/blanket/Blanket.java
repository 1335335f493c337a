package lozengy.model.blanket;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.Lab;
import lozengy.model.colour.LabColours;
import lozengy.model.colour.SeenDifferences;
import lozengy.model.colour.Tone;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Measures;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/**
 * A brief made ready to judge by. Pieces are indices of {@link Layout#places()}, yarns indices of
 * {@link Brief#yarns()}, rounds count from the centre, layers from the border: layer 0 is the
 * border. Amounts are whole millimetres of yarn, so that totals are exact. Immutable.
 */
public final class Blanket {

  private final Brief brief;
  private final Layout layout;
  private final Motif[] motifs;
  private final Map<String, Integer> yarnIndex = new HashMap<>();
  private final Tone[] tones;
  private final Lab[] labs;
  private final double[][] differences;
  private final long[] usable;
  private final long[] fixedUse;
  private final long[] settled;
  private final long joiningUse;
  private final long edgingUse;
  private final long[][][] needs;
  private final boolean[][][] toneAllows;
  private final int layers;
  private final PieceState[] states;
  private final Sequences locks;
  private final Map<Integer, boolean[]> bans = new HashMap<>();
  private final ReadyLook look;
  private SeenDifferences seen;

  private Blanket(Brief brief) {
    this.brief = brief;
    this.layout = Layout.of(brief.layout());
    this.motifs = new Motif[PieceKind.values().length];
    brief.motifs().forEach((kind, motif) -> motifs[kind.ordinal()] = motif);
    List<Yarn> yarns = brief.yarns();
    int count = yarns.size();
    this.tones = new Tone[count];
    this.labs = new Lab[count];
    this.usable = new long[count];
    this.fixedUse = new long[count];
    this.settled = new long[count];
    for (int yarn = 0; yarn < count; yarn++) {
      Yarn each = yarns.get(yarn);
      yarnIndex.put(each.code(), yarn);
      labs[yarn] = LabColours.of(each.colour());
      double lightness = labs[yarn].lightness();
      tones[yarn] = each.statedTone().orElseGet(() -> brief.tones().toneOf(lightness));
      usable[yarn] = usable(each.stockMillimetres());
    }
    this.differences = new double[count][count];
    for (int a = 0; a < count; a++) {
      for (int b = 0; b < a; b++) {
        differences[a][b] = ColourDifference.ciede2000(labs[a], labs[b]);
        differences[b][a] = differences[a][b];
      }
    }
    this.needs = new long[motifs.length][][];
    this.toneAllows = new boolean[motifs.length][][];
    for (PieceKind kind : brief.motifs().keySet()) {
      compileMotif(kind);
    }
    int pieces = layout.places().size();
    this.layers = IntStream.range(0, pieces).map(this::roundCount).max().orElse(0);
    this.states = new PieceState[pieces];
    Arrays.fill(states, PieceState.PLANNED);
    this.locks = open();
    brief.pieces().forEach(this::addNote);
    this.look = new ReadyLook(brief.look(), layout, count, yarnIndex::get);
    if (look.givesBorders()) {
      lockBorders();
    }
    Measures measures = Measures.of(layout, brief.motifs());
    FixedUse use = new FixedUse(brief, layout, states);
    this.joiningUse = use.joiningMillimetres(measures);
    this.edgingUse = use.edgingMillimetres(measures);
    brief.joining().ifPresent(joining -> fixedUse[yarnIndex.get(joining.yarn())] += joiningUse);
    brief.edging().ifPresent(edging -> fixedUse[yarnIndex.get(edging.yarn())] += edgingUse);
    for (int yarn = 0; yarn < count; yarn++) {
      int each = yarn;
      yarns
          .get(yarn)
          .counted()
          .ifPresent(
              counted -> use.settledPieces(counted).stream().forEach(piece -> settle(piece, each)));
    }
  }

  /** Takes what a worked piece holds of a yarn off that yarn's use. */
  private void settle(int piece, int yarn) {
    for (int round = 0; round < roundCount(piece); round++) {
      if (locked(piece, round) == yarn) {
        fixedUse[yarn] -= needMillimetres(kind(piece), round, yarn);
        settled[yarn] += needMillimetres(kind(piece), round, yarn);
      }
    }
  }

  /**
   * Makes a brief ready.
   *
   * @throws InputException with all mistakes if the brief's parts do not fit together
   */
  public static Blanket of(Brief brief) {
    List<Mistake> mistakes = BriefMistakes.of(brief);
    if (!mistakes.isEmpty()) {
      throw new InputException(mistakes);
    }
    return ofUnjudged(brief);
  }

  /**
   * Makes a brief ready whose references have been judged already, so that locks can be held
   * against the rules.
   */
  public static Blanket ofUnjudged(Brief brief) {
    return new Blanket(brief);
  }

  private long usable(long stock) {
    return (long) Math.floor(stock * (100 - brief.rules().keepBackPercent()) / 100 + 1e-6);
  }

  private void compileMotif(PieceKind kind) {
    List<Round> rounds = motifs[kind.ordinal()].rounds();
    long[][] need = new long[rounds.size()][yarnCount()];
    boolean[][] allows = new boolean[rounds.size()][yarnCount()];
    for (int round = 0; round < rounds.size(); round++) {
      for (int yarn = 0; yarn < yarnCount(); yarn++) {
        Optional<Ball> ball = brief.yarns().get(yarn).ball();
        need[round][yarn] = rounds.get(round).amount().millimetres(ball.orElse(null));
        allows[round][yarn] = rounds.get(round).tones().contains(tones[yarn]);
      }
    }
    needs[kind.ordinal()] = need;
    toneAllows[kind.ordinal()] = allows;
  }

  private void addNote(PieceNote note) {
    for (Place place : layout.select(note.at())) {
      int piece = place.index();
      if (note.state().compareTo(states[piece]) > 0) {
        states[piece] = note.state();
      }
      List<Optional<String>> codes = note.codes(locks.rounds(piece));
      for (int round = 0; round < codes.size(); round++) {
        if (codes.get(round).isPresent()) {
          locks.set(piece, round, yarnIndex.get(codes.get(round).get()));
        }
      }
      for (String code : note.not()) {
        bans.computeIfAbsent(piece, p -> new boolean[yarnCount()])[yarnIndex.get(code)] = true;
      }
    }
  }

  /** Locks the borders that the look gives, but for those that are worked or locked already. */
  private void lockBorders() {
    for (int piece = 0; piece < states.length; piece++) {
      int border = roundCount(piece) - 1;
      if (states[piece] == PieceState.PLANNED && locks.yarn(piece, border) == Sequences.OPEN) {
        locks.set(piece, border, look.border(piece));
      }
    }
  }

  /** The brief. */
  public Brief brief() {
    return brief;
  }

  /** The layout. */
  public Layout layout() {
    return layout;
  }

  /** How many pieces. */
  public int pieceCount() {
    return states.length;
  }

  /** The place of a piece. */
  public Place place(int piece) {
    return layout.places().get(piece);
  }

  /** The kind of a piece. */
  public PieceKind kind(int piece) {
    return place(piece).kind();
  }

  /** How many rounds a piece has. */
  public int roundCount(int piece) {
    return motif(kind(piece)).rounds().size();
  }

  /** How many rounds the piece with the most has; a motif that no piece follows does not count. */
  public int layerCount() {
    return layers;
  }

  /** The motif of a kind. */
  public Motif motif(PieceKind kind) {
    return motifs[kind.ordinal()];
  }

  /** How many yarns. */
  public int yarnCount() {
    return tones.length;
  }

  /** A yarn. */
  public Yarn yarn(int yarn) {
    return brief.yarns().get(yarn);
  }

  /** The index of a yarn by its code, or -1. */
  public int yarnIndex(String code) {
    return yarnIndex.getOrDefault(code, -1);
  }

  /** The tone of a yarn, stated or by its lightness. */
  public Tone tone(int yarn) {
    return tones[yarn];
  }

  /** A yarn's colour in CIELAB. */
  public Lab lab(int yarn) {
    return labs[yarn];
  }

  /** CIEDE2000 between two yarns' colours. */
  public double difference(int yarnA, int yarnB) {
    return differences[yarnA][yarnB];
  }

  /**
   * Differences between yarns' colours as seen by people who lack one kind of cone. Worked out on
   * the first call, which takes O(yarns squared).
   */
  public synchronized SeenDifferences seen() {
    if (seen == null) {
      seen = new SeenDifferences(brief.yarns().stream().map(Yarn::colour).toList());
    }
    return seen;
  }

  /**
   * Whether two borders in these yarns count as the same: the same yarn, or less than min-contrast.
   */
  public boolean sameBorder(int yarnA, int yarnB) {
    return yarnA == yarnB || differences[yarnA][yarnB] < brief.rules().minContrast();
  }

  /** Whether two yarns may not meet as borders on a seam: they count as the same, or are apart. */
  public boolean bordersClash(int yarnA, int yarnB) {
    return sameBorder(yarnA, yarnB) || look.apart(yarnA, yarnB);
  }

  /**
   * Whether what the borders of two pieces on a seam must not be no longer matters: both are joined
   * already, or both have the border that the look gives all pieces.
   */
  public boolean bordersMayMatch(int first, int second) {
    return states[first] == PieceState.JOINED && states[second] == PieceState.JOINED
        || look.givesBorders() && hasLookBorder(first) && hasLookBorder(second);
  }

  private boolean hasLookBorder(int piece) {
    return locks.yarn(piece, roundCount(piece) - 1) == look.border(piece);
  }

  /** The look that the brief asks for. */
  public ReadyLook look() {
    return look;
  }

  /** Whether a round that is free may take a yarn, by its tone, by bans and by zones. */
  public boolean mayTake(int piece, int round, int yarn) {
    return toneAllows(kind(piece), round, yarn)
        && !banned(piece, yarn)
        && look.allows(piece, round, roundCount(piece), yarn);
  }

  /** Millimetres that a round of a kind takes in a yarn. */
  public long needMillimetres(PieceKind kind, int round, int yarn) {
    return needs[kind.ordinal()][round][yarn];
  }

  /** Whether a round of a kind may take a yarn by its tone. */
  public boolean toneAllows(PieceKind kind, int round, int yarn) {
    return toneAllows[kind.ordinal()][round][yarn];
  }

  /** Millimetres of a yarn at hand; of one that was counted, when it was. */
  public long stockMillimetres(int yarn) {
    return brief.yarns().get(yarn).stockMillimetres();
  }

  /** Millimetres of a yarn at hand less what the rules keep back. */
  public long usableMillimetres(int yarn) {
    return usable[yarn];
  }

  /**
   * What a yarn is used for beyond all pieces' rounds, in millimetres: joining and edging, less the
   * rounds that had been worked when the yarn was counted. Below 0 where these are more: added to
   * the use of all rounds, worked ones included, it gives what counts against the stock.
   */
  public long fixedUseMillimetres(int yarn) {
    return fixedUse[yarn];
  }

  /**
   * Millimetres of a yarn in rounds that had been worked when it was counted, and so do not count
   * against what was left.
   */
  public long settledMillimetres(int yarn) {
    return settled[yarn];
  }

  /**
   * Millimetres that joining takes, without seams that had been worked when its yarn was counted.
   */
  public long joiningMillimetres() {
    return joiningUse;
  }

  /** Millimetres that edging takes, without what had been worked when its yarn was counted. */
  public long edgingMillimetres() {
    return edgingUse;
  }

  /** How far a piece has come. */
  public PieceState state(int piece) {
    return states[piece];
  }

  /**
   * The yarn that a round must keep, by a lock, because the piece is worked, or because the look
   * gives all borders; or OPEN.
   */
  public int locked(int piece, int round) {
    return locks.yarn(piece, round);
  }

  /** Whether a yarn is banned from a piece. */
  public boolean banned(int piece, int yarn) {
    boolean[] banned = bans.get(piece);
    return banned != null && banned[yarn];
  }

  /** Whether a round's yarn may change: the piece is planned and the round is not locked. */
  public boolean free(int piece, int round) {
    return states[piece] == PieceState.PLANNED && locked(piece, round) == Sequences.OPEN;
  }

  /** Sequences for this blanket's pieces, all open. */
  public Sequences open() {
    int[] rounds = new int[states.length];
    for (int piece = 0; piece < rounds.length; piece++) {
      rounds[piece] = roundCount(piece);
    }
    return new Sequences(rounds);
  }

  /** A copy of the locked yarns, other rounds open. */
  public Sequences locks() {
    return locks.copy();
  }

  /**
   * Millimetres of each yarn that sequences take, with joining and edging; open rounds take none.
   * Of a yarn that was counted, only what counts against what was left then.
   */
  public long[] usedMillimetres(Sequences sequences) {
    long[] used = fixedUse.clone();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      long[][] need = needs[kind(piece).ordinal()];
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        if (yarn != Sequences.OPEN) {
          used[yarn] += need[round][yarn];
        }
      }
    }
    return used;
  }
}
