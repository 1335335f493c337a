package lozengy.model.wording;

import java.util.List;
import lozengy.model.brief.Look;
import lozengy.model.brief.Where;
import lozengy.model.input.Words;

/** The words for the pieces and rounds that a part of a look speaks of. */
public final class WhereWords {

  private WhereWords() {}

  /**
   * {@return the pieces, such as {@code all pieces} or {@code row1, top-left}}
   *
   * @param where the pieces and rounds
   */
  public static String at(Where where) {
    return String.join(
        ", ", where.at().stream().map(name -> name.equals("all") ? "all pieces" : name).toList());
  }

  /**
   * {@return one of the rounds, such as {@code the border} or {@code round 1 or 2}}
   *
   * @param where the pieces and rounds
   */
  public static String someRound(Where where) {
    return where.rounds().isEmpty() ? "some round" : rounds(where, " or ");
  }

  /**
   * {@return the rounds, such as {@code the border} or {@code rounds 1 and 2}}
   *
   * @param where the pieces and rounds
   */
  public static String rounds(Where where) {
    return where.rounds().isEmpty() ? "all rounds" : rounds(where, " and ");
  }

  /**
   * {@return what is counted, such as {@code of triangles have MUD in the border}}
   *
   * @param count the count
   */
  public static String of(Look.Count count) {
    return "of %s have %s in %s"
        .formatted(at(count.where()), count.yarn(), someRound(count.where()));
  }

  private static String rounds(Where where, String and) {
    List<String> words =
        where.rounds().stream().map(r -> r == Where.BORDER ? "the border" : "" + r).toList();
    return where.rounds().equals(List.of(Where.BORDER))
        ? words.get(0)
        : Words.plural(words.size(), "round") + " " + String.join(and, words);
  }
}
