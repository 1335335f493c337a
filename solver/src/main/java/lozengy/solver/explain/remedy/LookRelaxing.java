package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.ReadyCount;
import lozengy.model.brief.Look;
import lozengy.model.brief.Look.Count;
import lozengy.model.brief.Look.Pair;
import lozengy.model.brief.Look.Zone;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.BriefLine;
import lozengy.model.input.BriefPath;

/**
 * Gives up a symmetry, a zone, a pair of yarns to be kept apart, or the borders of the look, and
 * asks for less in its counts.
 */
final class LookRelaxing implements Relaxing {

  private static final int ZONE_UPSET = 4;
  private static final int APART_UPSET = 3;
  private static final int COUNT_UPSET = 1;
  private static final int FREE_COUNT_UPSET = 5;
  private static final int BORDERS_UPSET = 8;
  private static final int SYMMETRY_UPSET = 8;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    Look look = blanket.brief().look();
    int index = Relaxing.index(line);
    if (line.path().equals(BriefPath.of("look", "symmetry"))) {
      return drop(
          line,
          new Relaxation.DropSymmetry(),
          SYMMETRY_UPSET,
          old -> old.withSymmetry(Symmetry.NONE));
    }
    if (line.path().equals(BriefPath.of("look", "borders"))) {
      return drop(line, new Relaxation.FreeBorders(), BORDERS_UPSET, Look::withBorders);
    }
    if (line.path().inItem("look", "zones")) {
      Zone zone = look.zones().get(index);
      return drop(
          line,
          new Relaxation.DropZone(List.copyOf(zone.only())),
          ZONE_UPSET,
          old -> old.withZones(without(old.zones(), zone)));
    }
    if (line.path().inItem("look", "apart")) {
      Pair pair = look.apart().get(index);
      return drop(
          line,
          new Relaxation.LetMeet(pair.first(), pair.second()),
          APART_UPSET,
          old -> old.withApart(without(old.apart(), pair)));
    }
    if (line.path().inItem("look", "counts")) {
      BriefPath count = BriefPath.of("look", "counts").item(index);
      List<Move> rungs = counts(blanket, index, line.path().equals(count.field("at-least")));
      return rungs.isEmpty() ? List.of() : List.of(new Ladder(rungs));
    }
    return List.of();
  }

  /** One piece less, or one more, and so on until nothing is asked. */
  private static List<Move> counts(Blanket blanket, int index, boolean least) {
    ReadyCount count = ReadyCount.of(blanket).get(index);
    String field = least ? "at-least" : "at-most";
    int asked = least ? count.asked().atLeast() : count.asked().atMost().orElseThrow();
    int end = least ? 0 : count.pieces().length;
    boolean alone = least ? count.asked().atMost().isEmpty() : count.asked().atLeast() == 0;
    BriefPath whole = BriefPath.of("look", "counts").item(index);
    List<Move> rungs = new ArrayList<>();
    for (int number = asked; number != end; ) {
      number += least ? -1 : 1;
      boolean none = number == end;
      OptionalInt wanted = none ? OptionalInt.empty() : OptionalInt.of(number);
      Relaxation change =
          least
              ? new Relaxation.AskForFewer(count.asked(), wanted)
              : new Relaxation.AllowMore(count.asked(), wanted);
      int value = number;
      rungs.add(
          new Move(
              new Remedy.Step(
                  change,
                  none && alone ? whole : whole.field(field),
                  none ? Optional.empty() : Optional.of(Integer.toString(value))),
              Math.min(FREE_COUNT_UPSET, COUNT_UPSET + Math.abs(value - asked)),
              brief -> brief.withLook(counted(brief.look(), index, least, value, none))));
    }
    return rungs;
  }

  private static Look counted(Look old, int index, boolean least, int value, boolean none) {
    Count count = old.counts().get(index);
    List<Count> counts = new ArrayList<>(old.counts());
    counts.set(
        index,
        least
            ? count.with(value, count.atMost())
            : count.with(count.atLeast(), none ? OptionalInt.empty() : OptionalInt.of(value)));
    return old.withCounts(counts);
  }

  private static List<Ladder> drop(
      BriefLine line, Relaxation what, int upset, UnaryOperator<Look> change) {
    Remedy.Step step = new Remedy.Step(what, line.path(), Optional.empty());
    return List.of(
        Ladder.of(new Move(step, upset, brief -> brief.withLook(change.apply(brief.look())))));
  }

  private static <T> List<T> without(List<T> all, T one) {
    List<T> left = new ArrayList<>(all);
    left.remove(one);
    return left;
  }
}
