package lozengy.model.layout;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import net.jqwik.api.Combinators;

/** Small layouts of all settings, sides and corners filled or open. */
class LayoutSizes implements ArbitrarySupplier<LayoutSize> {

  @Override
  public Arbitrary<LayoutSize> get() {
    Arbitrary<Boolean> filled = Arbitraries.of(true, false);
    return Combinators.combine(
            Arbitraries.of(Setting.values()),
            Arbitraries.integers().between(1, 8),
            Arbitraries.integers().between(1, 8),
            filled,
            filled)
        .as(LayoutSizes::size);
  }

  /** A layout on point with triangles everywhere. */
  static LayoutSize filled(int across, int down) {
    return new LayoutSize(Setting.ON_POINT, across, down, true, true);
  }

  private static LayoutSize size(
      Setting setting, int across, int down, boolean sides, boolean corners) {
    boolean onPoint = setting == Setting.ON_POINT;
    return new LayoutSize(setting, across, down, onPoint && sides, onPoint && corners);
  }
}
