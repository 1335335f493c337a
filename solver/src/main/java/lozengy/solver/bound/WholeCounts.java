package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.PieceKind;
import lozengy.model.score.Targets;

/**
 * How unbalanced a layer must be because pieces are whole.
 *
 * <p>A yarn takes at most its usable stock. Whole numbers n(c, k) of pieces of each kind k that
 * show yarn c in the layer must stay within that, and every piece of kind k shows one yarn. Where
 * no such numbers exceed the targets by at most D in all (the sum over yarns of max(0, n - t)),
 * every valid arrangement exceeds them by D + 1 or more. What yarns take elsewhere, beyond what is
 * certain, only leaves less.
 *
 * <p>Whether there are such numbers is settled by dynamic programming over the yarns: after each,
 * the pieces of each kind that are taken and what targets have been exceeded by. A yarn may fall
 * short of its target by no more than all exceed theirs, so for small D there is little to go
 * through.
 */
final class WholeCounts {

  private static final int KINDS = PieceKind.values().length;

  /** Most steps of one answer; a larger D is not asked for where they might not suffice. */
  private static final long MOST_STEPS = 5_000_000;

  /** A yarn's whole numbers: what it exceeds its target by, and the pieces of minor kinds. */
  private record Choice(int change, int second, int third) {}

  private final Blanket blanket;
  private final int layer;
  private final int[] pieces = new int[KINDS];
  private final int[] kinds;
  private final List<Integer> yarns = new ArrayList<>();
  private final int[] fewestHalves = new int[KINDS];
  private final int[][] least;
  private final int[][] most;
  private final int[] targets;
  private final int spare;

  WholeCounts(Blanket blanket, Targets targets, int layer) {
    this.blanket = blanket;
    this.layer = layer;
    this.targets = targets.counts()[layer];
    this.least = new int[blanket.yarnCount()][KINDS];
    this.most = new int[blanket.yarnCount()][KINDS];
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      int round = blanket.roundCount(piece) - 1 - layer;
      if (round >= 0) {
        int kind = blanket.kind(piece).ordinal();
        int locked = blanket.locked(piece, round);
        int halves = blanket.borderSeams().halves(piece);
        fewestHalves[kind] = pieces[kind] == 0 ? halves : Math.min(halves, fewestHalves[kind]);
        pieces[kind]++;
        for (int yarn = 0; yarn < most.length; yarn++) {
          boolean may =
              locked == Sequences.OPEN
                  ? blanket.domains().mayShow(piece, round, yarn)
                  : locked == yarn;
          most[yarn][kind] += may ? 1 : 0;
          least[yarn][kind] += locked == yarn ? 1 : 0;
        }
      }
    }
    int wanted = 0;
    for (int yarn = 0; yarn < most.length; yarn++) {
      if (Arrays.stream(most[yarn]).sum() > 0) {
        yarns.add(yarn);
        wanted += this.targets[yarn];
      }
    }
    spare = Arrays.stream(pieces).sum() - wanted;
    int main = 0;
    for (int kind = 1; kind < KINDS; kind++) {
      main = pieces[kind] > pieces[main] ? kind : main;
    }
    kinds = new int[] {main, (main + 1) % KINDS, (main + 2) % KINDS};
  }

  /** The pieces by which the layer's targets are exceeded at least. */
  int over() {
    int most = Math.min(Arrays.stream(pieces).sum(), Byte.MAX_VALUE - 1);
    int over = Math.max(0, spare);
    long steps = 0;
    while (true) {
      List<List<Choice>> choices = choices(over);
      long states =
          (long) (over + 1)
              * (2 * over - spare + 1)
              * (pieces[kinds[1]] + 1)
              * (pieces[kinds[2]] + 1);
      steps += states * choices.stream().mapToLong(List::size).sum();
      if (steps > MOST_STEPS || over >= most || fits(choices, over)) {
        return over;
      }
      over++;
    }
  }

  private List<List<Choice>> choices(int over) {
    List<List<Choice>> choices = new ArrayList<>();
    for (int yarn : yarns) {
      long limit = blanket.yarns().usableMillimetres(yarn) - blanket.fixedUse().millimetres(yarn);
      choices.add(choices(yarn, limit, over));
    }
    return choices;
  }

  private List<Choice> choices(int yarn, long limit, int over) {
    int main = kinds[0];
    int second = kinds[1];
    int third = kinds[2];
    List<Choice> choices = new ArrayList<>();
    for (int change = spare - over; change <= over; change++) {
      for (int two = least[yarn][second]; two <= most[yarn][second]; two++) {
        for (int three = least[yarn][third]; three <= most[yarn][third]; three++) {
          int one = targets[yarn] + change - two - three;
          if (one >= least[yarn][main] && one <= most[yarn][main]) {
            long use =
                one * need(main, yarn) + two * need(second, yarn) + three * need(third, yarn);
            if (use <= limit) {
              choices.add(new Choice(change, two, three));
            }
          }
        }
      }
    }
    return choices;
  }

  private long need(int kind, int yarn) {
    if (pieces[kind] == 0) {
      return 0;
    }
    PieceKind of = PieceKind.values()[kind];
    int rounds = blanket.brief().motifs().get(of).rounds().size();
    long seams = layer == 0 ? fewestHalves[kind] * blanket.borderSeams().halfMillimetres(yarn) : 0;
    return blanket.motifs().needMillimetres(of, rounds - 1 - layer, yarn) + seams;
  }

  /** Whether whole numbers of all yarns exceed the targets by at most so many pieces in all. */
  private boolean fits(List<List<Choice>> choices, int over) {
    int changes = 2 * over - spare + 1;
    int seconds = pieces[kinds[1]] + 1;
    int thirds = pieces[kinds[2]] + 1;
    int size = changes * seconds * thirds;
    int none = (over - spare) * seconds * thirds;
    // by change, second and third: the least by which targets were exceeded, or too much
    byte[] exceeded = new byte[size];
    Arrays.fill(exceeded, Byte.MAX_VALUE);
    exceeded[none] = 0;
    for (List<Choice> own : choices) {
      byte[] after = new byte[size];
      Arrays.fill(after, Byte.MAX_VALUE);
      for (int state = 0; state < size; state++) {
        for (Choice choice : exceeded[state] <= over ? own : List.<Choice>of()) {
          int change = state / thirds / seconds + choice.change();
          int second = state / thirds % seconds + choice.second();
          int third = state % thirds + choice.third();
          int sum = exceeded[state] + Math.max(0, choice.change());
          if (sum <= over
              && change >= 0
              && change < changes
              && second < seconds
              && third < thirds) {
            int to = (change * seconds + second) * thirds + third;
            after[to] = (byte) Math.min(after[to], sum);
          }
        }
      }
      exceeded = after;
    }
    return exceeded[(over * seconds + seconds - 1) * thirds + thirds - 1] <= over;
  }
}
