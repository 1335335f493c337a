package lozengy.solver.search;

/**
 * Ways to draw a neighbour of the state. {@link Moves#attempt} makes them: one call each, known
 * where it stands, which the compiler can inline; through an interface a move takes a tenth longer.
 */
enum Operator {
  /** A round takes another yarn. */
  CHANGE,
  /** Two rounds of the same needs and domain exchange theirs. */
  EXCHANGE_ALIKE,
  /** Two rounds of one layer exchange theirs. */
  EXCHANGE_IN_LAYER,
  /** Two rounds of any layers exchange theirs. */
  EXCHANGE_ACROSS,
  /** Two rounds of one piece exchange theirs. */
  EXCHANGE_WITHIN,
  /** Two pieces of one kind exchange all of theirs. */
  EXCHANGE_SEQUENCES,
  /** Borders exchange theirs along a chain. */
  CHAIN,
  /** A border takes another yarn, or exchanges it with one of its needs and domain. */
  BORDER
}
