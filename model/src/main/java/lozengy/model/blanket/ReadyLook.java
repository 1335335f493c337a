package lozengy.model.blanket;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import lozengy.model.brief.Look;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;

/**
 * A brief's look made ready: pieces, rounds and yarns as the indices of a {@link Blanket}.
 * Immutable.
 */
public final class ReadyLook {

  private static final int[] NO_ZONES = {};

  private final Look look;
  private final Layout layout;
  private final int[] borders;
  private final int[][] zonesOf;
  private final int[] zoneGroups;
  private final boolean[][] only;

  ReadyLook(Look look, Layout layout, int yarnCount, ToIntFunction<String> yarnIndex) {
    this.look = look;
    this.layout = layout;
    this.borders = look.borders().stream().mapToInt(yarnIndex).toArray();
    this.only = new boolean[look.zones().size()][yarnCount];
    this.zonesOf = look.zones().isEmpty() ? null : new int[layout.places().size()][];
    for (int zone = 0; zone < only.length; zone++) {
      for (String code : look.zones().get(zone).only()) {
        only[zone][yarnIndex.applyAsInt(code)] = true;
      }
      for (Place place : layout.select(look.zones().get(zone).where().at())) {
        int[] before = zonesOf[place.index()] == null ? NO_ZONES : zonesOf[place.index()];
        int[] more = Arrays.copyOf(before, before.length + 1);
        more[before.length] = zone;
        zonesOf[place.index()] = more;
      }
    }
    this.zoneGroups = zonesOf == null ? null : groups(zonesOf);
  }

  private static int[] groups(int[][] zonesOf) {
    Map<List<Integer>, Integer> known = new HashMap<>();
    int[] groups = new int[zonesOf.length];
    for (int piece = 0; piece < groups.length; piece++) {
      int[] zones = zonesOf[piece] == null ? NO_ZONES : zonesOf[piece];
      List<Integer> key = Arrays.stream(zones).boxed().toList();
      known.putIfAbsent(key, known.size());
      groups[piece] = known.get(key);
    }
    return groups;
  }

  /** {@return the look as asked for} */
  public Look asked() {
    return look;
  }

  /** {@return whether all borders are given, so that neighbours may match by design} */
  public boolean givesBorders() {
    return borders.length > 0;
  }

  /**
   * {@return the yarn that the look gives a piece's border, or {@link Sequences#OPEN}} Of two that
   * alternate, squares of odd rows on point, and straight those of the first square's colour on a
   * chessboard, take the first; the pieces on a seam with them the second.
   *
   * @param piece the piece's index, from 0
   */
  public int border(int piece) {
    if (borders.length < 2) {
      return borders.length == 0 ? Sequences.OPEN : borders[0];
    }
    Place place = layout.places().get(piece);
    boolean first =
        layout.size().setting() == Setting.ON_POINT
            ? place.y() % 2 == 1
            : (place.x() + place.y()) % 4 == 2;
    return borders[first ? 0 : 1];
  }

  /**
   * {@return whether zones let a round have a yarn; O(zones of the piece)}
   *
   * @param piece the piece's index, from 0
   * @param round the round, from 0 at the centre
   * @param roundCount rounds of the piece
   * @param yarn the yarn's index, from 0
   */
  public boolean allows(int piece, int round, int roundCount, int yarn) {
    if (zonesOf == null || zonesOf[piece] == null) {
      return true;
    }
    for (int zone : zonesOf[piece]) {
      if (!only[zone][yarn] && look.zones().get(zone).where().covers(round, roundCount)) {
        return false;
      }
    }
    return true;
  }

  /**
   * {@return a number that pieces in the same zones share}
   *
   * @param piece the piece's index, from 0
   */
  public int zoneGroup(int piece) {
    return zoneGroups == null ? 0 : zoneGroups[piece];
  }

  /**
   * {@return how well two yarns side by side have the contrast that is wanted, 0 to 1: with t the
   * contrast wanted, 0 to 1, 1 - |contrast - t| / max(t, 1 - t)} Where nothing is said of contrast
   * it is the contrast itself.
   *
   * @param onSeams whether they are borders on a seam, rather than rounds of one piece
   * @param contrast contrast of the two, 0 to 1
   */
  public double wanted(boolean onSeams, double contrast) {
    double target = look.contrast().wanted(onSeams) / Look.LIVELY;
    return target == 1 ? contrast : 1 - Math.abs(contrast - target) / Math.max(target, 1 - target);
  }
}
