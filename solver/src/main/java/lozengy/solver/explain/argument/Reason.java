package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.brief.Look;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.check.Subject.SeamPart;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;

/**
 * Why nothing fits, as data: what a direct argument found, which alone is a proof. Pieces and yarns
 * are indices of the blanket, rounds count from 0 at the centre, lengths are in mm.
 */
public sealed interface Reason {

  /** {@return what sort of reason it is, a stable word for programs} */
  String code();

  /** {@return the pieces that it is about; empty where it is about no single ones} */
  default List<Integer> pieces() {
    return List.of();
  }

  /** {@return the rounds that it is about; empty where it is about no single ones} */
  default List<Integer> rounds() {
    return List.of();
  }

  /** {@return the yarns that it is about} */
  default List<Integer> yarns() {
    return List.of();
  }

  /** {@return its lengths in mm, by name} */
  default Map<String, Long> lengths() {
    return Map.of();
  }

  /** {@return its numbers of pieces or rounds, by name} */
  default Map<String, Integer> counts() {
    return Map.of();
  }

  /**
   * {@return what stays the same where a change of the brief only changes its numbers: two reasons
   * of one matter are one trouble, more or less of it}
   */
  default Object matter() {
    return this;
  }

  /**
   * {@return what one of the cases gives for it}
   *
   * @param cases a case for each sort of reason
   * @param <T> what they give
   */
  <T> T in(Cases<T> cases);

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
   * All is kept back.
   *
   * @param percent the part of each yarn that is kept back
   */
  record AllKeptBack(double percent) implements Reason {
    @Override
    public String code() {
      return "all-kept-back";
    }

    @Override
    public Object matter() {
      return code();
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.allKeptBack(this);
    }
  }

