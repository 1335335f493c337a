package lozengy.model.blanket;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Place;

/**
 * What is known of single pieces beforehand: how far they have come, yarns that their rounds must
 * keep, yarns that they must not take, and what the look says of them.
 */
final class KnownPieces {

  private final Layout layout;
  private final ReadyYarns yarns;
  private final PieceState[] states;
  private final int[] roundsWorked;
  private final Sequences locks;
  private final Sequences stated;
  private final Map<Integer, boolean[]> bans = new HashMap<>();
  private final BitSet gone = new BitSet();
  private final ReadyLook look;
  private final Orbits orbits;

  /**
   * Gathers what notes and look say.
   *
   * @param open sequences of all pieces, all open; filled with the locks
   */
  KnownPieces(Brief brief, Layout layout, ReadyYarns yarns, Sequences open) {
    this.layout = layout;
    this.yarns = yarns;
    this.states = new PieceState[open.pieces()];
    Arrays.fill(states, PieceState.PLANNED);
    this.roundsWorked = new int[states.length];
    this.locks = open;
    brief.pieces().forEach(this::addNote);
    IntStream.range(0, brief.yarns().size())
        .filter(yarn -> brief.yarns().get(yarn).gone())
        .forEach(gone::set);
    this.look = new ReadyLook(brief.look(), layout, yarns.count(), yarns.index()::get);
    this.orbits = new Orbits(layout, brief.look().symmetry(), roundsWorked, this.locks);
    this.stated = look.givesBorders() || orbits.any() ? locks.copy() : locks;
    if (look.givesBorders()) {
      lockBorders();
    }
    if (orbits.any()) {
      lockImages();
    }
  }

  private void addNote(PieceNote note) {
    for (Place place : layout.select(note.at())) {
      int piece = place.index();
      int rounds = locks.rounds(piece);
      if (note.state(rounds).compareTo(states[piece]) > 0) {
        states[piece] = note.state(rounds);
      }
      roundsWorked[piece] = Math.max(roundsWorked[piece], note.roundsWorked(rounds));
      List<Optional<String>> codes = note.codes(rounds);
      for (int round = 0; round < codes.size(); round++) {
        if (codes.get(round).isPresent()) {
          locks.set(piece, round, yarns.index().get(codes.get(round).get()));
        }
      }
      for (String code : note.not()) {
        boolean[] banned = bans.computeIfAbsent(piece, p -> new boolean[yarns.count()]);
        banned[yarns.index().get(code)] = true;
      }
    }
  }

  /** Locks the borders that the look gives, but for those that are worked or locked already. */
  private void lockBorders() {
    for (int piece = 0; piece < states.length; piece++) {
      int border = locks.rounds(piece) - 1;
      if (states[piece] == PieceState.PLANNED && locks.yarn(piece, border) == Sequences.OPEN) {
        locks.set(piece, border, look.border(piece));
      }
    }
  }

  /** Locks the rounds still to be worked whose image is locked. */
  private void lockImages() {
    for (int lead : orbits.leads()) {
      int[] members = orbits.members(lead);
      for (int round = 0; round < locks.rounds(lead); round++) {
        int locked = Sequences.OPEN;
        for (int piece : members) {
          locked = locked == Sequences.OPEN ? locks.yarn(piece, round) : locked;
        }
        for (int piece : members) {
          if (round >= roundsWorked[piece] && locks.yarn(piece, round) == Sequences.OPEN) {
            locks.set(piece, round, locked);
          }
        }
      }
    }
  }

  /** By piece, how far it has come; not to be changed. */
  PieceState[] states() {
    return states;
  }

  /** By piece, how many rounds are worked, from the centre; not to be changed. */
  int[] roundsWorked() {
    return roundsWorked;
  }

  /** Yarns that rounds must keep, by locks, states and look; not to be changed. */
  Sequences locks() {
    return locks;
  }

  /** The same without what follows from the look; not to be changed. */
  Sequences stated() {
    return stated;
  }

  /** Whether a yarn is banned from a piece, as one that is gone is from all. */
  boolean banned(int piece, int yarn) {
    boolean[] banned = bans.get(piece);
    return gone.get(yarn) || banned != null && banned[yarn];
  }

  /** The look. */
  ReadyLook look() {
    return look;
  }

  /** The pieces that the look's symmetry ties to each other. */
  Orbits orbits() {
    return orbits;
  }
}
