package lozengy.benchmarks.brief;

import java.util.List;
import lozengy.model.colour.Tone;

/**
 * Colours for generated yarns, drawn at random within each tone's range of lightness so that each
 * stands as far as could be from those before it. Of a tone, yarns 1 to 12 are at least 16 apart
 * (CIEDE2000) where it is dark, mids (8) 21, lights (14) 13.
 */
final class Palette {

  private static final List<String> DARK =
      List.of(
          "#2e220a", "#6d4790", "#0e6665", "#9a3d37", "#4f5f01", "#022646", "#3a1b29", "#09371b",
          "#734f17", "#1a608d", "#434948", "#942d5f");
  private static final List<String> MID =
      List.of(
          "#b98057", "#1170c1", "#0b7f45", "#c97cb8", "#22aabb", "#6b6b72", "#b6465e", "#898b43");
  private static final List<String> LIGHT =
      List.of(
          "#dfbbfd", "#def4a7", "#04c3e0", "#e9af93", "#dae7e7", "#70c6a7", "#8eb1ee", "#ef98af",
          "#bfaf71", "#f5dbe3", "#8dfefc", "#adacc3", "#b5b0a4", "#f3d9b3");

  private Palette() {}

  /** The colours of a tone as {@code #rrggbb}. */
  static List<String> of(Tone tone) {
    return switch (tone) {
      case DARK -> DARK;
      case MID -> MID;
      case LIGHT -> LIGHT;
    };
  }
}
