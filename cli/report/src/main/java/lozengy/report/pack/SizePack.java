package lozengy.report.pack;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.solver.pack.Packing;
import lozengy.solver.pack.Packing.Packed;

/**
 * The pack of one size.
 *
 * @param name what the size is called
 * @param blanket the brief in that size
 * @param packing how the search for its pack has ended
 */
public record SizePack(String name, Blanket blanket, Packing packing) {

  /** The pack, where one was found. */
  public Optional<Packed> packed() {
    return packing instanceof Packed packed ? Optional.of(packed) : Optional.empty();
  }
}
