package lozengy.model.blanket;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.Lab;
import lozengy.model.colour.SeenDifferences;
import lozengy.model.colour.Tone;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.Nulls;
import lozengy.model.layout.EdgeFit;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Measures;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/**
 * A brief made ready to judge by. Pieces are indices of {@link Layout#places()}, yarns indices of
 * {@link Brief#yarns()}, rounds count from the centre, layers from the border: layer 0 is the
 * border. Amounts are whole millimetres of yarn, so that totals are exact: what is used is rounded
 * down, what is at hand up, so that what fits as a brief is written fits. Immutable.
 */
public final class Blanket {

  private final Brief brief;
  private final Layout layout;
  private final ReadyYarns yarns;
  private final ReadyMotifs motifs;
  private final KnownPieces known;
  private final PieceState[] states;
  private final int[] roundsWorked;
  private final Sequences locks;
  private final ReadyLook look;
  private final Measures measures;
  private final BorderSeams borderSeams;
  private final FixedUse fixedUse;
  private final Pile pile;
  private final boolean[][][] pileShows;
  private final int layers;
  private final RoundIndex index;
  private SeenDifferences seen;

  private Blanket(Brief brief) {
    this.brief = brief;
    this.layout = Layout.of(brief.layout());
    this.yarns = ReadyYarns.of(brief);
    this.motifs = ReadyMotifs.of(brief, yarns);
    this.known = new KnownPieces(brief, layout, yarns, open());
    this.states = known.states();
    this.roundsWorked = known.roundsWorked();
    this.locks = known.locks();
    this.look = known.look();
    this.measures = Measures.of(layout, motif(PieceKind.SQUARE).edgeCm().orElseThrow());
    this.borderSeams = BorderSeams.of(brief, measures, layout, motifs, known);
    this.fixedUse = new FixedUse(brief, measures, layout, yarns, motifs, known, borderSeams);
    this.pile = Pile.of(brief.pile(), yarns.index());
    this.pileShows = pile.shown(yarnCount());
    this.layers = IntStream.range(0, pieceCount()).map(this::roundCount).max().orElse(0);
    this.index = new RoundIndex(pieceCount(), this::roundCount);
  }

  /**
   * Makes a brief ready. Whether what it holds of single pieces breaks a rule is not judged here:
   * {@code reading.BriefJudge} does that, and solving proves then that nothing fits.
   *
   * @param brief the brief
   * @return the blanket
   * @throws InputException with all mistakes if the brief's parts do not fit together
   */
  public static Blanket of(Brief brief) {
    Nulls.refuse("brief", brief);
    List<Mistake> mistakes = BriefMistakes.ofParts(brief);
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
    Nulls.refuse("brief", brief);
    return new Blanket(brief);
  }

  /** {@return the brief} */
  public Brief brief() {
    return brief;
  }

  /** {@return the layout} */
  public Layout layout() {
    return layout;
  }

  /** {@return the finished blanket's measures, before any edging} */
  public Measures measures() {
    return measures;
  }

  /** {@return how a side triangle, as measured, fits; empty where there is nothing to compare} */
  public Optional<EdgeFit> edgeFit() {
    Motif triangle = motif(PieceKind.SIDE_TRIANGLE);
    return EdgeFit.of(
        layout, measures, triangle == null ? OptionalDouble.empty() : triangle.edgeCm());
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
    return motifs.roundCount(kind(piece));
  }

  /** {@return numbers of all rounds of all pieces} */
  public RoundIndex index() {
    return index;
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
    return motifs.motifs()[kind.ordinal()];
  }

  /** {@return how many yarns} */
  public int yarnCount() {
    return yarns.tones().length;
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
    return yarns.index().getOrDefault(code, -1);
  }

  /**
   * {@return the tone of a yarn, stated or by its lightness}
   *
   * @param yarn the yarn's index, from 0
   */
  public Tone tone(int yarn) {
    return yarns.tones()[yarn];
  }

  /**
   * {@return a yarn's colour in CIELAB}
   *
   * @param yarn the yarn's index, from 0
   */
  public Lab lab(int yarn) {
    return yarns.labs()[yarn];
  }

  /**
   * {@return CIEDE2000 between two yarns' colours}
   *
   * @param yarnA the one yarn's index, from 0
   * @param yarnB the other yarn's index, from 0
   */
  public double difference(int yarnA, int yarnB) {
    return yarns.differences()[yarnA][yarnB];
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
    return yarnA == yarnB || difference(yarnA, yarnB) < brief.rules().minContrast();
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
    return known.orbits();
  }

