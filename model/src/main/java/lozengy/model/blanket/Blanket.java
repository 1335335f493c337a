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
import lozengy.model.brief.PileEntry;
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
  private final Pile pile;
  private final boolean[][][] pileShows;
  private final ReadyLook look;
  private final Orbits orbits;
  private final Sequences stated;
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
    this.orbits = new Orbits(layout, brief.look().symmetry(), p -> states[p] == PieceState.PLANNED);
    this.stated = look.givesBorders() || orbits.any() ? locks.copy() : locks;
    if (look.givesBorders()) {
      lockBorders();
    }
    if (orbits.any()) {
      lockImages();
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
    this.pile = Pile.of(brief.pile(), yarnIndex);
    this.pileShows = pileShows(pile);
    brief.pile().forEach(this::settle);
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

  /** Takes what pieces on the pile hold of yarns that were counted since off those yarns' use. */
  private void settle(PileEntry entry) {
    for (int round = 0; round < entry.rounds().size(); round++) {
      if (entry.counted().contains(entry.rounds().get(round))) {
        int yarn = yarnIndex.get(entry.rounds().get(round));
        long millimetres = needMillimetres(entry.kind(), round, yarn) * entry.count();
        fixedUse[yarn] -= millimetres;
        settled[yarn] += millimetres;
      }
    }
  }

  private boolean[][][] pileShows(Pile pile) {
    boolean[][][] shows = new boolean[motifs.length][][];
    for (Pile.Stack stack : pile.stacks()) {
      int kind = stack.kind().ordinal();
      if (shows[kind] == null) {
        shows[kind] = new boolean[stack.yarns().length][yarnCount()];
      }
      for (int round = 0; round < stack.yarns().length; round++) {
        shows[kind][round][stack.yarns()[round]] = true;
      }
    }
    return shows;
  }

  /**
   * Makes a brief ready.
   *
   * @param brief the brief
   * @return the blanket
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
   *
   * @param brief the brief
   * @return the blanket
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

  /** Locks the rounds of planned pieces whose image is locked. */
  private void lockImages() {
    for (int lead : orbits.leads()) {
      int[] members = orbits.members(lead);
      for (int round = 0; round < roundCount(lead); round++) {
        int locked = Sequences.OPEN;
        for (int piece : members) {
          locked = locked == Sequences.OPEN ? locks.yarn(piece, round) : locked;
        }
        for (int piece : members) {
          if (states[piece] == PieceState.PLANNED && locks.yarn(piece, round) == Sequences.OPEN) {
            locks.set(piece, round, locked);
          }
        }
      }
    }
  }

  /** {@return the brief} */
  public Brief brief() {
    return brief;
  }

  /** {@return the layout} */
  public Layout layout() {
    return layout;
  }

  /** {@return how many pieces} */
  public int pieceCount() {
    return states.length;
  }

  /**
   * {@return the place of a piece}
   *
   * @param piece the piece's index, from 0
   */
  public Place place(int piece) {
    return layout.places().get(piece);
  }

  /**
   * {@return the kind of a piece}
   *
   * @param piece the piece's index, from 0
   */
  public PieceKind kind(int piece) {
    return place(piece).kind();
  }

  /**
   * {@return how many rounds a piece has}
   *
   * @param piece the piece's index, from 0
   */
  public int roundCount(int piece) {
    return motif(kind(piece)).rounds().size();
  }

  /**
   * {@return how many rounds the piece with the most has; a motif that no piece follows does not
   * count}
   */
  public int layerCount() {
    return layers;
  }

  /**
   * {@return the motif of a kind}
   *
   * @param kind the kind of piece
   */
  public Motif motif(PieceKind kind) {
    return motifs[kind.ordinal()];
  }

  /** {@return how many yarns} */
  public int yarnCount() {
    return tones.length;
  }

  /**
   * {@return a yarn}
   *
   * @param yarn the yarn's index, from 0
   */
  public Yarn yarn(int yarn) {
    return brief.yarns().get(yarn);
  }

  /**
   * {@return the index of a yarn by its code, or -1}
   *
   * @param code the yarn's code
   */
  public int yarnIndex(String code) {
    return yarnIndex.getOrDefault(code, -1);
  }

  /**
   * {@return the tone of a yarn, stated or by its lightness}
   *
   * @param yarn the yarn's index, from 0
   */
  public Tone tone(int yarn) {
    return tones[yarn];
  }

  /**
   * {@return a yarn's colour in CIELAB}
   *
   * @param yarn the yarn's index, from 0
   */
  public Lab lab(int yarn) {
    return labs[yarn];
  }

  /**
   * {@return CIEDE2000 between two yarns' colours}
   *
   * @param yarnA the one yarn's index, from 0
   * @param yarnB the other yarn's index, from 0
   */
  public double difference(int yarnA, int yarnB) {
    return differences[yarnA][yarnB];
  }

  /**
   * {@return differences between yarns' colours as seen by people who lack one kind of cone} Worked
   * out on the first call, which takes O(yarns squared).
   */
  public synchronized SeenDifferences seen() {
    if (seen == null) {
      seen = new SeenDifferences(brief.yarns().stream().map(Yarn::colour).toList());
    }
    return seen;
  }

  /**
   * {@return whether two borders in these yarns count as the same: the same yarn, or less than
   * min-contrast}
   *
   * @param yarnA the one yarn's index, from 0
   * @param yarnB the other yarn's index, from 0
   */
  public boolean sameBorder(int yarnA, int yarnB) {
    return yarnA == yarnB || differences[yarnA][yarnB] < brief.rules().minContrast();
  }

  /**
   * {@return whether two yarns may not meet as borders on a seam: they count as the same, or are
   * apart}
   *
   * @param yarnA the one yarn's index, from 0
   * @param yarnB the other yarn's index, from 0
   */
  public boolean bordersClash(int yarnA, int yarnB) {
    return sameBorder(yarnA, yarnB) || look.apart(yarnA, yarnB);
  }

  /**
   * {@return whether what the borders of two pieces on a seam must not be no longer matters: both
   * are joined already, or both have the border that the look gives all pieces}
   *
   * @param first the one piece's index, from 0
   * @param second the other piece's index, from 0
   */
  public boolean bordersMayMatch(int first, int second) {
    return states[first] == PieceState.JOINED && states[second] == PieceState.JOINED
        || look.givesBorders() && hasLookBorder(first) && hasLookBorder(second);
  }

  private boolean hasLookBorder(int piece) {
    return locks.yarn(piece, roundCount(piece) - 1) == look.border(piece);
  }

  /** {@return the pieces that the look's symmetry ties to each other} */
  public Orbits orbits() {
    return orbits;
  }

  /**
   * {@return the yarn that a note says a round has, or OPEN; what follows from the look is left
   * out}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int stated(int piece, int round) {
    return stated.yarn(piece, round);
  }

  /** {@return the look that the brief asks for} */
  public ReadyLook look() {
    return look;
  }

  /**
   * {@return whether a round that is free may take a yarn, by its tone, by bans and by zones}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean mayTake(int piece, int round, int yarn) {
    return toneAllows(kind(piece), round, yarn)
        && !banned(piece, yarn)
        && look.allows(piece, round, roundCount(piece), yarn);
  }

  /**
   * {@return millimetres that a round of a kind takes in a yarn}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public long needMillimetres(PieceKind kind, int round, int yarn) {
    return needs[kind.ordinal()][round][yarn];
  }

  /**
   * {@return whether a round of a kind may take a yarn by its tone}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean toneAllows(PieceKind kind, int round, int yarn) {
    return toneAllows[kind.ordinal()][round][yarn];
  }

  /**
   * {@return millimetres of a yarn at hand; of one that was counted, when it was}
   *
   * @param yarn the yarn's index, from 0
   */
  public long stockMillimetres(int yarn) {
    return brief.yarns().get(yarn).stockMillimetres();
  }

  /**
   * {@return millimetres of a yarn at hand less what the rules keep back}
   *
   * @param yarn the yarn's index, from 0
   */
  public long usableMillimetres(int yarn) {
    return usable[yarn];
  }

  /**
   * {@return what a yarn is used for beyond all pieces' rounds, in millimetres: joining and edging,
   * less the rounds that had been worked when the yarn was counted} Below 0 where these are more:
   * added to the use of all rounds, worked ones included, it gives what counts against the stock.
   *
   * @param yarn the yarn's index, from 0
   */
  public long fixedUseMillimetres(int yarn) {
    return fixedUse[yarn];
  }

  /**
   * {@return millimetres of a yarn in rounds that had been worked when it was counted, and so do
   * not count against what was left}
   *
   * @param yarn the yarn's index, from 0
   */
  public long settledMillimetres(int yarn) {
    return settled[yarn];
  }

  /**
   * {@return millimetres that joining takes, without seams that had been worked when its yarn was
   * counted}
   */
  public long joiningMillimetres() {
    return joiningUse;
  }

  /**
   * {@return millimetres that edging takes, without what had been worked when its yarn was counted}
   */
  public long edgingMillimetres() {
    return edgingUse;
  }

  /**
   * {@return how far a piece has come}
   *
   * @param piece the piece's index, from 0
   */
  public PieceState state(int piece) {
    return states[piece];
  }

  /**
   * {@return the yarn that a round must keep, by a lock, because the piece is worked, because the
   * look gives all borders, or because one of these holds of an image of the piece; or OPEN}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int locked(int piece, int round) {
    return locks.yarn(piece, round);
  }

  /**
   * {@return whether a yarn is banned from a piece}
   *
   * @param piece the piece's index, from 0
   * @param yarn the yarn's index, from 0
   */
  public boolean banned(int piece, int yarn) {
    boolean[] banned = bans.get(piece);
    return banned != null && banned[yarn];
  }

  /**
   * {@return whether a round's yarn may change: the piece is planned and the round is not locked}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public boolean free(int piece, int round) {
    return states[piece] == PieceState.PLANNED && locked(piece, round) == Sequences.OPEN;
  }

  /** {@return the finished pieces that have no place yet} */
  public Pile pile() {
    return pile;
  }

  /**
   * {@return whether a piece of the pile may come to lie at a place: it is planned, and of its
   * kind}
   *
   * @param piece the piece's index, from 0
   */
  public boolean takesPile(int piece) {
    return states[piece] == PieceState.PLANNED && pileShows[kind(piece).ordinal()] != null;
  }

  /**
   * {@return whether a planned piece of a kind can show a yarn in a round: by its tone, or because
   * a piece of the pile does}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean mayShow(PieceKind kind, int round, int yarn) {
    boolean[][] shows = pileShows[kind.ordinal()];
    return toneAllows(kind, round, yarn) || shows != null && shows[round][yarn];
  }

  /**
   * {@return whether a planned piece that is not locked can show a yarn in a round: as {@link
   * #mayTake} says, or because a piece of the pile does}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean mayShow(int piece, int round, int yarn) {
    boolean[][] shows = pileShows[kind(piece).ordinal()];
    return mayTake(piece, round, yarn) || shows != null && shows[round][yarn];
  }

  /** {@return sequences for this blanket's pieces, all open} */
  public Sequences open() {
    int[] rounds = new int[states.length];
    for (int piece = 0; piece < rounds.length; piece++) {
      rounds[piece] = roundCount(piece);
    }
    return new Sequences(rounds);
  }

  /** {@return a copy of the locked yarns, other rounds open} */
  public Sequences locks() {
    return locks.copy();
  }

  /**
   * {@return millimetres of each yarn that sequences take, with joining and edging; open rounds
   * take none} Of a yarn that was counted, only what counts against what was left then.
   *
   * @param sequences the yarns of its pieces' rounds; rounds may be open
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
