package lozengy.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementArbitraries;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefArbitraries;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.Part;
import lozengy.model.input.SourceText;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class SchemasTest {

  @Provide
  Arbitrary<Brief> briefs() {
    return BriefArbitraries.briefs();
  }

  @Provide
  Arbitrary<Arrangement> arrangements() {
    return ArrangementArbitraries.arrangements();
  }

  @Property(tries = 50, seed = "1")
  void writtenBriefsHold(@ForAll("briefs") Brief brief) {
    String text = BriefWriter.text(brief);
    assertEquals(List.of(), Schemas.briefFaults(SourceText.of("b.json", text)));
  }

  @Property(tries = 50, seed = "2")
  void writtenArrangementsHold(@ForAll("arrangements") Arrangement arrangement) {
    String text = ArrangementWriter.text(arrangement);
    assertEquals(List.of(), Schemas.arrangementFaults(SourceText.of("a.json", text)));
    String wrong = text.replaceFirst("\"at\": \"", "\"at\": \"x");
    assertFalse(Schemas.arrangementFaults(SourceText.of("a.json", wrong)).isEmpty());
  }

  @Test
  void aBriefIsNoArrangement() {
    SourceText brief = SourceText.of("b.yaml", "format: lozengy-brief/1\ntitle: x\n");
    assertFalse(Schemas.arrangementFaults(brief).isEmpty());
    assertFalse(Schemas.briefFaults(brief).isEmpty());
  }

  @Test
  void bothSchemasNameEveryPart() {
    for (Part part : Part.values()) {
      assertTrue(
          Schemas.resource("brief-1.schema.json").contains('"' + part.word() + "\":"), part.word());
      if (part != Part.KEEP) {
        String parts = Schemas.resource("arrangement-1.schema.json").split("\"parts\": *\\{")[1];
        assertTrue(parts.contains('"' + part.word() + "\":"), part.word());
      }
    }
  }
}
