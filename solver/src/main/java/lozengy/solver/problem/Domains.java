package lozengy.solver.problem;

import java.util.Arrays;

/**
 * The yarns that each slot may take. Slots with the same yarns share one domain.
 *
 * @param of domain of each slot
 * @param yarns yarns of each domain, ascending
 * @param allows by domain and yarn
 */
public record Domains(int[] of, int[][] yarns, boolean[][] allows) {

  /** Whether a slot may take a yarn. */
  public boolean allows(int slot, int yarn) {
    return allows[of[slot]][yarn];
  }

  /** The yarns a slot may take, ascending; not to be changed. */
  public int[] yarns(int slot) {
    return yarns[of[slot]];
  }

  /** Whether a slot may take no yarn at all, so that nothing fits. */
  public boolean anyEmpty() {
    return Arrays.stream(yarns).anyMatch(domain -> domain.length == 0);
  }

  /** How many bits it takes to tell an assignment of so many slots from all others. */
  public double bits(int[] slots) {
    return Arrays.stream(slots).mapToDouble(slot -> Math.log(yarns(slot).length)).sum()
        / Math.log(2);
  }
}
