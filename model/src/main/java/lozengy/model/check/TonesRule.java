package lozengy.model.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Laid;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.blanket.Words;
import lozengy.model.colour.Tone;

/**
 * Rounds take yarns of the motif's tones. Finds no fault with a made or joined piece, nor with one
 * from the pile. O(pieces x rounds).
 */
public final class TonesRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.TONES;
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    Laid laid = Laid.of(blanket, sequences);
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      if (!laid.toWork(piece)) {
        continue;
      }
      for (int round = 0; round < sequences.rounds(piece); round++) {
        int yarn = sequences.yarn(piece, round);
        if (yarn != Sequences.OPEN && !blanket.toneAllows(blanket.kind(piece), round, yarn)) {
          faults.add(fault(blanket, piece, round, yarn));
        }
      }
    }
    return faults;
  }

  private Fault fault(Blanket blanket, int piece, int round, int yarn) {
    String asked =
        blanket.motif(blanket.kind(piece)).rounds().get(round).tones().stream()
            .sorted()
            .map(Tone::word)
            .collect(Collectors.joining(" or "));
    String words =
        "%s: %s has %s, which is %s, but takes %s"
            .formatted(
                Words.piece(blanket, piece),
                Words.round(blanket, piece, round),
                Words.yarn(blanket, yarn),
                blanket.tone(yarn).word(),
                asked);
    return new Fault(id(), List.of(piece), List.of(yarn), words);
  }
}
