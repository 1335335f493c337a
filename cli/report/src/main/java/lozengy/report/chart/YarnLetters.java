package lozengy.report.chart;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/**
 * A letter for every yarn, short enough to stand on each round of a drawing: no drawing relies on
 * colour alone. It is one that its yarn is remembered by, the first of its name where that can be,
 * and the same in every format. Which yarn gets which is an assignment problem, solved by the
 * method of Kuhn and Munkres: what all yarns give up together is as little as can be, and where two
 * want the same the earlier one of the brief has it. Where there are more yarns than letters and
 * digits, the rest get two characters.
 */
public final class YarnLetters {

  /** Without 0 and 1, which look like O and I. */
  private static final String ALL = "ABCDEFGHIJKLMNOPQRSTUVWXYZ23456789";

  /** What a letter costs that begins the name, the code, or a later word of the name. */
  private static final int BEGINS_NAME = 0;

  private static final int BEGINS_CODE = 20;
  private static final int BEGINS_WORD = 30;

  /** One from within the code or the name, and how much more for each place further on. */
  private static final int IN_CODE = 60;

  private static final int IN_NAME = 70;
  private static final int FURTHER_ON = 1;

  /** One that has nothing to do with the yarn: a letter misleads more than a digit. */
  private static final int STRANGE_DIGIT = 200;

  private static final int STRANGE_LETTER = 220;

  private final List<String> letters;

  private YarnLetters(List<String> letters) {
    this.letters = letters;
  }

  /** The letters of a blanket's yarns. */
  public static YarnLetters of(Blanket blanket) {
    List<Yarn> yarns = blanket.brief().yarns();
    List<String> letters = new ArrayList<>();
    int single = Math.min(yarns.size(), ALL.length());
    for (int letter : assigned(yarns.subList(0, single))) {
      letters.add(ALL.substring(letter, letter + 1));
    }
    Set<String> taken = new HashSet<>(letters);
    for (Yarn yarn : yarns.subList(single, yarns.size())) {
      String own = characters(yarn.code() + yarn.name());
      String pair =
          Stream.of(own, ALL)
              .flatMap(YarnLetters::pairs)
              .filter(taken::add)
              .findFirst()
              .orElseThrow(() -> new IllegalStateException("more yarns than a brief may have"));
      letters.add(pair);
    }
    return new YarnLetters(letters);
  }

  /** The letter of each yarn, of which there are no more than letters. */
  private static List<Integer> assigned(List<Yarn> yarns) {
    int count = ALL.length();
    SimpleWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    // a letter that no yarn gets is paired with nothing, which costs nothing
    Set<Integer> takers = numbers(0, count);
    Set<Integer> letters = numbers(count, 2 * count);
    takers.forEach(graph::addVertex);
    letters.forEach(graph::addVertex);
    for (int taker : takers) {
      Spelling spelling = taker < yarns.size() ? Spelling.of(yarns.get(taker)) : Spelling.NONE;
      // whole numbers, so that sums are exact; what an earlier yarn gives up weighs a little more
      int weight = taker < yarns.size() ? 2 * yarns.size() - taker : 0;
      for (int letter : letters) {
        double cost = weight * spelling.cost(ALL.charAt(letter - count));
        graph.setEdgeWeight(graph.addEdge(taker, letter), cost);
      }
    }
    List<Integer> assigned = new ArrayList<>(yarns.stream().map(yarn -> -1).toList());
    for (DefaultWeightedEdge edge :
        new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, takers, letters)
            .getMatching()
            .getEdges()) {
      int taker = graph.getEdgeSource(edge);
      if (taker < yarns.size()) {
        assigned.set(taker, graph.getEdgeTarget(edge) - count);
      }
    }
    return assigned;
  }

  private static Set<Integer> numbers(int from, int to) {
    return IntStream.range(from, to).boxed().collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * What of a yarn's name, of its code and of the beginnings of its name's words may stand for it.
   */
  private record Spelling(String name, String code, String beginnings) {

    static final Spelling NONE = new Spelling("", "", "");

    static Spelling of(Yarn yarn) {
      String beginnings =
          Stream.of(yarn.name().strip().split("\\s+"))
              .map(YarnLetters::characters)
              .filter(word -> !word.isEmpty())
              .map(word -> word.substring(0, 1))
              .collect(Collectors.joining());
      return new Spelling(characters(yarn.name()), characters(yarn.code()), beginnings);
    }

    int cost(char letter) {
      if (name.indexOf(letter) == 0) {
        return BEGINS_NAME;
      }
      if (code.indexOf(letter) == 0) {
        return BEGINS_CODE;
      }
      if (beginnings.indexOf(letter) >= 0) {
        return BEGINS_WORD;
      }
      if (code.indexOf(letter) > 0) {
        return IN_CODE + FURTHER_ON * code.indexOf(letter);
      }
      if (name.indexOf(letter) > 0) {
        return Math.min(IN_NAME + FURTHER_ON * name.indexOf(letter), STRANGE_DIGIT - 1);
      }
      return Character.isDigit(letter) ? STRANGE_DIGIT : STRANGE_LETTER;
    }
  }

  /** What of a text may stand for a yarn. */
  private static String characters(String text) {
    return text.toUpperCase(Locale.ROOT)
        .chars()
        .filter(each -> ALL.indexOf(each) >= 0)
        .mapToObj(Character::toString)
        .collect(Collectors.joining());
  }

  private static Stream<String> pairs(String from) {
    List<String> each = from.chars().mapToObj(Character::toString).toList();
    return each.stream().flatMap(first -> each.stream().map(second -> first + second));
  }

  /** A yarn's letter: one character, or two. */
  public String of(int yarn) {
    return letters.get(yarn);
  }

  /** All of them, by the yarns' order. */
  List<String> all() {
    return List.copyOf(letters);
  }
}
