package lozengy.model.score;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Part;

/**
 * Variety: 100 x distinct sequences / pieces. Sequences are compared as lists of yarns, whatever
 * the kind of piece; pieces that a symmetry makes each other's images count as one. O(pieces x
 * rounds), with hashing.
 */
final class VarietyPart implements ScorePart {

  private final Blanket blanket;
  private final int pieces;
  private final Map<IntBuffer, List<Integer>> groups = new LinkedHashMap<>();

  VarietyPart(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.pieces = blanket.orbits().leads().length;
    for (int piece : blanket.orbits().leads()) {
      // an IntBuffer compares and hashes by its content
      IntBuffer yarns = IntBuffer.wrap(sequences.of(piece));
      groups.computeIfAbsent(yarns, y -> new ArrayList<>()).add(piece);
    }
  }

  @Override
  public Part part() {
    return Part.VARIETY;
  }

  @Override
  public double score() {
    return 100.0 * groups.size() / pieces;
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    for (List<Integer> alike : groups.values()) {
      if (alike.size() > 1) {
        double points = 100.0 * (alike.size() - 1) / pieces;
        String words = "%s have the same sequence";
        losses.add(new Loss(points, alike, () -> words.formatted(Words.pieces(blanket, alike))));
      }
    }
    return losses;
  }
}
