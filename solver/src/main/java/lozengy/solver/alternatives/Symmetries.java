package lozengy.solver.alternatives;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Place;

/**
 * The turns and mirrorings that carry a blanket's places onto places of the same kind, and rounds
 * that are free to change onto such.
 */
final class Symmetries {

  private record At(int x, int y) {}

  private Symmetries() {}

  /**
   * For each symmetry, where it carries each piece; the first leaves all in place. At most eight.
   * O(pieces x rounds).
   */
  static List<int[]> of(Blanket blanket) {
    Map<At, Integer> pieces = new HashMap<>();
    int right = 0;
    int bottom = 0;
    int left = Integer.MAX_VALUE;
    int top = Integer.MAX_VALUE;
    for (Place place : blanket.layout().places()) {
      pieces.put(new At(place.x(), place.y()), place.index());
      right = Math.max(right, place.x());
      bottom = Math.max(bottom, place.y());
      left = Math.min(left, place.x());
      top = Math.min(top, place.y());
    }
    int across = left + right;
    int down = top + bottom;
    UnaryOperator<At> stay = at -> at;
    UnaryOperator<At> leftRight = at -> new At(across - at.x(), at.y());
    UnaryOperator<At> topBottom = at -> new At(at.x(), down - at.y());
    UnaryOperator<At> halfTurn = at -> new At(across - at.x(), down - at.y());
    List<UnaryOperator<At>> ways = new ArrayList<>(List.of(stay, leftRight, topBottom, halfTurn));
    if (right - left == bottom - top) {
      int offset = top - left;
      UnaryOperator<At> diagonal = at -> new At(at.y() - offset, at.x() + offset);
      for (UnaryOperator<At> way : List.copyOf(ways)) {
        ways.add(at -> way.apply(diagonal.apply(at)));
      }
    }
    List<int[]> symmetries = new ArrayList<>();
    for (UnaryOperator<At> way : ways) {
      int[] onto = new int[blanket.pieceCount()];
      if (carries(blanket, pieces, way, onto)) {
        symmetries.add(onto);
      }
    }
    return symmetries;
  }

  private static boolean carries(
      Blanket blanket, Map<At, Integer> pieces, UnaryOperator<At> way, int[] onto) {
    for (Place place : blanket.layout().places()) {
      Integer other = pieces.get(way.apply(new At(place.x(), place.y())));
      int piece = place.index();
      if (other == null || blanket.kind(other) != place.kind()) {
        return false;
      }
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        if (blanket.free(piece, round) != blanket.free(other, round)) {
          return false;
        }
      }
      onto[piece] = other;
    }
    return true;
  }
}
