package lozengy.model.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Where;
import lozengy.model.layout.Place;

/**
 * What a look says of a yarn, said of the one in its place. What is worked stays in the old one: a
 * zone then allows both, both are kept apart from a third, and a count is parted into what is
 * worked and what is still asked for.
 */
final class SwappedLook {

  private final Blanket blanket;
  private final Change.Swap wish;

  private SwappedLook(Blanket blanket, Change.Swap wish) {
    this.blanket = blanket;
    this.wish = wish;
  }

  /** The look with one yarn in another's place. */
  static Look of(Blanket blanket, Change.Swap wish) {
    SwappedLook swapped = new SwappedLook(blanket, wish);
    Look look = blanket.brief().look();
    return new Look(
        look.symmetry(),
        look.contrast(),
        look.borders().stream().map(swapped::code).toList(),
        look.zones().stream().map(swapped::zone).toList(),
        each(look.apart(), swapped::pairs),
        each(look.counts(), swapped::counts),
        look.fade().map(swapped::fade),
        look.order());
  }

  private static <T> List<T> each(List<T> old, Function<T, List<T>> swapped) {
    return old.stream().flatMap(one -> swapped.apply(one).stream()).distinct().toList();
  }

  private String code(String code) {
    return code.equals(wish.from()) ? wish.to() : code;
  }

  private Look.Zone zone(Look.Zone zone) {
    if (!zone.only().contains(wish.from()) || zone.only().contains(wish.to())) {
      return zone;
    }
    List<String> only = new ArrayList<>(zone.only());
    only.add(wish.to());
    return new Look.Zone(zone.where(), only);
  }

  /** In a stated order it comes where the old one is, or right behind what is worked in that. */
  private Fade fade(Fade fade) {
    int at = fade.yarns().indexOf(wish.from());
    if (at < 0 || fade.yarns().contains(wish.to())) {
      return fade;
    }
    List<String> yarns = new ArrayList<>(fade.yarns());
    if (worked(fade.where()) == 0) {
      yarns.set(at, wish.to());
    } else {
      yarns.add(at + 1, wish.to());
    }
    return new Fade(fade.towards(), fade.order(), yarns, fade.where());
  }

  private List<Look.Pair> pairs(Look.Pair pair) {
    Look.Pair other = new Look.Pair(code(pair.first()), code(pair.second()), pair.on());
    // what was to be kept apart from the very yarn that takes its place cannot be any more
    return other.first().equals(other.second()) ? List.of(pair) : List.of(pair, other);
  }

  private List<Look.Count> counts(Look.Count count) {
    if (!count.yarn().equals(wish.from())) {
      return List.of(count);
    }
    int worked = worked(count.where());
    OptionalInt most =
        count.atMost().isPresent()
            ? OptionalInt.of(Math.max(0, count.atMost().getAsInt() - worked))
            : OptionalInt.empty();
    Look.Count rest =
        new Look.Count(wish.to(), count.where(), Math.max(0, count.atLeast() - worked), most);
    return worked == 0
        ? List.of(rest)
        : List.of(count.with(Math.min(worked, count.atLeast()), count.atMost()), rest);
  }

  /** Pieces that show the old yarn there for good. */
  private int worked(Where where) {
    int from = blanket.yarnIndex(wish.from());
    int worked = 0;
    for (Place place : blanket.layout().select(where.at())) {
      int piece = place.index();
      boolean shown = false;
      for (int round = 0; round < blanket.roundsWorked(piece); round++) {
        boolean here = where.covers(round, blanket.roundCount(piece));
        shown |= here && blanket.locked(piece, round) == from;
      }
      worked += shown ? 1 : 0;
    }
    return worked;
  }
}
