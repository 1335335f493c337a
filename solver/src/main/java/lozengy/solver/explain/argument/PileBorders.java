package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.brief.PieceState;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleId;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.IndependentSets;

/**
 * More pieces of the pile with one border, or with borders that all look alike, than places of
 * which no two share a seam, nor one with a made or joined piece of such a border. Tried for all
 * kinds together and for single ones; the places are bounded by a maximum flow.
 */
final class PileBorders implements Argument {

  @Override
  public List<Finding> findings(Requirements asked) {
    if (!asked.bordersDiffer() || asked.stacks().isEmpty()) {
      return List.of();
    }
    RoundYarns held = asked.held();
    Set<Set<Integer>> tried = new LinkedHashSet<>();
    List<Finding> findings = new ArrayList<>();
    for (Stack stack : asked.stacks()) {
      tried.add(Set.of(stack.border()));
      tried.add(alike(asked, stack.border()));
    }
    Set<Integer> told = new TreeSet<>();
    for (Set<Integer> borders : tried) {
      if (told.containsAll(borders)) {
        continue;
      }
      Optional<Reason> reason = reason(asked, held, borders);
      if (reason.isPresent()) {
        told.addAll(borders);
        findings.add(
            Finding.of(
                reason.get(),
                List.of(),
                RuleId.PILE,
                RuleId.NEIGHBOUR_BORDERS,
                RuleId.LOCKS,
                RuleId.BORDERS));
      }
    }
    return findings;
  }

  /** A yarn and others that the pile shows on borders and that all look alike to each other. */
  private static Set<Integer> alike(Requirements asked, int yarn) {
    Set<Integer> alike = new TreeSet<>(Set.of(yarn));
    for (Stack stack : asked.stacks()) {
      boolean all =
          alike.stream().allMatch(y -> asked.blanket().yarns().sameBorder(y, stack.border()));
      if (asked.contrast() && all) {
        alike.add(stack.border());
      }
    }
    return alike;
  }

  private static Optional<Reason> reason(
      Requirements asked, RoundYarns held, Set<Integer> borders) {
    Blanket blanket = asked.blanket();
    Map<PieceKind, Integer> all = new EnumMap<>(PieceKind.class);
    for (Stack stack : asked.stacks()) {
      if (borders.contains(stack.border())) {
        all.merge(stack.kind(), stack.count(), Integer::sum);
      }
    }
    List<Set<PieceKind>> choices = new ArrayList<>(List.of(all.keySet()));
    all.keySet().forEach(kind -> choices.add(Set.of(kind)));
    Pairs seams = blanket.layout().seams().without(blanket::bordersMayMatch);
    boolean[] shows = shows(blanket, held, borders);
    boolean[] open = open(asked, held, seams, borders, shows);
    for (Set<PieceKind> kinds : choices) {
      Map<PieceKind, Integer> counts = new EnumMap<>(all);
      counts.keySet().retainAll(kinds);
      int pieces = counts.values().stream().mapToInt(Integer::intValue).sum();
      long[] weights = new long[blanket.pieceCount()];
      for (int piece = 0; piece < weights.length; piece++) {
        weights[piece] = open[piece] && kinds.contains(blanket.kind(piece)) ? 1 : 0;
      }
      long places = IndependentSets.heaviest(seams, weights);
      if (pieces > places) {
        return Optional.of(
            new PileReason.PileBordersMeet(counts, List.copyOf(borders), (int) places, any(shows)));
      }
    }
    return Optional.empty();
  }

  /** Places that locks leave to such a border and that lie beside no worked piece with one. */
  private static boolean[] open(
      Requirements asked, RoundYarns held, Pairs seams, Set<Integer> borders, boolean[] shows) {
    boolean[] open = new boolean[shows.length];
    List<Stack> stacks = asked.stacks().stream().filter(s -> borders.contains(s.border())).toList();
    for (int piece = 0; piece < open.length; piece++) {
      int place = piece;
      open[piece] = stacks.stream().anyMatch(stack -> PileLocks.fits(asked, held, stack, place));
    }
    for (int seam = 0; seam < seams.size(); seam++) {
      open[seams.first()[seam]] &= !shows[seams.second()[seam]];
      open[seams.second()[seam]] &= !shows[seams.first()[seam]];
    }
    return open;
  }

  /** The pieces that have their place and such a border. */
  private static boolean[] shows(Blanket blanket, RoundYarns held, Set<Integer> borders) {
    boolean[] shows = new boolean[blanket.pieceCount()];
    for (int piece = 0; piece < shows.length; piece++) {
      int border = held.only(piece, blanket.roundCount(piece) - 1);
      shows[piece] = blanket.state(piece) != PieceState.PLANNED && borders.contains(border);
    }
    return shows;
  }

  private static boolean any(boolean[] values) {
    return IntStream.range(0, values.length).anyMatch(i -> values[i]);
  }
}
