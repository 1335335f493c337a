package lozengy.solver.explain.remedy;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.check.Subject;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;

/** What a remedy does to a line of a brief, as data. */
public sealed interface Relaxation {

  /** {@return what sort of change it is, a stable word for programs} */
  String code();

  /**
   * {@return what one of the cases gives for it}
   *
   * @param cases a case for each sort of change
   * @param <T> what they give
   */
  <T> T in(Cases<T> cases);

  /**
   * Whole balls of a yarn are bought.
   *
   * @param yarn index of the yarn
   * @param balls how many
   */
  record BuyBalls(int yarn, int balls) implements Relaxation {
    @Override
    public String code() {
      return "buy-balls";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.buyBalls(this);
    }
  }

  /**
   * A length of a yarn is bought, whose put-up is not stated.
   *
   * @param yarn index of the yarn
   * @param millimetres how much, in mm
   */
  record BuyLength(int yarn, long millimetres) implements Relaxation {
    @Override
    public String code() {
      return "buy-length";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.buyLength(this);
    }
  }

  /**
   * Pieces of one note are freed of its locks.
   *
   * @param pieces indices of the pieces
   * @param whole whether the note speaks of no other piece
   * @param bans whether the note also bans yarns
   */
  record FreePieces(List<Integer> pieces, boolean whole, boolean bans) implements Relaxation {
    @Override
    public String code() {
      return "free-pieces";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.freePieces(this);
    }
  }

  /**
   * A piece that is finished or begun is worked anew.
   *
   * @param piece index of the piece
   * @param state how far it has come; a joined one has to be taken out
   * @param whole whether the note speaks of no other piece
   * @param bans whether the note also bans yarns
   */
  record WorkAnew(int piece, PieceState state, boolean whole, boolean bans) implements Relaxation {
    @Override
    public String code() {
      return "work-anew";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.workAnew(this);
    }
  }

  /**
   * A ban is lifted.
   *
   * @param codes codes of the yarns
   * @param at the pieces, as the brief names them
   * @param whole whether the note speaks of no others
   */
  record LiftBan(List<String> codes, String at, boolean whole) implements Relaxation {
    @Override
    public String code() {
      return "lift-ban";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.liftBan(this);
    }
  }

  /**
   * A line is given up that has no milder change.
   *
   * @param subject what it asks for
   */
  record GiveUp(Subject subject) implements Relaxation {
    @Override
    public String code() {
      return "give-up-" + subject.code();
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.giveUp(this);
    }
  }

  /** The symmetry is given up. */
  record DropSymmetry() implements Relaxation {
    @Override
    public String code() {
      return "drop-symmetry";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.dropSymmetry(this);
    }
  }

  /** The borders that the look gives are left free. */
  record FreeBorders() implements Relaxation {
    @Override
    public String code() {
      return "free-borders";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.freeBorders(this);
    }
  }

  /**
   * A zone is given up.
   *
   * @param codes codes of its yarns
   */
  record DropZone(List<String> codes) implements Relaxation {
    @Override
    public String code() {
      return "drop-zone";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.dropZone(this);
    }
  }

  /**
   * Two yarns that are kept apart may meet.
   *
   * @param first code of one
   * @param second code of the other
   */
  record LetMeet(String first, String second) implements Relaxation {
    @Override
    public String code() {
      return "let-meet";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.letMeet(this);
    }
  }

  /**
   * The look asks for fewer pieces with a yarn.
   *
   * @param count the count of the look
   * @param atLeast the new least number; empty for any number
   */
  record AskForFewer(Look.Count count, OptionalInt atLeast) implements Relaxation {
    @Override
    public String code() {
      return "ask-for-fewer";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.askForFewer(this);
    }
  }

  /**
   * The look allows more pieces with a yarn.
   *
   * @param count the count of the look
   * @param atMost the new largest number; empty for any number
   */
  record AllowMore(Look.Count count, OptionalInt atMost) implements Relaxation {
    @Override
    public String code() {
      return "allow-more";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.allowMore(this);
    }
  }

