package lozengy.solver;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What happens to a blanket, kept as plainly as can be, by pieces' names and yarns' codes: for
 * tests that hold marks and changes against it. It knows no notes, no file and no plan but its own
 * list of yarns.
 */
final class PlainDiary {

  /** Marks that can be taken back, by what is promised. */
  private static final int MOST_TAKEN_BACK = 20;

  /** By piece, how many rounds are worked. */
  Map<String, Integer> rounds = new LinkedHashMap<>();

  Set<String> joined = new HashSet<>();

  /** By piece, the codes of its yarns, centre first. */
  Map<String, List<String>> yarns = new LinkedHashMap<>();

  /** By yarn, millimetres that were there at first, or when it was counted. */
  Map<String, Long> stock = new LinkedHashMap<>();

  /**
   * By yarn, millimetres that were there at first and bought since, as if it had never been
   * counted.
   */
  Map<String, Long> uncounted = new HashMap<>();

  Set<String> gone = new HashSet<>();

  /** By yarn that was counted, by piece: how many rounds were worked then, and since. */
  Map<String, Map<String, Integer>> countedRounds = new HashMap<>();

  /** By yarn that was counted, the pieces that were joined then and are worked since. */
  Map<String, Set<String>> countedJoined = new HashMap<>();

  private final Deque<PlainDiary> before = new ArrayDeque<>();

  PlainDiary copy() {
    PlainDiary copy = new PlainDiary();
    copy.rounds.putAll(rounds);
    copy.joined.addAll(joined);
    yarns.forEach((piece, codes) -> copy.yarns.put(piece, new ArrayList<>(codes)));
    copy.stock.putAll(stock);
    copy.uncounted.putAll(uncounted);
    copy.gone.addAll(gone);
    countedRounds.forEach((yarn, then) -> copy.countedRounds.put(yarn, new HashMap<>(then)));
    countedJoined.forEach((yarn, then) -> copy.countedJoined.put(yarn, new HashSet<>(then)));
    return copy;
  }

  /** Remembers how things stand before a mark. */
  void remember(PlainDiary asItWas) {
    before.addLast(asItWas);
    if (before.size() > MOST_TAKEN_BACK) {
      before.removeFirst();
    }
  }

  /** Forgets what stood before: it was planned again. */
  void planned() {
    before.clear();
  }

  boolean canUndo() {
    return !before.isEmpty();
  }

  void undo() {
    PlainDiary was = before.removeLast();
    rounds = was.rounds;
    joined = was.joined;
    yarns = was.yarns;
    stock = was.stock;
    uncounted = was.uncounted;
    gone = was.gone;
    countedRounds = was.countedRounds;
    countedJoined = was.countedJoined;
  }

  /** So many rounds of a piece are worked, and it is joined or not. */
  void set(String piece, int worked, boolean isJoined) {
    if (worked < rounds.get(piece)) {
      countedRounds
          .values()
          .forEach(then -> then.computeIfPresent(piece, (p, n) -> Math.min(n, worked)));
      countedJoined.values().forEach(then -> then.remove(piece));
    }
    rounds.put(piece, worked);
    if (isJoined) {
      joined.add(piece);
    } else {
      joined.remove(piece);
    }
  }

  void count(String yarn, long millimetres) {
    stock.put(yarn, millimetres);
    countedRounds.put(yarn, new HashMap<>(rounds));
    countedJoined.put(yarn, new HashSet<>(joined));
  }

  void add(String yarn, long millimetres) {
    stock.put(yarn, millimetres);
    uncounted.put(yarn, millimetres);
  }

  /** What is bought of a yarn that was gone is all there is for what is worked from now on. */
  void buy(String yarn, long millimetres) {
    if (gone.remove(yarn)) {
      count(yarn, 0);
    }
    stock.merge(yarn, millimetres, Long::sum);
    uncounted.merge(yarn, millimetres, Long::sum);
  }

  void gone(String yarn) {
    gone.add(yarn);
    stock.put(yarn, 0L);
  }

  void uncount(String yarn) {
    stock.put(yarn, uncounted.get(yarn));
    countedRounds.remove(yarn);
    countedJoined.remove(yarn);
  }

  /** Whether what is worked of a round no longer counts against what there is of the yarn. */
  boolean settled(String yarn, String piece, int round) {
    return gone.contains(yarn)
        ? round < rounds.get(piece)
        : round < countedRounds.getOrDefault(yarn, Map.of()).getOrDefault(piece, 0);
  }

  boolean seamSettled(String yarn, String first, String second) {
    Set<String> then = countedJoined.getOrDefault(yarn, Set.of());
    return then.contains(first) && then.contains(second) && seamJoined(first, second);
  }

  boolean seamJoined(String first, String second) {
    return joined.contains(first) && joined.contains(second);
  }
}
