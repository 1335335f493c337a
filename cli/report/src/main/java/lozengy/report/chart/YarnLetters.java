package lozengy.report.chart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;

/**
 * A letter for every yarn, short enough to stand on each round of a drawing: no drawing relies on
 * colour alone. It is taken from the yarn's code or name where that is free, and is the same in
 * every format. Where there are more yarns than letters and digits, the rest get two characters.
 */
public final class YarnLetters {

  /** Without 0 and 1, which look like O and I. */
  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ23456789";

  private final List<String> letters;

  private YarnLetters(List<String> letters) {
    this.letters = letters;
  }

  /** The letters of a blanket's yarns. */
  public static YarnLetters of(Blanket blanket) {
    Set<String> taken = new HashSet<>();
    List<String> letters = new ArrayList<>();
    for (Yarn yarn : blanket.brief().yarns()) {
      String letter =
          Stream.of(single(yarn.code()), single(yarn.name()), single(ALL), pairs())
              .flatMap(each -> each)
              .filter(each -> !taken.contains(each))
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("more yarns than a brief may have"));
      taken.add(letter);
      letters.add(letter);
    }
    return new YarnLetters(letters);
  }

  private static Stream<String> single(String text) {
    return text.toUpperCase(Locale.ROOT)
        .chars()
        .filter(each -> ALL.indexOf(each) >= 0)
        .mapToObj(Character::toString);
  }

  private static Stream<String> pairs() {
    return single(ALL).flatMap(first -> single(ALL).map(second -> first + second));
  }

  /** A yarn's letter: one character, or two. */
  public String of(int yarn) {
    return letters.get(yarn);
  }

  /** How many characters the longest has. */
  int longest() {
    return letters.stream().collect(Collectors.summarizingInt(String::length)).getMax();
  }
}
