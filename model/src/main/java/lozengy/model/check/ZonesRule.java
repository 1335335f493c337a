package lozengy.model.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.Look;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.Place;

/**
 * Rounds in a zone take its yarns alone. Finds no fault with a made or joined piece, nor with one
 * from the pile. O(rounds of the pieces in the zones).
 */
public final class ZonesRule implements Rule {

  @Override
  public RuleId id() {
    return RuleId.ZONES;
  }

  /** One line for each zone. */
  @Override
  public List<BriefLine> lines(Blanket blanket) {
    List<BriefLine> lines = new ArrayList<>();
    List<Look.Zone> zones = blanket.brief().look().zones();
    for (int i = 0; i < zones.size(); i++) {
      Look.Zone zone = zones.get(i);
      int[] rounds = PlannedRounds.of(blanket, zone.where().at(), zone.where()::covers);
      BitSet only = Yarns.of(blanket, yarn -> zone.only().contains(blanket.yarn(yarn).code()));
      if (rounds.length > 0 && only.cardinality() < blanket.yarnCount()) {
        Ground may = new Ground.May(rounds, only, false);
        lines.add(
            new BriefLine(
                id(), BriefPath.of("look", "zones").item(i), new Subject.Zone(zone), List.of(may)));
      }
    }
    return lines;
  }

  @Override
  public String insteadOfLock() {
    return HOLD_ANOTHER + ", or change the zone";
  }

  @Override
  public List<Fault> faults(Blanket blanket, Sequences sequences) {
    Shape.require(blanket, sequences);
    List<Fault> faults = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (Look.Zone zone : blanket.brief().look().zones()) {
      for (Place place : blanket.layout().select(zone.where().at())) {
        int piece = place.index();
        int rounds = sequences.rounds(piece);
        for (int round = 0; round < rounds; round++) {
          int yarn = sequences.yarn(piece, round);
          boolean judged =
              yarn != Sequences.OPEN
                  && laid.toWork(piece, round)
                  && zone.where().covers(round, rounds);
          if (judged && !zone.only().contains(blanket.yarn(yarn).code())) {
            faults.add(
                new Fault(
                    id(),
                    List.of(piece),
                    List.of(round),
                    List.of(yarn),
                    new Fault.Zoned(List.copyOf(zone.only()))));
          }
        }
      }
    }
    return faults;
  }
}
