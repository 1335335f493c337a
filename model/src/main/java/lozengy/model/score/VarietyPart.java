package lozengy.model.score;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;

/**
 * Variety: 100 x distinct sequences / pieces. Sequences are compared as lists of yarns, whatever
 * the kind of piece. O(pieces x rounds), with hashing.
 */
final class VarietyPart implements ScorePart {

  private final Blanket blanket;
  private final Map<IntBuffer, List<Integer>> groups = new LinkedHashMap<>();

  VarietyPart(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    for (int piece = 0; piece < sequences.pieces(); piece++) {
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
    return 100.0 * groups.size() / blanket.pieceCount();
  }

  @Override
  public List<Loss> losses() {
    List<Loss> losses = new ArrayList<>();
    for (List<Integer> pieces : groups.values()) {
      if (pieces.size() > 1) {
        double points = 100.0 * (pieces.size() - 1) / blanket.pieceCount();
        String words = "%s have the same sequence";
        losses.add(new Loss(points, pieces, () -> words.formatted(Words.pieces(blanket, pieces))));
      }
    }
    return losses;
  }
}
