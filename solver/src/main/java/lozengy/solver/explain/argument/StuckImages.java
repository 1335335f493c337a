package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;
import lozengy.model.check.Subject.SeamPart;
import lozengy.model.check.YarnPairs;
import lozengy.solver.explain.argument.Finding.Slot;

/**
 * What a symmetry cannot do: two pieces on a seam that are each other's images would have the same
 * border, or centre; and images that share no yarn for a round.
 */
final class StuckImages implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    if (!blanket.orbits().any() || !asked.rules().contains(RuleId.SYMMETRY)) {
      return List.of();
    }
    Symmetry symmetry = blanket.brief().look().symmetry();
    List<Finding> findings = new ArrayList<>();
    joined(asked, symmetry, findings);
    for (int lead : blanket.orbits().leads()) {
      int[] members = blanket.orbits().members(lead);
      for (int round = 0; members.length > 1 && round < asked.direct().rounds(lead); round++) {
        if (shareNone(asked.direct(), members, round)) {
          findings.add(shareNone(symmetry, members, round));
        }
      }
    }
    return findings;
  }

  /** Images whose rounds may not be the same, as they would be. */
  private static void joined(Requirements asked, Symmetry symmetry, List<Finding> findings) {
    Blanket blanket = asked.blanket();
    RoundIndex index = blanket.index();
    ClashGraph clashes = asked.clashes();
    for (int number = 0; number < index.count(); number++) {
      int piece = index.piece(number);
      int lead = blanket.orbits().lead(piece);
      boolean planned = blanket.state(lead) == PieceState.PLANNED;
      for (int entry = clashes.from(number); planned && entry < clashes.to(number); entry++) {
        int other = clashes.other(entry);
        boolean images =
            other > number
                && index.piece(other) != piece
                && index.round(other) == index.round(number)
                && blanket.orbits().lead(index.piece(other)) == lead;
        YarnPairs barred = clashes.barred(entry);
        if (images && IntStream.range(0, barred.yarns()).allMatch(y -> barred.bars(y, y))) {
          boolean border = number == index.border(piece);
          SeamPart part = border ? SeamPart.BORDERS : SeamPart.CENTRES;
          List<Integer> pieces = List.of(piece, index.piece(other));
          RuleId[] rules =
              Stream.concat(Stream.of(RuleId.SYMMETRY), Stream.of(asked.clashRules(false)))
                  .toArray(RuleId[]::new);
          findings.add(
              Finding.of(new SeamReason.ImagesJoined(pieces, symmetry, part), List.of(), rules));
        }
      }
    }
  }

  private static Finding shareNone(Symmetry symmetry, int[] members, int round) {
    List<Integer> pieces = IntStream.of(members).boxed().toList();
    List<Slot> slots = pieces.stream().map(piece -> new Slot(piece, round)).toList();
    return Finding.of(
        new RoundReason.ImagesShareNone(pieces, round, symmetry), slots, RuleId.SYMMETRY);
  }

  /** Whether each may take some yarn, but all together none. */
  private static boolean shareNone(RoundYarns direct, int[] members, int round) {
    return IntStream.of(members).allMatch(piece -> direct.size(piece, round) > 0)
        && IntStream.range(0, direct.yarns())
            .noneMatch(
                yarn -> IntStream.of(members).allMatch(piece -> direct.allows(piece, round, yarn)));
  }
}
