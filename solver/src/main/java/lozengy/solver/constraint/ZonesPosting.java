package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Place;

/** Rounds of planned pieces in a zone take its yarns alone: one line for each zone. */
final class ZonesPosting implements RulePosting {

  @Override
  public RuleId rule() {
    return RuleId.ZONES;
  }

  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<Look.Zone> zones = blanket.brief().look().zones();
    for (int i = 0; i < zones.size(); i++) {
      Look.Zone zone = zones.get(i);
      int[] pieces =
          blanket.layout().select(zone.where().at()).stream()
              .mapToInt(Place::index)
              .filter(piece -> blanket.state(piece) == PieceState.PLANNED)
              .toArray();
      int[] barred =
          IntStream.range(0, blanket.yarnCount())
              .filter(yarn -> !zone.only().contains(blanket.yarn(yarn).code()))
              .toArray();
      if (pieces.length > 0 && barred.length > 0) {
        BriefPath path = BriefPath.of("look", "zones").item(i);
        lines.add(
            new BriefLine(rule(), path, new Subject.Zone(zone), new Only(zone, pieces, barred)));
      }
    }
    return lines;
  }

  private record Only(Look.Zone zone, int[] pieces, int[] barred) implements BriefLine.Content {
    @Override
    public void restrict(Domains domains) {
      for (int piece : pieces) {
        for (int round = 0; round < domains.rounds(piece); round++) {
          if (zone.where().covers(round, domains.rounds(piece))) {
            for (int yarn : barred) {
              domains.remove(piece, round, yarn);
            }
          }
        }
      }
    }
  }
}
