package lozengy.solver.alternatives;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.layout.Place;
import lozengy.solver.RandomBriefs;
import org.junit.jupiter.api.Test;

class DistanceTest {

  @Test
  void copiesTurnedMirroredOrRenamedAreNotApart() {
    int copies = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Blanket blanket = Blanket.ofUnjudged(RandomBriefs.of(seed, 3, 6));
      Distance distance = new Distance(blanket);
      Random random = new Random(seed);
      Sequences one = random(blanket, random);
      for (int[] symmetry : distance.symmetries()) {
        Sequences copy = copy(blanket, one, symmetry, renaming(blanket, random));
        assertEquals(0, distance.between(one, copy), "seed " + seed);
        assertEquals(0, distance.between(copy, one), "seed " + seed);
        copies++;
      }
    }
    assertTrue(copies > 100, "only " + copies);
  }

  @Test
  void isTheLeastOverAllRenamingsByTryingThemAll() {
    for (long seed = 1; seed <= 40; seed++) {
      Blanket blanket = Blanket.ofUnjudged(RandomBriefs.of(seed, 3, 6));
      Distance distance = new Distance(blanket);
      Random random = new Random(seed);
      Sequences one = random(blanket, random);
      Sequences other = random(blanket, random);
      double least = 1;
      for (int[] symmetry : distance.symmetries()) {
        int[] names = new int[blanket.yarnCount()];
        least = Math.min(least, tryAll(blanket, one, other, symmetry, names, 0));
      }
      assertEquals(least, distance.between(one, other), 1e-12, "seed " + seed);
      assertEquals(least, distance.between(other, one), 1e-12, "seed " + seed);
    }
  }

  private static double tryAll(
      Blanket blanket, Sequences one, Sequences other, int[] symmetry, int[] names, int next) {
    if (next == names.length) {
      return differing(blanket, one, copy(blanket, other, symmetry, names));
    }
    double least = 1;
    for (int name = 0; name < names.length; name++) {
      boolean taken = blanket.yarns().tone(name) != blanket.yarns().tone(next);
      for (int before = 0; before < next; before++) {
        taken |= names[before] == name;
      }
      if (!taken) {
        names[next] = name;
        least = Math.min(least, tryAll(blanket, one, other, symmetry, names, next + 1));
      }
    }
    return least;
  }

  private static double differing(Blanket blanket, Sequences one, Sequences other) {
    double free = 0;
    double differ = 0;
    for (Place place : blanket.layout().places()) {
      for (int round = 0; round < blanket.roundCount(place.index()); round++) {
        if (blanket.free(place.index(), round)) {
          free++;
          differ += one.yarn(place.index(), round) == other.yarn(place.index(), round) ? 0 : 1;
        }
      }
    }
    return free == 0 ? 0 : differ / free;
  }

  private static Sequences random(Blanket blanket, Random random) {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        sequences.set(piece, round, random.nextInt(blanket.yarnCount()));
      }
    }
    return sequences;
  }

  /** What one shows at a place, the copy shows where the symmetry carries it to, renamed. */
  private static Sequences copy(Blanket blanket, Sequences one, int[] symmetry, int[] names) {
    Sequences copy = blanket.open();
    for (int piece = 0; piece < copy.pieces(); piece++) {
      for (int round = 0; round < copy.rounds(piece); round++) {
        copy.set(piece, round, names[one.yarn(symmetry[piece], round)]);
      }
    }
    return copy;
  }

  private static int[] renaming(Blanket blanket, Random random) {
    int[] names = new int[blanket.yarnCount()];
    for (int yarn = 0; yarn < names.length; yarn++) {
      names[yarn] = yarn;
    }
    for (int i = 0; i < 50; i++) {
      int a = random.nextInt(names.length);
      int b = random.nextInt(names.length);
      if (blanket.yarns().tone(a) == blanket.yarns().tone(b)) {
        int name = names[a];
        names[a] = names[b];
        names[b] = name;
      }
    }
    return names;
  }
}
