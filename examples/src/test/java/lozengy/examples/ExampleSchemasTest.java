package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.stream.Stream;
import lozengy.model.Schemas;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.input.SourceText;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import org.junit.jupiter.api.Test;

/** Every example, and what is made of one, holds against the published schemas. */
class ExampleSchemasTest {

  @Test
  void everyExampleHoldsAgainstTheSchema() throws IOException {
    List<Path> briefs;
    try (Stream<Path> files = Files.list(ExampleBriefs.file(""))) {
      briefs = files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    }
    assertFalse(briefs.isEmpty());
    for (Path brief : briefs) {
      assertEquals(List.of(), Schemas.briefFaults(SourceText.read(brief)), brief.toString());
    }
  }

  @Test
  void anAnswerHoldsAgainstTheSchema() {
    SolveOptions options =
        new SolveOptions(
            1, OptionalLong.of(20_000), OptionalDouble.empty(), 1, () -> false, progress -> {});
    SolveResult result = Solver.solve(ExampleBriefs.blanket("cushion"), Optional.empty(), options);
    Arrangement found = assertInstanceOf(SolveResult.Found.class, result).arrangement();
    String text = ArrangementWriter.text(found);
    assertEquals(List.of(), Schemas.arrangementFaults(SourceText.of("answer.json", text)));
  }
}
