package lozengy.model.blanket;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.List;

/** Names, lists and lengths as messages for a person write them. */
public final class Words {

  /** A longer list than this ends in a count. */
  private static final int LONGEST_LIST = 8;

  private Words() {}

  /**
   * {@return a yarn by name and code, {@code Reed (REE)}; by code alone where the name says the
   * same}
   *
   * @param blanket the blanket
   * @param yarn the yarn's index, from 0
   */
  public static String yarn(Blanket blanket, int yarn) {
    String code = blanket.yarn(yarn).code();
    String name = blanket.yarn(yarn).name();
    return name.equals(code) ? code : name + " (" + code + ")";
  }

  /**
   * {@return a piece by name}
   *
   * @param blanket the blanket
   * @param piece the piece's index, from 0
   */
  public static String piece(Blanket blanket, int piece) {
    return blanket.place(piece).name();
  }

  /**
   * {@return pieces by name, as a list}
   *
   * @param blanket the blanket
   * @param pieces pieces' indices, from 0
   */
  public static String pieces(Blanket blanket, Collection<Integer> pieces) {
    return list(pieces.stream().map(piece -> piece(blanket, piece)).toList());
  }

  /**
   * {@return a round of a piece, counted from 1 at the centre; the last is the border}
   *
   * @param blanket the blanket
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   */
  public static String round(Blanket blanket, int piece, int round) {
    return round == blanket.roundCount(piece) - 1 ? "the border" : "round " + (round + 1);
  }

  /**
   * {@return rounds from indices: {@code round 2}, or {@code rounds 2, 3 and 5}}
   *
   * @param rounds rounds, from 0 at the centre
   */
  public static String rounds(Collection<Integer> rounds) {
    return lozengy.model.input.Words.plural(rounds.size(), "round")
        + " "
        + list(rounds.stream().map(round -> Integer.toString(round + 1)).toList());
  }

  /**
   * {@return a list of one or more: {@code a, b and c}; a long one ends in {@code and 12 more}}
   *
   * @param items the words to list, at least one
   */
  public static String list(List<String> items) {
    if (items.size() == 1) {
      return items.get(0);
    }
    int shown = items.size() > LONGEST_LIST ? LONGEST_LIST : items.size() - 1;
    String last = items.size() > LONGEST_LIST ? (items.size() - shown) + " more" : items.get(shown);
    return String.join(", ", items.subList(0, shown)) + " and " + last;
  }

  /**
   * {@return a length in m with two decimals, or three where the millimetres need them}
   *
   * @param millimetres the length in mm
   */
  public static String metres(long millimetres) {
    BigDecimal metres = BigDecimal.valueOf(millimetres, 3);
    return (millimetres % 10 == 0 ? metres.setScale(2) : metres).toPlainString() + " m";
  }

  /**
   * {@return a number without needless zeros: {@code 5}, {@code 2.5}}
   *
   * @param number the number
   */
  public static String number(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /**
   * {@return a CIEDE2000 difference to one decimal, rounded down so that it never seems to reach a
   * limit}
   *
   * @param difference the difference, CIEDE2000
   */
  public static String difference(double difference) {
    return BigDecimal.valueOf(difference).setScale(1, RoundingMode.DOWN).toPlainString()
        + " (CIEDE2000)";
  }
}
