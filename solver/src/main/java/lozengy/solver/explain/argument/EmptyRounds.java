package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.RoundYarns;
import lozengy.model.colour.Tone;
import lozengy.solver.constraint.RoundClass;
import lozengy.solver.explain.argument.Finding.Slot;
import lozengy.solver.explain.argument.RoundReason.Bar;

/** Rounds for which lock, tones and bans leave no yarn. */
final class EmptyRounds implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    Blanket blanket = asked.blanket();
    RoundYarns direct = asked.direct();
    List<Finding> findings = new ArrayList<>();
    for (RoundClass rounds : RoundClass.of(blanket)) {
      int round = rounds.round();
      int[] empty = IntStream.of(rounds.pieces()).filter(p -> direct.size(p, round) == 0).toArray();
      boolean toneless =
          IntStream.range(0, blanket.yarnCount())
              .noneMatch(yarn -> blanket.motifs().toneAllows(rounds.kind(), round, yarn));
      if (empty.length > 0 && toneless) {
        List<Integer> pieces = IntStream.of(empty).boxed().toList();
        findings.add(
            Finding.of(
                new RoundReason.NoSuchTone(pieces, round, tones(blanket, empty[0], round)),
                pieces.stream().map(piece -> new Slot(piece, round)).toList()));
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

  private static Reason reason(Blanket blanket, int piece, int round) {
    Set<Tone> tones = tones(blanket, piece, round);
    int rounds = blanket.roundCount(piece);
    int lock = blanket.locked(piece, round);
    if (lock != Sequences.OPEN && !blanket.worked(piece, round)) {
      int given = round == rounds - 1 ? blanket.look().border(piece) : Sequences.OPEN;
      Bar bar = Bar.TONE;
      if (given != Sequences.OPEN && given != lock) {
        bar = Bar.LOOK_BORDER;
      } else if (blanket.banned(piece, lock)) {
        bar = Bar.BAN;
      } else if (!blanket.look().allows(piece, round, rounds, lock)) {
        bar = Bar.ZONE;
      } else if (ruledOut(blanket, piece, round, lock)) {
        bar = Bar.COUNT;
      }
      OptionalInt other = bar == Bar.LOOK_BORDER ? OptionalInt.of(given) : OptionalInt.empty();
      return new RoundReason.LockBarred(piece, round, lock, bar, tones, other);
    }
    List<Integer> barred =
        IntStream.range(0, blanket.yarnCount())
            .filter(yarn -> blanket.motifs().toneAllows(blanket.kind(piece), round, yarn))
            .boxed()
            .toList();
    boolean zoned =
        barred.stream().anyMatch(yarn -> !blanket.look().allows(piece, round, rounds, yarn));
    boolean counted = barred.stream().anyMatch(yarn -> ruledOut(blanket, piece, round, yarn));
    Bar bar = counted ? Bar.COUNT : zoned ? Bar.ZONE : Bar.BAN;
    return new RoundReason.NothingLeft(piece, round, tones, barred, bar);
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

  private static Set<Tone> tones(Blanket blanket, int piece, int round) {
    return blanket.motif(blanket.kind(piece)).rounds().get(round).tones();
  }
}
