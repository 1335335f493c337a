package lozengy.solver.explain.argument;

import java.util.List;

/** What of a reason's pieces makes it another matter. */
final class Matter {

  private Matter() {}

  /** Few pieces are a matter of their own, many are one by their number. */
  static List<Integer> of(List<Integer> pieces) {
    return pieces.size() <= 3 ? pieces : List.of();
  }
}
