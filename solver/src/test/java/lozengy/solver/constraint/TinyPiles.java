package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Place;
import lozengy.model.reading.BriefJudge;

/** Random blankets with a pile, so small that brute force settles them. */
public final class TinyPiles {

  private static final long FIRST_SEED = 1_000_000;

  private TinyPiles() {}

  /**
   * The blanket of a seed: one of {@link TinyBlankets} with finished pieces, of any yarns whatever
   * the rules say, for some or all of its planned places.
   */
  public static Blanket of(long seed) {
    SplittableRandom random = new SplittableRandom(FIRST_SEED + seed);
    for (long tries = 0; ; tries++) {
      Blanket bare = TinyBlankets.of(FIRST_SEED + 1000 * seed + tries);
      Brief brief = bare.brief().withPile(pile(bare, random));
      if (!brief.pile().isEmpty() && BriefJudge.mistakes(brief).isEmpty()) {
        return Blanket.of(brief);
      }
    }
  }

  /**
   * The blanket of a seed, with a look as well: zones for groups and single pieces, now and then
   * given borders, pairs apart or counts, and more bans. No symmetry, which no pile goes with.
   */
  public static Blanket looked(long seed) {
    SplittableRandom random = new SplittableRandom(2 * FIRST_SEED + seed);
    for (long tries = 0; ; tries++) {
      Brief plain = of(2 * FIRST_SEED + 1000 * seed + tries).brief();
      Brief brief = plain.withLook(look(plain, random)).withPieces(bans(plain, random));
      brief = brief.withRules(brief.rules().withCentresDiffer(random.nextInt(4) == 0));
      if (BriefJudge.mistakes(brief).isEmpty()) {
        return Blanket.of(brief);
      }
    }
  }

  private static Look look(Brief brief, SplittableRandom random) {
    List<Look.Zone> zones = new ArrayList<>();
    for (int i = random.nextInt(4) == 0 ? 3 : 1; i > 0; i--) {
      zones.add(new Look.Zone(where(brief, random), only(brief, random)));
    }
    Look look = Look.NONE.withZones(zones);
    if (random.nextInt(5) == 0) {
      look = look.withBorders(code(brief, random));
    }
    if (random.nextInt(5) == 0) {
      Where where = where(brief, random);
      int most = random.nextInt(3);
      look =
          look.withCounts(
              List.of(new Look.Count(code(brief, random), where, 0, OptionalInt.of(most))));
    }
    String first = code(brief, random);
    String second = code(brief, random);
    boolean apart = !first.equals(second) && random.nextInt(5) == 0;
    return apart
        ? look.withApart(
            List.of(new Look.Pair(first, second, Look.Meeting.values()[random.nextInt(3)])))
        : look;
  }

  private static Where where(Brief brief, SplittableRandom random) {
    List<Place> places = Layout.of(brief.layout()).places();
    String piece = places.get(random.nextInt(places.size())).name();
    List<List<Integer>> rounds = List.of(List.of(), List.of(Where.BORDER), List.of(1));
    String at = random.nextInt(4) == 0 ? "all" : piece;
    return new Where(List.of(at), rounds.get(random.nextInt(rounds.size())));
  }

  private static List<String> only(Brief brief, SplittableRandom random) {
    List<String> only = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      if (random.nextBoolean()) {
        only.add(yarn.code());
      }
    }
    return only.isEmpty() ? List.of(code(brief, random)) : only;
  }

  private static List<PieceNote> bans(Brief brief, SplittableRandom random) {
    List<PieceNote> notes = new ArrayList<>(brief.pieces());
    for (Place place : Layout.of(brief.layout()).places()) {
      if (random.nextInt(8) == 0) {
        List<String> at = List.of(place.name());
        Set<String> not = Set.of(code(brief, random));
        notes.add(new PieceNote(at, List.of(), PieceState.PLANNED, not));
      }
    }
    return notes;
  }

  private static String code(Brief brief, SplittableRandom random) {
    return brief.yarns().get(random.nextInt(brief.yarns().size())).code();
  }

  private static List<PileEntry> pile(Blanket blanket, SplittableRandom random) {
    List<PileEntry> pile = new ArrayList<>();
    boolean all = random.nextInt(4) == 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      boolean alike = !pile.isEmpty() && random.nextInt(3) == 0;
      if (blanket.roundsWorked(piece) > 0 || !all && random.nextInt(2) == 0) {
        continue;
      }
      PileEntry last = alike ? pile.get(pile.size() - 1) : null;
      String[] codes = new String[blanket.roundCount(piece)];
      Arrays.setAll(codes, round -> blanket.yarn(random.nextInt(blanket.yarnCount())).code());
      pile.add(
          last != null && last.kind() == blanket.kind(piece)
              ? last
              : new PileEntry(blanket.kind(piece), List.of(codes), 1, Set.of()));
    }
    return pile;
  }
}
