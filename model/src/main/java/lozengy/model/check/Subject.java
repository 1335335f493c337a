package lozengy.model.check;

import java.util.List;
import java.util.Set;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;

/** What a line of a brief speaks of, as data. Pieces and yarns are indices of the blanket. */
public sealed interface Subject {

  /** {@return what sort of subject it is, a stable word for programs} */
  String code();

  /**
   * {@return what one of the cases gives for it}
   *
   * @param cases a case for each sort of subject
   * @param <T> what they give
   */
  <T> T in(Cases<T> cases);

  /**
   * A round that is held in a yarn.
   *
   * @param round the round, from 0 at the centre
   * @param yarn index of the yarn
   */
  record Held(int round, int yarn) {}

  /**
   * What there is of a yarn.
   *
   * @param yarn index of the yarn
   * @param millimetres what is at hand, in mm
   * @param settled what had been worked when it was counted, in mm
   */
  record Stock(int yarn, long millimetres, long settled) implements Subject {
    @Override
    public String code() {
      return "stock";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.stock(this);
    }
  }

  /**
   * What joining takes.
   *
   * @param yarn index of its yarn
   * @param millimetres how much it takes, in mm
   */
  record Joining(int yarn, long millimetres) implements Subject {
    @Override
    public String code() {
      return "joining";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.joining(this);
    }
  }

  /** Pieces are joined in their borders' yarns. */
  record JoiningInBorders() implements Subject {
    @Override
    public String code() {
      return "joining-in-borders";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.joiningInBorders(this);
    }
  }

  /**
   * What edging takes.
   *
   * @param yarn index of its yarn
   * @param millimetres how much it takes, in mm
   */
  record Edging(int yarn, long millimetres) implements Subject {
    @Override
    public String code() {
      return "edging";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.edging(this);
    }
  }

  /**
   * What is kept back of each yarn.
   *
   * @param percent the part, in percent
   */
  record KeepBack(double percent) implements Subject {
    @Override
    public String code() {
      return "keep-back";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.keepBack(this);
    }
  }

  /**
   * The tones of a round of a motif.
   *
   * @param kind the motif
   * @param round the round, from 0 at the centre
   * @param tones the tones
   * @param yarns indices of the yarns of these tones
   */
  record Tone(PieceKind kind, int round, Set<lozengy.model.colour.Tone> tones, List<Integer> yarns)
      implements Subject {
    @Override
    public String code() {
      return "tone";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.tone(this);
    }
  }

  /**
   * What is held in a piece, by a lock or because it is worked.
   *
   * @param piece index of the piece
   * @param state whether it is locked, made or joined
   * @param roundsWorked how many rounds of it are worked, from the centre
   * @param rounds the rounds that are held
   */
  record Lock(int piece, PieceState state, int roundsWorked, List<Held> rounds) implements Subject {

    /** {@return whether all that is held is worked, and so a fact} */
    public boolean worked() {
      return rounds.stream().allMatch(held -> held.round() < roundsWorked);
    }

    @Override
    public String code() {
      return "lock";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.lock(this);
    }
  }

  /**
   * Yarns that pieces may not take.
   *
   * @param at the pieces, as the brief names them
   * @param one whether that is one piece
   * @param codes codes of the yarns
   */
  record Ban(String at, boolean one, List<String> codes) implements Subject {
    @Override
    public String code() {
      return "ban";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.ban(this);
    }
  }

  /**
   * A yarn that is there no more.
   *
   * @param yarn index of the yarn
   */
  record Gone(int yarn) implements Subject {
    @Override
    public String code() {
      return "gone";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.gone(this);
    }
  }

  /**
   * A zone that only some yarns may lie in.
   *
   * @param zone the zone
   */
  record Zone(Look.Zone zone) implements Subject {
    @Override
    public String code() {
      return "zone";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.zone(this);
    }
  }

  /**
   * Two yarns that are kept apart.
   *
   * @param first code of one
   * @param second code of the other
   * @param on where they do not meet
   */
  record Apart(String first, String second, Look.Meeting on) implements Subject {
    @Override
    public String code() {
      return "apart";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.apart(this);
    }
  }

  /**
   * Dye lots that do not meet.
   *
   * @param shades the lots of each shade that has more than one, as indices of yarns, ascending
   */
  record Lots(List<List<Integer>> shades) implements Subject {
    @Override
    public String code() {
      return "lots";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.lots(this);
    }
  }

  /**
   * The borders that the look gives.
   *
   * @param codes codes of the yarns
   */
  record GivenBorders(List<String> codes) implements Subject {
    @Override
    public String code() {
      return "given-borders";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.givenBorders(this);
    }
  }

  /**
   * The symmetry.
   *
   * @param symmetry the symmetry
   */
  record Images(Symmetry symmetry) implements Subject {
    @Override
    public String code() {
      return "images";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.images(this);
    }
  }

  /** Which rounds of two pieces meet on a seam. */
  enum SeamPart {
    /** Their borders. */
    BORDERS("border"),
    /** Their centres. */
    CENTRES("centre");

    private final String word;

    SeamPart(String word) {
      this.word = word;
    }

    /** {@return the word for one of them} */
    public String word() {
      return word;
    }
  }

  /**
   * Two pieces on a seam differ.
   *
   * @param part in which of their rounds
   */
  record Differ(SeamPart part) implements Subject {
    @Override
    public String code() {
      return part.word() + "s-differ";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.differ(this);
    }
  }

  /**
   * How far borders on a seam are apart.
   *
   * @param least the least difference, CIEDE2000
   */
  record Contrast(double least) implements Subject {
    @Override
    public String code() {
      return "contrast";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.contrast(this);
    }
  }

  /**
   * How rounds of a piece differ.
   *
   * @param within how
   */
  record Within(WithinPiece within) implements Subject {
    @Override
    public String code() {
      return "within";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.within(this);
    }
  }

  /**
   * How many pieces may share a sequence.
   *
   * @param most the largest number
   * @param images whether pieces that the look makes each other's images count as one
   */
  record Copies(int most, boolean images) implements Subject {
    @Override
    public String code() {
      return "copies";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.copies(this);
    }
  }

  /**
   * How many pieces show a yarn.
   *
   * @param count the count of the look
   * @param least whether it is the least number, and not the largest
   */
  record Count(Look.Count count, boolean least) implements Subject {
    @Override
    public String code() {
      return "count";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.count(this);
    }
  }

  /**
   * Finished pieces that have no place yet.
   *
   * @param kind kind of the pieces
   * @param count how many
   * @param yarns their yarns by index, the centre first
   * @param also where else in the brief some of them stand
   */
  record OnPile(PieceKind kind, int count, List<Integer> yarns, List<BriefPath> also)
      implements Subject {
    @Override
    public String code() {
      return "on-pile";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.onPile(this);
    }
  }

  /**
   * A case for each sort of subject.
   *
   * @param <T> what they give
   */
  interface Cases<T> {
    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T stock(Stock subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T joining(Joining subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T joiningInBorders(JoiningInBorders subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T edging(Edging subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T keepBack(KeepBack subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T tone(Tone subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T lock(Lock subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T ban(Ban subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T gone(Gone subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T zone(Zone subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T apart(Apart subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T lots(Lots subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T givenBorders(GivenBorders subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T images(Images subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T differ(Differ subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T contrast(Contrast subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T within(Within subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T copies(Copies subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T count(Count subject);

    /**
     * {@return what it is for this sort}
     *
     * @param subject a subject of it
     */
    T onPile(OnPile subject);
  }
}
