package lozengy.model.compare;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.Place;

/**
 * Arrangements side by side.
 *
 * @param all the arrangements, in the order they were named
 */
public record Comparison(List<Compared> all) {

  /** Figures closer than this are the same. */
  private static final double SAME = 1e-9;

  /**
   * Rounds that two arrangements show in different yarns.
   *
   * @param changed how many
   * @param shared rounds that both have: of pieces with the same name and number of rounds
   */
  public record Changed(int changed, int shared) {}

  /** {@return the parts that all of them are scored by} */
  public Set<Part> sharedParts() {
    Set<Part> shared = EnumSet.allOf(Part.class);
    all.forEach(each -> shared.retainAll(each.score().parts().keySet()));
    return shared;
  }

  /** {@return the codes of all yarns, in the order in which they first come} */
  public Set<String> yarns() {
    Set<String> codes = new LinkedHashSet<>();
    all.forEach(each -> codes.addAll(each.leftMillimetres().keySet()));
    return codes;
  }

  /**
   * {@return the rounds that differ between two; empty where they share none, or are planned in
   * other yarns}
   *
   * @param first index of the one
   * @param second index of the other
   */
  public Optional<Changed> changed(int first, int second) {
    Arrangement one = all.get(first).arrangement();
    Arrangement other = all.get(second).arrangement();
    Map<Integer, Integer> rounds = changedRounds(one, other);
    return rounds.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Changed(
                rounds.values().stream().mapToInt(Integer::intValue).sum(),
                rounds.keySet().stream().mapToInt(one.blanket()::roundCount).sum()));
  }

  /**
   * {@return how many rounds differ in each piece that two arrangements share, by its index in the
   * first} They share a piece by its name and number of rounds. Nothing is compared where fewer
   * than half of the yarns of the one that has fewer are the other's too: a yarn is the same by its
   * code and its colour.
   *
   * @param one an arrangement
   * @param other another
   */
  public static Map<Integer, Integer> changedRounds(Arrangement one, Arrangement other) {
    Map<Integer, Integer> changed = new LinkedHashMap<>();
    Blanket blanket = one.blanket();
    Blanket others = other.blanket();
    Set<String> yarns = identities(blanket);
    Set<String> shared = new LinkedHashSet<>(yarns);
    shared.retainAll(identities(others));
    if (2 * shared.size() < Math.min(yarns.size(), identities(others).size())) {
      return changed;
    }
    for (Place place : blanket.layout().places()) {
      Optional<Place> same = others.layout().find(place.name());
      int rounds = blanket.roundCount(place.index());
      if (same.isPresent() && others.roundCount(same.get().index()) == rounds) {
        int count = 0;
        for (int round = 0; round < rounds; round++) {
          Yarn yarn = blanket.yarn(one.sequences().yarn(place.index(), round));
          Yarn another = others.yarn(other.sequences().yarn(same.get().index(), round));
          count += identity(yarn).equals(identity(another)) ? 0 : 1;
        }
        changed.put(place.index(), count);
      }
    }
    return changed;
  }

  private static Set<String> identities(Blanket blanket) {
    return blanket.brief().yarns().stream()
        .map(Comparison::identity)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static String identity(Yarn yarn) {
    return yarn.code() + " " + yarn.colour().hex();
  }

  /** {@return how many rounds any two share, if it is the same number for each two} */
  public Optional<Integer> sharedByAll() {
    Set<Integer> shared = new LinkedHashSet<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = 0; j < i; j++) {
        shared.add(changed(j, i).map(Changed::shared).orElse(0));
      }
    }
    return shared.size() == 1 && !shared.contains(0)
        ? Optional.of(shared.iterator().next())
        : Optional.empty();
  }

  /**
   * Those that beat one: as good in every part that all are scored by, and better in one (Pareto).
   * One that breaks rules beats none that breaks none.
   *
   * @param index index of the one
   * @return the indices of those that beat it
   */
  public List<Integer> beatenBy(int index) {
    List<Integer> better = new ArrayList<>();
    for (int other = 0; other < all.size(); other++) {
      if (other != index && beats(all.get(other), all.get(index))) {
        better.add(other);
      }
    }
    return better;
  }

  private boolean beats(Compared one, Compared other) {
    boolean better = false;
    if (one.faults() > 0 && other.faults() == 0) {
      return false;
    }
    for (Part part : sharedParts()) {
      double ahead = one.score().parts().get(part) - other.score().parts().get(part);
      if (ahead < -SAME) {
        return false;
      }
      better |= ahead > SAME;
    }
    return better;
  }
}
