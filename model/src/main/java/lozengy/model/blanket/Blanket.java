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
 * down, what is at hand up, so that what fits as a brief is written fits. What is about yarns,
 * motifs, seams or the pile alone is asked of these parts. Immutable.
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
  private final Domains domains;
  private final int layers;
  private final RoundIndex index;

  private Blanket(Brief brief) {
    this.brief = brief;
    this.layout = Layout.of(brief.layout());
    this.yarns = new ReadyYarns(brief);
    this.motifs = new ReadyMotifs(brief, yarns);
    this.known = new KnownPieces(brief, layout, yarns, open());
    this.states = known.states();
    this.roundsWorked = known.roundsWorked();
    this.locks = known.locks();
    this.look = known.look();
    this.measures = Measures.of(layout, motif(PieceKind.SQUARE).edgeCm().orElseThrow());
    this.borderSeams = new BorderSeams(brief, measures, layout, motifs, known);
    this.fixedUse = new FixedUse(brief, measures, layout, yarns, motifs, known, borderSeams);
    this.pile = Pile.of(brief.pile(), yarns.index());
    this.domains = new Domains(layout, motifs, known, pile.shown(yarnCount()));
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
    return motifs.motif(kind);
  }

  /** {@return how many yarns} */
  public int yarnCount() {
    return yarns.count();
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
   * {@return millimetres of a yarn that a round of a piece takes in all: what it is worked with,
   * and of a border, where pieces are joined in their borders' yarns, what it takes of the seams}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param yarn the yarn's index, from 0
   */
  public long takenMillimetres(int piece, int round, int yarn) {
    PieceKind kind = kind(piece);
    long own = motifs.needMillimetres(kind, round, yarn);
    return round + 1 < motifs.roundCount(kind)
        ? own
        : own + borderSeams.halves(piece) * borderSeams.halfMillimetres(yarn);
  }

  /** {@return what rounds of each kind take, and which yarns their tones allow} */
  public ReadyMotifs motifs() {
    return motifs;
  }

  /** {@return the yarns' tones, colours and how they differ, and what may be used of each} */
  public ReadyYarns yarns() {
    return yarns;
  }

  /** {@return which yarns rounds may take or show} */
  public Domains domains() {
    return domains;
  }

  /** {@return what borders' yarns take of the seams} */
  public BorderSeams borderSeams() {
    return borderSeams;
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
