package lozengy.solver.explain.argument;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import lozengy.model.brief.Look;
import lozengy.model.brief.Where;

/** Pieces cannot be as many, or as few, as look and rules ask for. */
public sealed interface CountReason extends Reason {

  /**
   * More pieces than sequences, where copies are limited.
   *
   * @param pieces the pieces
   * @param allowed how many may share a sequence
   * @param room how many of them find one
   * @param worked whether worked pieces count too
   */
  record TooFewSequences(List<Integer> pieces, int allowed, int room, boolean worked)
      implements CountReason {
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
      return List.of(code(), Matter.of(pieces), worked);
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
  record CountTooFew(Look.Count count, int yarn, Lack lack, long can, long left)
      implements CountReason {
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
  record CountTooMany(Look.Count count, int yarn, int certain, int ofPile) implements CountReason {
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
      implements CountReason {
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
      implements CountReason {
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
}
