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

  /** A yarn by name and code, {@code Reed (REE)}; by code alone where the name says the same. */
  public static String yarn(Blanket blanket, int yarn) {
    String code = blanket.yarn(yarn).code();
    String name = blanket.yarn(yarn).name();
    return name.equals(code) ? code : name + " (" + code + ")";
  }

  /** A piece by name. */
  public static String piece(Blanket blanket, int piece) {
    return blanket.place(piece).name();
  }

  /** Pieces by name, as a list. */
  public static String pieces(Blanket blanket, Collection<Integer> pieces) {
    return list(pieces.stream().map(piece -> piece(blanket, piece)).toList());
  }

  /** A round of a piece, counted from 1 at the centre; the last is the border. */
  public static String round(Blanket blanket, int piece, int round) {
    return round == blanket.roundCount(piece) - 1 ? "the border" : "round " + (round + 1);
  }

  /** Rounds from indices: {@code round 2}, or {@code rounds 2, 3 and 5}. */
  public static String rounds(Collection<Integer> rounds) {
    return (rounds.size() == 1 ? "round " : "rounds ")
        + list(rounds.stream().map(round -> Integer.toString(round + 1)).toList());
  }

  /** A list of one or more: {@code a, b and c}; a long one ends in {@code and 12 more}. */
  public static String list(List<String> items) {
    if (items.size() == 1) {
      return items.get(0);
    }
    int shown = items.size() > LONGEST_LIST ? LONGEST_LIST : items.size() - 1;
    String last = items.size() > LONGEST_LIST ? (items.size() - shown) + " more" : items.get(shown);
    return String.join(", ", items.subList(0, shown)) + " and " + last;
  }

  /** A length in m with two decimals, or three where the millimetres need them. */
  public static String metres(long millimetres) {
    BigDecimal metres = BigDecimal.valueOf(millimetres, 3);
    return (millimetres % 10 == 0 ? metres.setScale(2) : metres).toPlainString() + " m";
  }

  /** A number without needless zeros: {@code 5}, {@code 2.5}. */
  public static String number(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /**
   * A CIEDE2000 difference to one decimal, rounded down so that it never seems to reach a limit.
   */
  public static String difference(double difference) {
    return BigDecimal.valueOf(difference).setScale(1, RoundingMode.DOWN).toPlainString()
        + " (CIEDE2000)";
  }
}
