package lozengy.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.RoundIndex;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Ground;
import lozengy.model.check.RoundPairs;

/** Judges complete sequences by what lines of a brief come down to, each kind as it is defined. */
public final class GroundJudge {

  private final Blanket blanket;
  private final Sequences sequences;
  private final List<BriefLine> lines;
  private final RoundIndex index;
  private final PilePlacement laid;

  private GroundJudge(Blanket blanket, Sequences sequences, List<BriefLine> lines) {
    this.blanket = blanket;
    this.sequences = sequences;
    this.lines = lines;
    this.index = blanket.index();
    this.laid = PilePlacement.of(blanket, sequences);
  }

  /** Whether all that the lines come down to holds. */
  public static boolean holds(Blanket blanket, Sequences sequences, List<BriefLine> lines) {
    GroundJudge judge = new GroundJudge(blanket, sequences, lines);
    return judge.all(Ground.May.class).stream().allMatch(judge::may)
        && judge.all(Ground.Clash.class).stream().allMatch(judge::clash)
        && judge.all(Ground.Same.class).stream().allMatch(judge::same)
        && judge.all(Ground.Count.class).stream().allMatch(judge::count)
        && judge.all(Ground.Stock.class).stream().allMatch(judge::stock)
        && judge.all(Ground.Copies.class).stream().allMatch(judge::copies)
        && judge.all(Ground.Lay.class).stream()
            .allMatch(lay -> judge.laid.missing(lay.stack()) == 0);
  }

  private <G extends Ground> List<G> all(Class<G> kind) {
    return lines.stream().flatMap(line -> line.grounds(kind)).toList();
  }

  private int yarn(int number) {
    return sequences.yarn(index.piece(number), index.round(number));
  }

  private boolean may(Ground.May may) {
    return IntStream.of(may.rounds())
        .filter(number -> may.ofPlace() || !laid.holds(index.piece(number)))
        .allMatch(number -> may.yarns().get(yarn(number)));
  }

  private boolean clash(Ground.Clash clash) {
    RoundPairs pairs = clash.pairs();
    for (int i = 0; i < pairs.size(); i++) {
      int first = pairs.first()[i];
      int second = pairs.second()[i];
      boolean fact = index.piece(first) == index.piece(second) && laid.holds(index.piece(first));
      if (!fact && clash.barred().bars(yarn(first), yarn(second))) {
        return false;
      }
    }
    return true;
  }

  private boolean same(Ground.Same same) {
    return IntStream.range(0, same.pairs().size())
        .allMatch(i -> yarn(same.pairs().first()[i]) == yarn(same.pairs().second()[i]));
  }

  private boolean count(Ground.Count count) {
    long showing =
        Arrays.stream(count.rounds())
            .filter(rounds -> IntStream.of(rounds).anyMatch(n -> yarn(n) == count.yarn()))
            .count();
    return showing >= count.least() && showing <= count.most();
  }

  private boolean stock(Ground.Stock stock) {
    long left = stock.millimetres();
    for (Ground.Taken taken : all(Ground.Taken.class)) {
      left -= taken.yarn() == stock.yarn() ? taken.millimetres() : 0;
    }
    boolean seams = !all(Ground.Seams.class).isEmpty();
    for (int number = 0; number < index.count(); number++) {
      if (yarn(number) == stock.yarn()) {
        int piece = index.piece(number);
        int round = index.round(number);
        left -=
            seams
                ? blanket.takenMillimetres(piece, round, stock.yarn())
                : blanket.motifs().needMillimetres(blanket.kind(piece), round, stock.yarn());
      }
    }
    return left >= 0;
  }

  /** Whether all pieces are worked, or an image of them is. */
  private boolean facts(List<Integer> pieces) {
    return pieces.stream().allMatch(p -> laid.worked(p) || blanket.orbits().worked(p) >= 0);
  }

  private boolean copies(Ground.Copies copies) {
    Map<List<Integer>, List<Integer>> sharing = new HashMap<>();
    for (int piece : copies.pieces()) {
      List<Integer> sequence =
          Arrays.stream(sequences.of(piece)).boxed().collect(Collectors.toList());
      sharing.computeIfAbsent(sequence, s -> new ArrayList<>()).add(piece);
    }
    return sharing.values().stream()
        .allMatch(pieces -> pieces.size() <= copies.most() || facts(pieces));
  }
}
