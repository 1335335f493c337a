package lozengy.solver.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.PieceKind;

/**
 * Pieces with the same choice of yarns, counted together; pieces without a choice apart.
 *
 * @param groups pieces that may still choose
 * @param fixed pieces whose yarns all are certain, by index
 */
record PieceGroups(List<Group> groups, List<Integer> fixed) {

  /** Most groups that are kept apart; further ones are judged without their locks and bans. */
  private static final int MOST_GROUPS = 32;

  /**
   * Pieces with the same choice.
   *
   * @param kind what they are
   * @param piece one of them; all take as much of a yarn
   * @param count how many
   * @param allowed by round and yarn, whether a round may take it
   * @param neighboursDiffer whether rounds side by side must differ
   * @param fewestSeams seams of the piece with the fewest
   * @param mostSeams seams of the piece with the most
   */
  record Group(
      PieceKind kind,
      int piece,
      int count,
      boolean[][] allowed,
      boolean neighboursDiffer,
      int fewestSeams,
      int mostSeams) {}

  /** Groups a blanket's pieces. */
  static PieceGroups of(Blanket blanket) {
    int[] seams = new int[blanket.pieceCount()];
    Pairs pairs = blanket.layout().seams();
    for (int pair = 0; pair < pairs.size(); pair++) {
      seams[pairs.first()[pair]]++;
      seams[pairs.second()[pair]]++;
    }
    boolean rule = blanket.brief().rules().withinPiece() != WithinPiece.FREE;
    List<Integer> fixed = new ArrayList<>();
    Map<List<Object>, Group> found = new LinkedHashMap<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      if (certain(blanket, piece)) {
        fixed.add(piece);
        continue;
      }
      PieceKind kind = blanket.kind(piece);
      // what worked rounds show beside each other is a fact
      boolean planned = blanket.roundsWorked(piece) < 2 && !blanket.domains().takesPile(piece);
      boolean[][] allowed = allowed(blanket, piece, found.size() < MOST_GROUPS);
      List<Object> key =
          List.of(kind, planned, Arrays.deepToString(allowed), blanket.borderSeams().halves(piece));
      Group same = found.get(key);
      int own = seams[piece];
      found.put(
          key,
          same == null
              ? new Group(kind, piece, 1, allowed, rule && planned, own, own)
              : new Group(
                  kind,
                  same.piece(),
                  same.count() + 1,
                  allowed,
                  same.neighboursDiffer(),
                  Math.min(own, same.fewestSeams()),
                  Math.max(own, same.mostSeams())));
    }
    return new PieceGroups(new ArrayList<>(found.values()), fixed);
  }

  private static boolean certain(Blanket blanket, int piece) {
    for (int round = 0; round < blanket.roundCount(piece); round++) {
      if (blanket.locked(piece, round) == Sequences.OPEN) {
        return false;
      }
    }
    return true;
  }

  private static boolean[][] allowed(Blanket blanket, int piece, boolean exact) {
    boolean[][] allowed = new boolean[blanket.roundCount(piece)][blanket.yarnCount()];
    for (int round = 0; round < allowed.length; round++) {
      int locked = exact ? blanket.locked(piece, round) : Sequences.OPEN;
      boolean some = false;
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        boolean may =
            exact
                ? blanket.domains().mayShow(piece, round, yarn)
                : blanket.domains().mayShow(blanket.kind(piece), round, yarn);
        allowed[round][yarn] = locked == Sequences.OPEN ? may : yarn == locked;
        some |= allowed[round][yarn];
      }
      if (!some) {
        // nothing fits here, so nothing is valid and any bound holds
        Arrays.fill(allowed[round], true);
      }
    }
    return allowed;
  }
}
