package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Motif;
import lozengy.model.brief.Round;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleId;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;

/** Allows a motif's round one tone more. */
final class ToneRelaxing implements Relaxing {

  private static final int UPSET = 5;

  @Override
  public List<Ladder> ladders(Blanket blanket, BriefLine line) {
    if (line.rule() != RuleId.TONES) {
      return List.of();
    }
    int round = Relaxing.index(line);
    List<Ladder> ladders = new ArrayList<>();
    for (PieceKind kind : blanket.brief().motifs().keySet()) {
      if (line.path().within(BriefPath.of("motifs", kind.word()))) {
        Set<Tone> allowed = blanket.motif(kind).rounds().get(round).tones();
        for (Tone tone : Tone.values()) {
          boolean any =
              IntStream.range(0, blanket.yarnCount())
                  .anyMatch(y -> blanket.yarns().tone(y) == tone);
          if (!allowed.contains(tone) && any) {
            ladders.add(Ladder.of(move(kind, round, allowed, tone, line.path())));
          }
        }
      }
    }
    return ladders;
  }

  private static Move move(PieceKind kind, int round, Set<Tone> old, Tone tone, BriefPath path) {
    Set<Tone> tones = EnumSet.copyOf(old);
    tones.add(tone);
    String value = "[" + String.join(", ", tones.stream().map(Tone::word).toList()) + "]";
    return new Move(
        new Remedy.Step(new Relaxation.AllowTone(kind, round, tone), path, Optional.of(value)),
        UPSET,
        brief -> allowed(brief, kind, round, tone));
  }

  private static Brief allowed(Brief brief, PieceKind kind, int round, Tone tone) {
    Motif motif = brief.motifs().get(kind);
    List<Round> rounds = new ArrayList<>(motif.rounds());
    Set<Tone> tones = EnumSet.copyOf(rounds.get(round).tones());
    tones.add(tone);
    rounds.set(round, rounds.get(round).withTones(tones));
    Map<PieceKind, Motif> motifs = new EnumMap<>(brief.motifs());
    motifs.put(kind, new Motif(motif.edgeCm(), rounds));
    return brief.withMotifs(motifs);
  }
}