  /**
   * A round of a motif may have one tone more.
   *
   * @param kind the motif
   * @param round the round, from 0 at the centre
   * @param tone the tone
   */
  record AllowTone(PieceKind kind, int round, Tone tone) implements Relaxation {
    @Override
    public String code() {
      return "allow-tone";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.allowTone(this);
    }
  }

  /**
   * The edging is worked in another yarn.
   *
   * @param yarn index of the yarn
   */
  record EdgeIn(int yarn) implements Relaxation {
    @Override
    public String code() {
      return "edge-in";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.edgeIn(this);
    }
  }

  /**
   * The joining is worked in another yarn.
   *
   * @param yarn index of the yarn
   */
  record JoinIn(int yarn) implements Relaxation {
    @Override
    public String code() {
      return "join-in";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.joinIn(this);
    }
  }

  /** The edging is left out. */
  record DropEdging() implements Relaxation {
    @Override
    public String code() {
      return "drop-edging";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.dropEdging(this);
    }
  }

  /**
   * Finished pieces of the pile are left out.
   *
   * @param entry what the pile lists of such pieces
   * @param fewer how many are left out
   */
  record LeavePieces(PileEntry entry, int fewer) implements Relaxation {
    @Override
    public String code() {
      return "leave-pieces";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.leavePieces(this);
    }
  }

  /**
   * Fewer rows are worked.
   *
   * @param rows how many fewer
   * @param down rows that are left
   */
  record WorkFewerRows(int rows, int down) implements Relaxation {
    @Override
    public String code() {
      return "work-fewer-rows";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.workFewerRows(this);
    }
  }

  /**
   * Borders on a seam may be less apart in colour.
   *
   * @param minContrast the new least difference, CIEDE2000
   */
  record LowerContrast(double minContrast) implements Relaxation {
    @Override
    public String code() {
      return "lower-contrast";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.lowerContrast(this);
    }
  }

  /**
   * More pieces may share a sequence.
   *
   * @param copies how many; empty for any number
   */
  record RaiseCopies(OptionalInt copies) implements Relaxation {
    @Override
    public String code() {
      return "raise-copies";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.raiseCopies(this);
    }
  }

  /**
   * More rounds of a piece may be alike.
   *
   * @param within how they must differ now
   */
  record LetRoundsMatch(WithinPiece within) implements Relaxation {
    @Override
    public String code() {
      return "let-rounds-match";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.letRoundsMatch(this);
    }
  }

  /**
   * Less of each yarn is kept back.
   *
   * @param percent the part that is still kept back, in percent
   */
  record KeepLessBack(double percent) implements Relaxation {
    @Override
    public String code() {
      return "keep-less-back";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.keepLessBack(this);
    }
  }

  /**
   * A case for each sort of change.
   *
   * @param <T> what they give
   */
  interface Cases<T> {
    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T buyBalls(BuyBalls change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T buyLength(BuyLength change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T freePieces(FreePieces change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T workAnew(WorkAnew change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T liftBan(LiftBan change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T giveUp(GiveUp change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T dropSymmetry(DropSymmetry change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T freeBorders(FreeBorders change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T dropZone(DropZone change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T letMeet(LetMeet change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T askForFewer(AskForFewer change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T allowMore(AllowMore change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T allowTone(AllowTone change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T edgeIn(EdgeIn change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T joinIn(JoinIn change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T dropEdging(DropEdging change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T leavePieces(LeavePieces change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T workFewerRows(WorkFewerRows change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T lowerContrast(LowerContrast change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T raiseCopies(RaiseCopies change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T letRoundsMatch(LetRoundsMatch change);

    /**
     * {@return what it is for this sort}
     *
     * @param change a change of it
     */
    T keepLessBack(KeepLessBack change);
  }
}