  /**
   * {@return the yarn that a note says a round has, or OPEN; what follows from the look is left
   * out}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public int stated(int piece, int round) {
    return known.stated().yarn(piece, round);
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
   * {@return millimetres of a yarn that a round of a piece takes in all: what it is worked with,
   * and of a border, where pieces are joined in their borders' yarns, what it takes of the seams}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public long takenMillimetres(int piece, int round, int yarn) {
    PieceKind kind = kind(piece);
    long own = motifs.needMillimetres()[kind.ordinal()][round][yarn];
    return round + 1 < motifs.roundCount(kind)
        ? own
        : own + borderSeams.halves()[piece] * borderSeams.halfMillimetres()[yarn];
  }

  /**
   * {@return how many halves of seams the yarn of a piece's border takes; 0 where pieces are not
   * joined in their borders' yarns}
   *
   * @param piece the piece's index, from 0
   */
  public int seamHalves(int piece) {
    return borderSeams.halves()[piece];
  }

  /**
   * {@return how many of a seam's two halves the border of its first piece takes, where pieces are
   * joined in their borders' yarns; the second takes the others}
   *
   * @param seam the seam's number in {@link Layout#seams}
   */
  public int seamHalvesOfFirst(int seam) {
    return borderSeams.halvesOfFirst()[seam];
  }

  /**
   * {@return millimetres of a yarn that half a seam takes; 0 where pieces are not joined in their
   * borders' yarns}
   *
   * @param yarn the yarn's index, from 0
   */
  public long halfSeamMillimetres(int yarn) {
    return borderSeams.halfMillimetres()[yarn];
  }

  /**
   * {@return millimetres that a round of a kind is worked with in a yarn, joining aside}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public long needMillimetres(PieceKind kind, int round, int yarn) {
    return motifs.needMillimetres()[kind.ordinal()][round][yarn];
  }

  /**
   * {@return how much less a round of a kind takes, in mm, where its yarn goes on from the round
   * before it without a cut} Totals do not count on it; 0 where one of the two rounds states an
   * amount.
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   */
  public long uncutMillimetres(PieceKind kind, int round) {
    return motifs.uncutMillimetres()[kind.ordinal()][round];
  }

  /**
   * {@return whether a round of a kind may take a yarn by its tone}
   *
   * @param kind the kind of piece
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public boolean toneAllows(PieceKind kind, int round, int yarn) {
    return motifs.toneAllows()[kind.ordinal()][round][yarn];
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
    return yarns.usableMillimetres()[yarn];
  }

  /**
   * {@return what a yarn is used for beyond all pieces' rounds, in millimetres: joining, edging and
   * the pile's pieces that stay out, less the rounds that had been worked when the yarn was
   * counted, and what the pile holds beyond the stock} Below 0 where these are more: added to the
   * use of all rounds, worked ones included, it gives what counts against the stock.
   *
   * @param yarn the yarn's index, from 0
   */
  public long fixedUseMillimetres(int yarn) {
    return fixedUse.millimetres()[yarn];
  }

  /** {@return what counts against the yarns whatever the free rounds take} */
  public FixedUse fixedUse() {
    return fixedUse;
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
   * {@return how many rounds of a piece are worked, from the centre: all of them where it is made
   * or joined}
   *
   * @param piece the piece's index, from 0
   */
  public int roundsWorked(int piece) {
    return roundsWorked[piece];
  }

  /**
   * {@return whether a round is worked, and so a fact}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public boolean worked(int piece, int round) {
    return round < roundsWorked[piece];
  }

  /**
   * {@return whether some rounds of a piece are worked, but not all}
   *
   * @param piece the piece's index, from 0
   */
  public boolean partWorked(int piece) {
    return states[piece] == PieceState.PLANNED && roundsWorked[piece] > 0;
  }

  /**
   * {@return the yarn that a round must keep, by a lock, because it is worked, because the look
   * gives all borders, or because one of these holds of an image of the piece; or OPEN}
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
    return known.banned(piece, yarn);
  }

  /**
   * {@return whether a round's yarn may change: it is neither worked nor locked}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public boolean free(int piece, int round) {
    return !worked(piece, round) && locked(piece, round) == Sequences.OPEN;
  }

  /** {@return the finished pieces that have no place yet} */
  public Pile pile() {
    return pile;
  }

  /**
   * {@return whether a piece of the pile may come to lie at a place: nothing of the place's own
   * piece is worked, and the pile has some of its kind}
   *
   * @param piece the piece's index, from 0
   */
  public boolean takesPile(int piece) {
    return roundsWorked[piece] == 0 && pileShows[kind(piece).ordinal()] != null;
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
    int[] rounds = new int[layout.places().size()];
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
    long[] used = fixedUse.millimetres().clone();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        if (yarn != Sequences.OPEN) {
          used[yarn] += takenMillimetres(piece, round, yarn);
        }
      }
    }
    return used;
  }

  /** Blankets of equal briefs are equal. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Blanket that && brief.equals(that.brief);
  }

  @Override
  public int hashCode() {
    return brief.hashCode();
  }
}
