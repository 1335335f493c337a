package lozengy.model.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lozengy.model.layout.PieceKind;

/** Puts pieces on a pile and takes them off it; entries that say the same are one. */
public final class PileEntries {

  private record Sort(PieceKind kind, List<String> rounds, Set<String> counted) {}

  private final Map<Sort, PileEntry> sorts = new LinkedHashMap<>();

  /**
   * A pile as it is.
   *
   * @param entries what lies on it
   */
  public PileEntries(List<PileEntry> entries) {
    entries.forEach(this::put);
  }

  private static Sort sort(PileEntry entry) {
    return new Sort(entry.kind(), entry.rounds(), entry.counted());
  }

  /**
   * Puts pieces on it.
   *
   * @param entry the pieces
   */
  public void put(PileEntry entry) {
    sorts.merge(
        sort(entry),
        entry,
        (one, more) -> one.withCount(one.count() + more.count()).withOut(one.out() + more.out()));
  }

  /**
   * Takes one piece off it that goes into the blanket.
   *
   * @param kind the kind of piece
   * @param rounds yarns' codes, centre first
   * @return the piece, with the yarns that were counted since it was worked
   * @throws IllegalArgumentException if there is none
   */
  public PileEntry take(PieceKind kind, List<String> rounds) {
    for (PileEntry entry : list()) {
      if (entry.kind() == kind && entry.rounds().equals(rounds) && entry.laid() > 0) {
        sorts.computeIfPresent(
            sort(entry), (s, e) -> e.count() == 1 ? null : e.withCount(e.count() - 1));
        return new PileEntry(kind, rounds, 1, entry.counted());
      }
    }
    throw new IllegalArgumentException("no such " + kind.word() + " lies on the pile");
  }

  /**
   * Says that some yarns were counted, with all that lies on it worked by then.
   *
   * @param codes yarns' codes
   */
  public void count(Set<String> codes) {
    List<PileEntry> before = list();
    sorts.clear();
    for (PileEntry entry : before) {
      Set<String> counted = new LinkedHashSet<>(entry.counted());
      codes.stream().filter(entry.rounds()::contains).forEach(counted::add);
      put(entry.withCounted(counted));
    }
  }

  /**
   * Says that a yarn was not counted after all.
   *
   * @param code the yarn's code
   */
  public void uncount(String code) {
    List<PileEntry> before = list();
    sorts.clear();
    for (PileEntry entry : before) {
      Set<String> counted = new LinkedHashSet<>(entry.counted());
      counted.remove(code);
      put(entry.withCounted(counted));
    }
  }

  /** {@return the entries} */
  public List<PileEntry> list() {
    return new ArrayList<>(sorts.values());
  }
}
