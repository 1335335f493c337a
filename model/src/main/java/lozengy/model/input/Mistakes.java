package lozengy.model.input;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.input.Mistake.Sort;

/**
 * Collects the mistakes of one input, so that all are told at once; and beside them the fields that
 * are not this program's, so that they can be written again.
 */
public final class Mistakes {

  /** More than a person reads; what comes after is only counted. */
  private static final int MOST_LISTED = 100;

  private final List<Mistake> listed = new ArrayList<>();
  private final Map<BriefPath, Node> foreign = new LinkedHashMap<>();
  private int unlisted;
  private boolean newer;

  /**
   * Adds a mistake.
   *
   * @param mistake the mistake
   */
  public void add(Mistake mistake) {
    if (listed.size() < MOST_LISTED) {
      listed.add(mistake);
    } else {
      unlisted++;
    }
  }

  /**
   * Adds a mistake.
   *
   * @param path the value's path
   * @param line the line, from 1; 0 if not known
   * @param sort what sort of mistake it is
   * @param found what was found
   * @param remedy what would be right
   */
  public void add(BriefPath path, int line, Sort sort, String found, String remedy) {
    add(new Mistake(path, line, sort, found, remedy));
  }

  /** Says that the input states a newer form than this program's: it may hold further fields. */
  public void newer() {
    newer = true;
  }

  /** Whether the input may hold further fields. */
  boolean isNewer() {
    return newer;
  }

  /** Keeps a field that is not this program's. */
  void keep(BriefPath path, Node value) {
    foreign.put(path, value);
  }

  /** {@return the fields that are not this program's, with their paths, in the input's order} */
  public Map<BriefPath, Node> foreign() {
    return Collections.unmodifiableMap(foreign);
  }

  /** {@return whether there is none} */
  public boolean none() {
    return listed.isEmpty();
  }

  /**
   * {@return whether a mistake makes the value at a path doubtful: one at it, below it or above it}
   * O( mistakes).
   *
   * @param path the value's path
   */
  public boolean doubt(BriefPath path) {
    for (Mistake mistake : listed) {
      BriefPath at = mistake.path();
      if (!at.steps().isEmpty() && (at.within(path) || path.within(at))) {
        return true;
      }
    }
    return false;
  }

  /** {@return all mistakes, sorted by line} */
  public List<Mistake> list() {
    List<Mistake> all = new ArrayList<>(listed);
    all.sort(Comparator.comparingInt(Mistake::line));
    if (unlisted > 0) {
      all.add(
          new Mistake(
              BriefPath.ROOT,
              0,
              MistakeCode.FURTHER_MISTAKES.about(unlisted),
              Words.count(unlisted, "further mistake"),
              "Mend those above, then try again"));
    }
    return all;
  }

  /**
   * Ends the reading if there is a mistake.
   *
   * @throws InputException with all of them
   */
  public void throwIfAny() {
    if (!none()) {
      throw new InputException(list());
    }
  }

  /**
   * {@return an exception with all mistakes so far and one that no reading gets past}
   *
   * @param line the line, from 1; 0 if not known
   * @param sort what sort of mistake it is
   * @param found what was found
   * @param remedy what would be right
   */
  public InputException fatal(int line, Sort sort, String found, String remedy) {
    add(BriefPath.ROOT, line, sort, found, remedy);
    return new InputException(list());
  }
}
