package lozengy.solver.explain.argument;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.colour.Tone;

/** What single rounds may take rules every yarn out. */
public sealed interface RoundReason extends Reason {

  /** What keeps a yarn out of a round. */
  enum Bar {
    /** The motif's tone. */
    TONE,
    /** Another border that the look gives the piece. */
    LOOK_BORDER,
    /** A ban. */
    BAN,
    /** A zone that takes other yarns alone. */
    ZONE,
    /** A count of the look that lets no such round have it. */
    COUNT
  }

  /**
   * A round must have a tone that no yarn has.
   *
   * @param pieces the pieces
   * @param round the round
   * @param tones what it must be
   */
  record NoSuchTone(List<Integer> pieces, int round, Set<Tone> tones) implements RoundReason {
    @Override
    public String code() {
      return "no-such-tone";
    }

    @Override
    public List<Integer> rounds() {
      return List.of(round);
    }

    @Override
    public Object matter() {
      return List.of(code(), Matter.of(pieces), round, tones);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.noSuchTone(this);
    }
  }

  /**
   * A round is locked to a yarn that it may not have.
   *
   * @param piece the piece
   * @param round the round
   * @param yarn the yarn
   * @param bar what keeps it out
   * @param tones what the motif asks of the round
   * @param given the border that the look gives the piece, where that keeps the yarn out
   */
  record LockBarred(int piece, int round, int yarn, Bar bar, Set<Tone> tones, OptionalInt given)
      implements RoundReason {
    @Override
    public String code() {
      return "lock-barred";
    }

    @Override
    public List<Integer> pieces() {
      return List.of(piece);
    }

    @Override
    public List<Integer> rounds() {
      return List.of(round);
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.lockBarred(this);
    }
  }

  /**
   * Every yarn of a round's tones is kept out.
   *
   * @param piece the piece
   * @param round the round
   * @param tones what the motif asks of the round
   * @param yarns the yarns of these tones
   * @param bar the furthest of what keeps them out: bans, zones, counts
   */
  record NothingLeft(int piece, int round, Set<Tone> tones, List<Integer> yarns, Bar bar)
      implements RoundReason {
    @Override
    public String code() {
      return "nothing-left";
    }

    @Override
    public List<Integer> pieces() {
      return List.of(piece);
    }

    @Override
    public List<Integer> rounds() {
      return List.of(round);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.nothingLeft(this);
    }
  }

  /**
   * Rounds of a piece must differ, and have too few yarns for it.
   *
   * @param pieces the pieces
   * @param rounds the rounds
   * @param within how rounds of a piece must differ
   * @param apart whether they are kept apart, by pairs of the look or as dye lots, and not by that
   * @param yarns all that they may take
   */
  record RoundsAlike(
      List<Integer> pieces,
      List<Integer> rounds,
      WithinPiece within,
      boolean apart,
      List<Integer> yarns)
      implements RoundReason {
    @Override
    public String code() {
      return "rounds-alike";
    }

    @Override
    public Object matter() {
      return List.of(code(), Matter.of(pieces), within, apart, yarns);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.roundsAlike(this);
    }
  }

  /**
   * Pieces that are each other's images have no yarn in common for a round.
   *
   * @param pieces the pieces
   * @param round the round
   * @param symmetry the symmetry
   */
  record ImagesShareNone(List<Integer> pieces, int round, Symmetry symmetry)
      implements RoundReason {
    @Override
    public String code() {
      return "images-share-none";
    }

    @Override
    public List<Integer> rounds() {
      return List.of(round);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.imagesShareNone(this);
    }
  }
}
