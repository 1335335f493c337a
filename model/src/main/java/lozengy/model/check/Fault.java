package lozengy.model.check;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.brief.Look;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.PieceKind;

/**
 * A rule that an arrangement breaks, as data. Its words come from {@code model.wording}.
 *
 * @param rule id of the rule
 * @param pieces indices of the pieces concerned; empty where it concerns the blanket
 * @param rounds the rounds concerned, from 0 at the centre; empty where it concerns no single ones
 * @param yarns indices of the yarns concerned
 * @param detail what more is to be known of it
 */
public record Fault(
    RuleId rule, List<Integer> pieces, List<Integer> rounds, List<Integer> yarns, Detail detail) {

  /** What more is to be known of a fault than its rule, pieces, rounds and yarns. */
  public sealed interface Detail {}

  /** Nothing. */
  public record Plain() implements Detail {}

  /** That two borders differ, but too little. */
  public record TooAlike() implements Detail {}

  /**
   * Pieces that share a sequence.
   *
   * @param sequence indices of its yarns, the centre first
   * @param allowed how many may share one
   */
  public record Shared(List<Integer> sequence, int allowed) implements Detail {}

  /**
   * A count of the look.
   *
   * @param where the pieces and rounds that it speaks of
   * @param least the least number asked for, where the pieces are too few
   * @param most the largest number allowed, where the pieces are too many
   */
  public record Counted(Look.Count where, OptionalInt least, OptionalInt most) implements Detail {}

  /**
   * Pieces of the pile without a place.
   *
   * @param kind their kind
   * @param sequence indices of their yarns, the centre first
   * @param missing how many
   */
  public record Unplaced(PieceKind kind, List<Integer> sequence, int missing) implements Detail {}

  /**
   * How rounds of a piece are to differ.
   *
   * @param asked how
   */
  public record Alike(WithinPiece asked) implements Detail {}

  /**
   * A yarn that runs out.
   *
   * @param needed what is needed, in mm
   * @param usable what there is to use, in mm
   */
  public record RunsOut(long needed, long usable) implements Detail {}

  /**
   * A zone.
   *
   * @param only codes of the yarns that it takes
   */
  public record Zoned(List<String> only) implements Detail {}

  /**
   * Copies the lists.
   *
   * @param rule id of the rule
   * @param pieces indices of the pieces concerned; empty where it concerns the blanket
   * @param rounds the rounds concerned, from 0 at the centre
   * @param yarns indices of the yarns concerned
   * @param detail what more is to be known of it
   */
  public Fault {
    pieces = List.copyOf(pieces);
    rounds = List.copyOf(rounds);
    yarns = List.copyOf(yarns);
  }

  /**
   * A fault of which no more is to be known.
   *
   * @param rule id of the rule
   * @param pieces indices of the pieces concerned; empty where it concerns the blanket
   * @param rounds the rounds concerned, from 0 at the centre
   * @param yarns indices of the yarns concerned
   */
  public Fault(RuleId rule, List<Integer> pieces, List<Integer> rounds, List<Integer> yarns) {
    this(rule, pieces, rounds, yarns, new Plain());
  }

  /** {@return what sort of fault it is, a stable word for programs} */
  public String code() {
    if (detail instanceof Counted count) {
      return count.least().isPresent() ? "counts-too-few" : "counts-too-many";
    }
    return detail instanceof TooAlike ? "neighbour-borders-too-alike" : rule.word();
  }

  /** {@return what it says of its pieces: others may say the same of other pieces} */
  public Fault ofAnyPieces() {
    return new Fault(rule, List.of(), rounds, yarns, detail);
  }
}
