package lozengy.solver.explain.argument;

import java.util.List;

/** The arguments that look at single rounds, pieces, seams and yarns. */
public final class Arguments {

  /**
   * In turns: all of a turn are told, for the later of it may be a consequence; of a later turn
   * only where the earlier found nothing.
   */
  public static final List<List<Argument>> TURNS =
      List.of(
          List.of(new KeptBack()),
          List.of(
              new EmptyRounds(),
              new PileLocks(),
              new PileBorders(),
              new OverdrawnByPile(),
              new StuckPieces(),
              new StuckSeams(),
              new StuckImages(),
              new OverdrawnYarns(),
              new LongRounds(),
              new FewSequences(),
              new StuckCounts()));

  private Arguments() {}
}
