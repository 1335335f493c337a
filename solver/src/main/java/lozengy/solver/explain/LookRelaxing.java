package lozengy.solver.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;
import lozengy.model.brief.Look.Pair;
import lozengy.model.brief.Look.Zone;
import lozengy.model.brief.Symmetry;
import lozengy.solver.constraint.BriefLine;

/** Gives up a symmetry, a zone, a pair of yarns to be kept apart, or the borders of the look. */
final class LookRelaxing implements Relaxing {

  private static final int ZONE_UPSET = 4;
  private static final int APART_UPSET = 3;
  private static final int BORDERS_UPSET = 8;
  private static final int SYMMETRY_UPSET = 8;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    Look look = blanket.brief().look();
    int index = Relaxing.index(line);
    if (line.path().equals("look.symmetry")) {
      return drop(line, "give up the symmetry", SYMMETRY_UPSET, LookRelaxing::free);
    }
    if (line.path().equals("look.borders")) {
      return drop(
          line,
          "leave the borders free",
          BORDERS_UPSET,
          old -> with(old, List.of(), old.zones(), old.apart()));
    }
    if (line.path().startsWith("look.zones[")) {
      Zone zone = look.zones().get(index);
      return drop(
          line,
          "give up the zone of " + String.join(", ", zone.only()),
          ZONE_UPSET,
          old -> with(old, old.borders(), without(old.zones(), zone), old.apart()));
    }
    if (line.path().startsWith("look.apart[")) {
      Pair pair = look.apart().get(index);
      return drop(
          line,
          "let " + pair.first() + " and " + pair.second() + " meet",
          APART_UPSET,
          old -> with(old, old.borders(), old.zones(), without(old.apart(), pair)));
    }
    return List.of();
  }

  private static List<Ladder> drop(
      BriefLine line, String words, int upset, UnaryOperator<Look> change) {
    Remedy.Step step = new Remedy.Step(words, line.path(), Optional.empty(), List.of());
    return List.of(
        Ladder.of(new Move(step, upset, brief -> brief.withLook(change.apply(brief.look())))));
  }

  private static Look with(Look old, List<String> borders, List<Zone> zones, List<Pair> apart) {
    return new Look(old.symmetry(), old.contrast(), borders, zones, apart, old.fade());
  }

  private static Look free(Look old) {
    return new Look(
        Symmetry.NONE, old.contrast(), old.borders(), old.zones(), old.apart(), old.fade());
  }

  private static <T> List<T> without(List<T> all, T one) {
    List<T> left = new ArrayList<>(all);
    left.remove(one);
    return left;
  }
}
