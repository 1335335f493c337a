package lozengy.solver.gallery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;
import lozengy.model.brief.Round;
import lozengy.model.brief.Where;
import lozengy.model.layout.Place;

/**
 * Zones by tone: of the yarns that borders may take, the darker ones lie along the outline and the
 * lighter ones within. How many are dark goes by what there is of each and by how many pieces lie
 * along the outline.
 */
final class ToneZones {

  private static final String OUTLINE = "outline";

  private ToneZones() {}

  /** The zones; empty where all pieces lie along the outline, or borders have no choice. */
  static Optional<List<Look.Zone>> of(Blanket blanket) {
    Set<Integer> outline =
        blanket.layout().select(OUTLINE).stream().map(Place::index).collect(Collectors.toSet());
    List<String> within =
        blanket.layout().places().stream()
            .filter(place -> !outline.contains(place.index()))
            .map(Place::name)
            .toList();
    List<Integer> yarns = borderYarns(blanket);
    if (outline.isEmpty() || within.isEmpty() || yarns.size() < 2) {
      return Optional.empty();
    }
    yarns.sort(Comparator.comparingDouble(yarn -> blanket.yarns().lab(yarn).lightness()));
    double all = yarns.stream().mapToLong(blanket.yarns()::usableMillimetres).sum();
    double wanted = (double) outline.size() / blanket.pieceCount();
    int dark = 1;
    long so = blanket.yarns().usableMillimetres(yarns.get(0));
    while (dark < yarns.size() - 1 && so < wanted * all) {
      so += blanket.yarns().usableMillimetres(yarns.get(dark++));
    }
    return Optional.of(
        List.of(
            zone(blanket, List.of(OUTLINE), yarns.subList(0, dark)),
            zone(blanket, within, yarns.subList(dark, yarns.size()))));
  }

  private static Look.Zone zone(Blanket blanket, List<String> at, List<Integer> yarns) {
    List<String> codes = yarns.stream().map(yarn -> blanket.yarn(yarn).code()).toList();
    return new Look.Zone(new Where(at, List.of(Where.BORDER)), codes);
  }

  /** Yarns that are at hand and that the border of some kind of piece may take. */
  private static List<Integer> borderYarns(Blanket blanket) {
    Set<Integer> yarns = new TreeSet<>();
    for (Place place : blanket.layout().places()) {
      List<Round> rounds = blanket.motif(place.kind()).rounds();
      Round border = rounds.get(rounds.size() - 1);
      IntStream.range(0, blanket.yarnCount())
          .filter(
              yarn ->
                  border.tones().isEmpty() || border.tones().contains(blanket.yarns().tone(yarn)))
          .filter(yarn -> blanket.yarns().usableMillimetres(yarn) > 0)
          .forEach(yarns::add);
    }
    return new ArrayList<>(yarns);
  }
}
