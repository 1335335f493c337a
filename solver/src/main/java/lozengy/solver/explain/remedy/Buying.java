package lozengy.solver.explain.remedy;

import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ExplainOptions;

/** What to buy so that the stock of a brief is no obstacle: all its rules are looked at. */
public sealed interface Buying {

  /**
   * Nothing has to be bought.
   *
   * @param witness a valid arrangement, held against all rules
   */
  record Nothing(Sequences witness) implements Buying {}

  /**
   * With what is bought an arrangement fits.
   *
   * @param amounts what to buy, in the yarns' order; at least one
   * @param fewest whether it is proved that no fewer balls do
   * @param brief the brief with what is bought
   * @param witness a valid arrangement of that brief, held against all rules
   */
  record Amounts(List<Amount> amounts, boolean fewest, Brief brief, Sequences witness)
      implements Buying {
    /**
     * Copies the list.
     *
     * @param amounts what to buy, in the yarns' order; at least one
     * @param fewest whether it is proved that no fewer balls do
     * @param brief the brief with what is bought
     * @param witness a valid arrangement of that brief, held against all rules
     */
    public Amounts {
      amounts = List.copyOf(amounts);
    }
  }

  /** It is proved that nothing fits, however much of the yarns is bought. */
  record NoHelp() implements Buying {}

  /** Nothing was found and nothing proved within the limits. */
  record Unsettled() implements Buying {}

  /**
   * What to buy of a yarn.
   *
   * @param yarn the yarn's index, from 0
   * @param balls whole balls, above 0; where no put-up is stated, lengths of 10 m
   * @param millimetres what they hold, in mm
   */
  record Amount(int yarn, int balls, long millimetres) {}

  /**
   * Finds what to buy: the fewest balls, where few are missing.
   *
   * @param blanket the brief made ready; less than all of it is kept back
   * @param options effort
   * @return what to buy
   */
  static Buying of(Blanket blanket, ExplainOptions options) {
    return new Buyer(blanket, new ConsistencyOracle(options.seed(), options.each(blanket))).find();
  }
}