  /**
   * A round must have a tone that no yarn has.
   *
   * @param pieces the pieces
   * @param round the round
   * @param tones what it must be
   */
  record NoSuchTone(List<Integer> pieces, int round, Set<Tone> tones) implements Reason {
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
      return List.of(code(), few(pieces), round, tones);
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
      implements Reason {
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
      implements Reason {
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
      implements Reason {
    @Override
    public String code() {
      return "rounds-alike";
    }

    @Override
    public Object matter() {
      return List.of(code(), few(pieces), within, apart, yarns);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.roundsAlike(this);
    }
  }

  /**
   * The yarns that two rounds of pieces on a seam may have, no two of which may meet.
   *
   * @param part whether it is their borders or their centres
   * @param first yarns of the first
   * @param second yarns of the second
   * @param alike whether some look too much alike
   * @param apart whether some are to be kept apart
   */
  record Clash(
      SeamPart part, List<Integer> first, List<Integer> second, boolean alike, boolean apart) {}

  /**
   * Borders or centres on a seam clash whatever they take.
   *
   * @param pieces the pieces on such seams, which all have the same clash
   * @param seams how many seams
   * @param clash what clashes
   */
  record SeamStuck(List<Integer> pieces, int seams, Clash clash) implements Reason {
    @Override
    public String code() {
      return "seam-stuck";
    }

    @Override
    public List<Integer> yarns() {
      List<Integer> yarns = new ArrayList<>(clash.first());
      clash.second().stream().filter(yarn -> !yarns.contains(yarn)).forEach(yarns::add);
      return yarns;
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("seams", seams);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.seamStuck(this);
    }
  }

  /**
   * Two pieces on a seam are each other's images.
   *
   * @param pieces the two
   * @param symmetry the symmetry
   * @param part whether their borders or their centres would be the same
   */
  record ImagesJoined(List<Integer> pieces, Symmetry symmetry, SeamPart part) implements Reason {
    @Override
    public String code() {
      return "images-joined";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.imagesJoined(this);
    }
  }

  /**
   * Pieces that are each other's images have no yarn in common for a round.
   *
   * @param pieces the pieces
   * @param round the round
   * @param symmetry the symmetry
   */
  record ImagesShareNone(List<Integer> pieces, int round, Symmetry symmetry) implements Reason {
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

  /**
   * Joining, edging and rounds that can take nothing else take more of a yarn than there is.
   *
   * @param yarn the yarn
   * @param fixed what joining and edging take
   * @param roundCount how many rounds can take nothing else
   * @param inRounds what these take
   * @param settled what was worked before the yarn was counted
   * @param usable what there is to use
   * @param missing what is missing
   */
  record YarnOverdrawn(
      int yarn, long fixed, int roundCount, long inRounds, long settled, long usable, long missing)
      implements Reason {
    @Override
    public String code() {
      return "yarn-overdrawn";
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public Map<String, Long> lengths() {
      return Map.of("fixed", fixed, "rounds", inRounds, "usable", usable, "short", missing);
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("rounds", roundCount);
    }

    @Override
    public Object matter() {
      return List.of(code(), yarn);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.yarnOverdrawn(this);
    }
  }

  /**
   * Finished pieces of the pile, with all else that is certain, take more of a yarn than there is.
   *
   * @param yarn the yarn
   * @param onPile what the pile's pieces hold
   * @param beyond what of that lies beyond the stock, and is no shortage
   * @param placed what other finished pieces hold
   * @param fixed what joining and edging take
   * @param usable what there is to use
   */
  record PileOverdrawn(int yarn, long onPile, long beyond, long placed, long fixed, long usable)
      implements Reason {
    @Override
    public String code() {
      return "pile-overdrawn";
    }

    /** {@return what is missing, in mm} */
    public long missing() {
      return onPile - beyond + placed + fixed - usable;
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public Map<String, Long> lengths() {
      return Map.of(
          "pile", onPile, "placed", placed, "fixed", fixed, "usable", usable, "short", missing());
    }

    @Override
    public Object matter() {
      return List.of(code(), yarn);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.pileOverdrawn(this);
    }
  }

  /**
   * A round takes more than any yarn that it may have has left.
   *
   * @param pieces the pieces
   * @param round the round
   * @param yarns the yarns that it may have
   * @param least the least that it takes
   */
  record RoundTooLong(List<Integer> pieces, int round, List<Integer> yarns, long least)
      implements Reason {
    @Override
    public String code() {
      return "round-too-long";
    }

    @Override
    public List<Integer> rounds() {
      return List.of(round);
    }

    @Override
    public Map<String, Long> lengths() {
      return Map.of("needed", least);
    }

    @Override
    public Object matter() {
      return List.of(code(), few(pieces), yarns);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.roundTooLong(this);
    }
  }

  /**
   * More pieces than sequences, where copies are limited.
   *
   * @param pieces the pieces
   * @param allowed how many may share a sequence
   * @param room how many of them find one
   * @param worked whether worked pieces count too
   */
  record TooFewSequences(List<Integer> pieces, int allowed, int room, boolean worked)
      implements Reason {
    @Override
    public String code() {
      return "too-few-sequences";
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("allowed", allowed, "room", room);
    }

    @Override
    public Object matter() {
      return List.of(code(), few(pieces), worked);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.tooFewSequences(this);
    }
  }

  /** Why fewer pieces can show a yarn than must. */
  enum Lack {
    /** Their rounds may not have it. */
    ROUNDS,
    /** Borders on a seam differ. */
    SEAMS,
    /** There is not enough of it. */
    STOCK
  }

  /**
   * Fewer pieces can show a yarn than the look asks for.
   *
   * @param count the count of the look
   * @param yarn the yarn
   * @param lack why
   * @param can how many can
   * @param left what there is of the yarn for rounds
   */
  record CountTooFew(Look.Count count, int yarn, Lack lack, long can, long left) implements Reason {
    @Override
    public String code() {
      return "count-too-few";
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("asked", count.atLeast(), "can", (int) can);
    }

    @Override
    public Map<String, Long> lengths() {
      return lack == Lack.STOCK ? Map.of("left", left) : Map.of();
    }

    @Override
    public Object matter() {
      return List.of(code(), count.where(), yarn, lack);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.countTooFew(this);
    }
  }

  /**
   * More pieces must show a yarn than the look allows.
   *
   * @param count the count of the look
   * @param yarn the yarn
   * @param certain pieces that can have nothing else, or that are worked in it
   * @param ofPile pieces of the pile that must lie there; 0 where the others alone are too many
   */
  record CountTooMany(Look.Count count, int yarn, int certain, int ofPile) implements Reason {
    @Override
    public String code() {
      return "count-too-many";
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("allowed", count.atMost().orElse(0), "certain", certain, "pile", ofPile);
    }

    @Override
    public Object matter() {
      return List.of(code(), count.where(), yarn, ofPile == 0);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.countTooMany(this);
    }
  }

  /**
   * A symmetry rules the numbers out that the look asks for.
   *
   * @param count the count of the look
   * @param yarn the yarn
   * @param least the least number asked for
   * @param most the largest number asked for
   * @param below the largest possible number below
   * @param above the least possible number above, where there is one
   */
  record CountOfImages(
      Look.Count count, int yarn, int least, int most, int below, OptionalInt above)
      implements Reason {
    @Override
    public String code() {
      return "count-of-images";
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("least", least, "most", most, "below", below);
    }

    @Override
    public Object matter() {
      return List.of(code(), count.where(), yarn);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.countOfImages(this);
    }
  }

  /**
   * Least numbers of several yarns in one round of the same pieces are more than there are pieces.
   *
   * @param where the pieces and the round
   * @param size how many pieces these are
   * @param yarns the yarns
   * @param least the least number asked for of each
   */
  record CountsTogether(Where where, int size, List<Integer> yarns, List<Integer> least)
      implements Reason {
    @Override
    public String code() {
      return "counts-together";
    }

    /** {@return how many pieces too many are asked for} */
    public int tooMany() {
      return least.stream().mapToInt(Integer::intValue).sum() - size;
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("pieces", size, "too-many", tooMany());
    }

    @Override
    public Object matter() {
      return List.of(code(), where, yarns);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.countsTogether(this);
    }
  }

  /**
   * Rounds that only some yarns can serve take more than these can give.
   *
   * @param served the pieces by kind and round
   * @param whole yarns whose whole supply counts
   * @param bordersOnly yarns that can serve borders alone of these
   * @param inWholeRounds whether it counts that rounds are whole
   * @param amounts how much, where all lengths are those of any yarn; empty where rounds are
   *     weighed
   * @param percentNeeded what is needed of what the yarns can give, in percent, where rounds are
   *     weighed; infinite where they can give nothing
   */
  record YarnShort(
      Map<PieceKind, Map<Integer, List<Integer>>> served,
      List<Integer> whole,
      List<Integer> bordersOnly,
      boolean inWholeRounds,
      Optional<Amounts> amounts,
      double percentNeeded)
      implements Reason {

    /**
     * Lengths in mm.
     *
     * @param needed what the rounds take
     * @param held what the yarns can give whose whole supply counts
     * @param asBorders what the others can give
     * @param missing what is missing
     */
    public record Amounts(long needed, long held, long asBorders, long missing) {}

    @Override
    public String code() {
      return "yarn-short";
    }

    @Override
    public List<Integer> pieces() {
      return served.values().stream()
          .flatMap(byRound -> byRound.values().stream().flatMap(List::stream))
          .distinct()
          .sorted()
          .toList();
    }

    @Override
    public List<Integer> rounds() {
      return served.values().stream()
          .flatMap(byRound -> byRound.keySet().stream())
          .distinct()
          .sorted()
          .toList();
    }

    @Override
    public List<Integer> yarns() {
      List<Integer> yarns = new ArrayList<>(whole);
      yarns.addAll(bordersOnly);
      return yarns.stream().sorted().toList();
    }

    @Override
    public Map<String, Long> lengths() {
      Map<String, Long> lengths = new LinkedHashMap<>();
      amounts.ifPresent(
          each -> {
            lengths.put("needed", each.needed());
            lengths.put("usable", each.held() + each.asBorders());
            lengths.put("short", each.missing());
          });
      return lengths;
    }

    @Override
    public Object matter() {
      return List.of(code(), served.keySet(), yarns());
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.yarnShort(this);
    }
  }

  /**
   * Places that only finished pieces can fill, and the pile has too few that fit.
   *
   * @param pieces the places
   */
  record PlacesUnfilled(List<Integer> pieces) implements Reason {
    @Override
    public String code() {
      return "places-unfilled";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.placesUnfilled(this);
    }
  }

  /**
   * Pieces of the pile that locks leave too few places.
   *
   * @param stacks indices of the pile's stacks
   * @param pieces the places where these can lie
   */
  record PileKeptOut(List<Integer> stacks, List<Integer> pieces) implements Reason {
    @Override
    public String code() {
      return "pile-kept-out";
    }

    @Override
    public Object matter() {
      return List.of(code(), stacks, few(pieces));
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.pileKeptOut(this);
    }
  }

  /**
   * More pieces of the pile with one border, or with borders that look alike, than can lie apart.
   *
   * @param byKind how many pieces
   * @param yarns the borders
   * @param places how many can lie so that no two share a seam
   * @param worked whether worked pieces with such a border count too
   */
  record PileBordersMeet(
      Map<PieceKind, Integer> byKind, List<Integer> yarns, int places, boolean worked)
      implements Reason {
    @Override
    public String code() {
      return "pile-borders-meet";
    }

    /** {@return how many pieces these are} */
    public int count() {
      return byKind.values().stream().mapToInt(Integer::intValue).sum();
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("pieces", count(), "places", places);
    }

    @Override
    public Object matter() {
      return List.of(code(), byKind.keySet(), yarns);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.pileBordersMeet(this);
    }
  }

  /** Few pieces are a matter of their own, many are one by their number. */
  private static List<Integer> few(List<Integer> pieces) {
    return pieces.size() <= 3 ? pieces : List.of();
  }

  /**
   * A case for each sort of reason.
   *
   * @param <T> what they give
   */
  interface Cases<T> {
    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T allKeptBack(AllKeptBack reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T noSuchTone(NoSuchTone reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T lockBarred(LockBarred reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T nothingLeft(NothingLeft reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T roundsAlike(RoundsAlike reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T seamStuck(SeamStuck reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T imagesJoined(ImagesJoined reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T imagesShareNone(ImagesShareNone reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T yarnOverdrawn(YarnOverdrawn reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T pileOverdrawn(PileOverdrawn reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T roundTooLong(RoundTooLong reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T tooFewSequences(TooFewSequences reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countTooFew(CountTooFew reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countTooMany(CountTooMany reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countOfImages(CountOfImages reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T countsTogether(CountsTogether reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T yarnShort(YarnShort reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T placesUnfilled(PlacesUnfilled reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T pileKeptOut(PileKeptOut reason);

    /**
     * {@return what it is for this sort}
     *
     * @param reason a reason of it
     */
    T pileBordersMeet(PileBordersMeet reason);
  }
}
