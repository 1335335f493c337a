package lozengy.model.arrangement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lozengy.model.input.SourceText;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ArrangementRoundTripTest {

  @Provide
  Arbitrary<Arrangement> arrangements() {
    return ArrangementArbitraries.arrangements();
  }

  @Property(tries = 100, seed = "1")
  void aWrittenArrangementReadsBackEqual(@ForAll("arrangements") Arrangement arrangement) {
    String text = ArrangementWriter.text(arrangement);
    StatedArrangement read = ArrangementReader.read(SourceText.of("a.json", text));
    assertEquals(arrangement.blanket().brief(), read.blanket().brief());
    assertEquals(arrangement.sequences(), read.sequences());
    assertEquals(arrangement.earlier(), read.earlier());
    assertEquals(arrangement.score(), read.score().orElseThrow());
    assertEquals(arrangement.bound(), read.bound());
    assertEquals(arrangement.solved(), read.solved());
    assertEquals(arrangement.diary(), read.diary());
    assertEquals(totals(arrangement), read.yarns());
    for (int piece = 0; piece < read.blanket().pieceCount(); piece++) {
      assertEquals(arrangement.blanket().state(piece), read.blanket().state(piece));
    }
    Arrangement same =
        new Arrangement(
            read.blanket(),
            read.sequences(),
            read.earlier(),
            read.score().orElseThrow(),
            read.bound(),
            read.solved(),
            read.diary());
    assertEquals(text, ArrangementWriter.text(same));
  }

  private static List<StatedArrangement.StatedYarn> totals(Arrangement arrangement) {
    long[] used = arrangement.blanket().usedMillimetres(arrangement.sequences());
    return IntStream.range(0, used.length)
        .mapToObj(
            yarn -> {
              long stock = arrangement.blanket().yarn(yarn).stockMillimetres();
              return new StatedArrangement.StatedYarn(
                  arrangement.blanket().yarn(yarn).code(),
                  Optional.of(arrangement.blanket().yarn(yarn).name()),
                  metres(stock),
                  metres(used[yarn]),
                  metres(stock - used[yarn]));
            })
        .toList();
  }

  private static Optional<Double> metres(long millimetres) {
    return Optional.of(millimetres / 1000.0);
  }

  @Property(tries = 20, seed = "2")
  void eachPieceHasALineOfItsOwn(@ForAll("arrangements") Arrangement arrangement) {
    String text = ArrangementWriter.text(arrangement);
    for (int piece = 0; piece < arrangement.blanket().pieceCount(); piece++) {
      String start =
          "    {\"at\": \"" + arrangement.blanket().place(piece).name() + "\", \"kind\": ";
      assertEquals(1, text.lines().filter(line -> line.startsWith(start)).count());
    }
    assertTrue(text.endsWith("}\n"));
  }
}
