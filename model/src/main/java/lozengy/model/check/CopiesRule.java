package lozengy.model.check;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.input.BriefPath;

/**
 * No more pieces share a sequence than allowed. Sequences are compared as lists of yarns, whatever
 * the kind of piece; a piece with an open round shares none yet. Pieces that a symmetry makes each
 * other's images count as one, and as worked once one of them is. A group of pieces that are all
 * made, joined or from the pile is no fault. O(pieces x rounds), with hashing.
 */
public final class CopiesRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.COPIES;
  }

  /** One line, where the number can be exceeded at all. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    OptionalInt copies = blanket.brief().rules().copies();
    if (copies.isEmpty() || copies.getAsInt() >= blanket.pieceCount()) {
      return List.of();
    }
    int allowed = copies.getAsInt();
    Ground limit = new Ground.Copies(blanket.orbits().leads(), allowed);
    return List.of(
        new BriefLine(
            id(),
            BriefPath.of("rules", "copies"),
            new Subject.Copies(allowed, blanket.orbits().any()),
            List.of(limit)));
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or raise copies";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    if (blanket.brief().rules().copies().isEmpty()) {
      return List.of();
    }
    List<Fault> faults = new ArrayList<>();
    int allowed = blanket.brief().rules().copies().getAsInt();
    // an IntBuffer compares and hashes by its content
    Map<IntBuffer, List<Integer>> groups = new LinkedHashMap<>();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      int[] yarns = sequences.of(piece);
      if (blanket.orbits().leads(piece)
          && Arrays.stream(yarns).noneMatch(yarn -> yarn == Sequences.OPEN)) {
        groups.computeIfAbsent(IntBuffer.wrap(yarns), y -> new ArrayList<>()).add(piece);
      }
    }
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    groups.forEach(
        (yarns, pieces) -> {
          boolean facts =
              pieces.stream().allMatch(p -> laid.worked(p) || blanket.orbits().worked(p) >= 0);
          if (pieces.size() > allowed && !facts) {
            faults.add(fault(yarns.array(), pieces, allowed));
          }
        });
    return faults;
  }

  private Fault fault(int[] yarns, List<Integer> pieces, int allowed) {
    List<Integer> sequence = Arrays.stream(yarns).boxed().toList();
    return new Fault(
        id(),
        pieces,
        List.of(),
        sequence.stream().distinct().toList(),
        new Fault.Shared(sequence, allowed));
  }
}
