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

  /**
   * {@return whether a slot may take a yarn}
   *
   * @param slot the slot's index, from 0
   * @param yarn the yarn's index, from 0
   */
  public boolean allows(int slot, int yarn) {
    return allows[of[slot]][yarn];
  }

  /**
   * {@return the yarns a slot may take, ascending; not to be changed}
   *
   * @param slot the slot's index, from 0
   */
  public int[] yarns(int slot) {
    return yarns[of[slot]];
  }

  /**
   * {@return these domains where some slots may take one yarn alone}
   *
   * @param yarn the yarn of each slot; negative for all that it may take
   */
  public Domains narrowed(int[] yarn) {
    int most = allows[0].length;
    int[][] lists = Arrays.copyOf(yarns, yarns.length + most);
    boolean[][] may = Arrays.copyOf(allows, lists.length);
    for (int only = 0; only < most; only++) {
      lists[yarns.length + only] = new int[] {only};
      may[yarns.length + only] = new boolean[most];
      may[yarns.length + only][only] = true;
    }
    int[] domain = of.clone();
    for (int slot = 0; slot < domain.length; slot++) {
      domain[slot] = yarn[slot] < 0 ? of[slot] : yarns.length + yarn[slot];
    }
    return new Domains(domain, lists, may);
  }

  /** {@return whether a slot may take no yarn at all, so that nothing fits} */
  public boolean anyEmpty() {
    return Arrays.stream(yarns).anyMatch(domain -> domain.length == 0);
  }

  /**
   * {@return how many bits it takes to tell an assignment of so many slots from all others}
   *
   * @param slots the slots' indices, from 0
   */
  public double bits(int[] slots) {
    return Arrays.stream(slots).mapToDouble(slot -> StrictMath.log(yarns(slot).length)).sum()
        / StrictMath.log(2);
  }
}
