package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RoundYarns;
import lozengy.solver.constraint.RoundClass;
import lozengy.solver.explain.Finding.Slot;

/** Rounds for which lock, tones and bans leave no yarn. */
final class EmptyRounds implements Argument {

  @Override
  public List<Finding> findings(Asked asked) {
    Blanket blanket = asked.blanket();
    RoundYarns direct = asked.direct();
    List<Finding> findings = new ArrayList<>();
    for (RoundClass rounds : RoundClass.of(blanket)) {
      int round = rounds.round();
      int[] empty = IntStream.of(rounds.pieces()).filter(p -> direct.size(p, round) == 0).toArray();
      boolean toneless =
          IntStream.range(0, blanket.yarnCount())
              .noneMatch(yarn -> blanket.toneAllows(rounds.kind(), round, yarn));
      if (empty.length > 0 && toneless) {
        String where = Words.rounds(List.of(round)) + " of " + Tell.pieces(blanket, boxed(empty));
        findings.add(
            Finding.of(
                "%s must be %s, and no yarn is".formatted(where, tones(blanket, empty[0], round)),
                IntStream.of(empty).mapToObj(piece -> new Slot(piece, round)).toList()));
      } else {
        IntStream.of(empty)
            .forEach(
                piece ->
                    findings.add(
                        Finding.of(
                            reason(blanket, piece, round), List.of(new Slot(piece, round)))));
      }
    }
    return findings;
  }

  @Override
  public int fewestOpen(Blanket blanket, Finding finding) {
    return finding.slots().size();
  }

  private static List<Integer> boxed(int[] pieces) {
    return IntStream.of(pieces).boxed().toList();
  }

  private static String reason(Blanket blanket, int piece, int round) {
    String where = Tell.round(blanket, piece, round);
    int lock = blanket.locked(piece, round);
    boolean planned = blanket.state(piece) == PieceState.PLANNED;
    if (lock != Sequences.OPEN && planned) {
      String yarn = Words.yarn(blanket, lock);
      String breach = "must be " + tones(blanket, piece, round);
      boolean border = round == blanket.roundCount(piece) - 1;
      int given = border ? blanket.look().border(piece) : Sequences.OPEN;
      if (given != Sequences.OPEN && given != lock) {
        breach = "the look gives it " + Words.yarn(blanket, given);
      } else if (blanket.banned(piece, lock)) {
        breach = "that yarn is banned from the piece";
      } else if (!blanket.look().allows(piece, round, blanket.roundCount(piece), lock)) {
        breach = "its zone takes other yarns alone";
      } else if (ruledOut(blanket, piece, round, lock)) {
        breach = "the look lets no such round have it";
      }
      return "%s is locked to %s, but %s".formatted(where, yarn, breach);
    }
    List<Integer> banned =
        IntStream.range(0, blanket.yarnCount())
            .filter(yarn -> blanket.toneAllows(blanket.kind(piece), round, yarn))
            .boxed()
            .toList();
    boolean zoned =
        banned.stream()
            .anyMatch(
                yarn -> !blanket.look().allows(piece, round, blanket.roundCount(piece), yarn));
    boolean counted = banned.stream().anyMatch(yarn -> ruledOut(blanket, piece, round, yarn));
    String outside = zoned ? "kept out by its zones and bans" : "banned from the piece";
    return "%s must be %s, but %s %s"
        .formatted(
            where,
            tones(blanket, piece, round),
            Tell.yarns(blanket, banned) + (banned.size() == 1 ? " is" : " are"),
            counted ? "kept out by the look's counts, or by zones and bans" : outside);
  }

  /** Whether a count of the look lets no piece have a yarn in a round. */
  private static boolean ruledOut(Blanket blanket, int piece, int round, int yarn) {
    return ReadyCount.of(blanket).stream()
        .anyMatch(
            count ->
                count.atMost() == 0
                    && count.yarn() == yarn
                    && IntStream.of(count.pieces()).anyMatch(each -> each == piece)
                    && count.covers(round, blanket.roundCount(piece)));
  }

  private static String tones(Blanket blanket, int piece, int round) {
    return String.join(
        " or ",
        blanket.motif(blanket.kind(piece)).rounds().get(round).tones().stream()
            .sorted()
            .map(tone -> tone.word())
            .toList());
  }
}
