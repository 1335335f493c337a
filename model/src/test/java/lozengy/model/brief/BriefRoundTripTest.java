package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefJudge;
import lozengy.model.reading.BriefReader;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class BriefRoundTripTest {

  @Provide
  Arbitrary<Brief> briefs() {
    return BriefArbitraries.briefs();
  }

  @Provide
  Arbitrary<Brief> easyBriefs() {
    return BriefArbitraries.easyBriefs();
  }

  @Property(tries = 100, seed = "1")
  void aWrittenBriefReadsBackEqual(@ForAll("briefs") Brief brief) {
    String text = BriefWriter.text(brief);
    Brief read = BriefReader.read(SourceText.of("brief.json", text));
    assertEquals(brief, read);
    assertEquals(text, BriefWriter.text(read));
  }

  /** JSON is YAML too, so the YAML reader must find the same in it. */
  @Property(tries = 100, seed = "2")
  void yamlAndJsonMeanTheSame(@ForAll("briefs") Brief brief) {
    SourceText yaml = new SourceText("brief.yaml", BriefWriter.text(brief), false);
    assertEquals(brief, BriefReader.read(yaml));
  }

  @Property(tries = 50, seed = "3")
  void randomBriefsAreValid(@ForAll("briefs") Brief any, @ForAll("easyBriefs") Brief easy) {
    assertEquals(List.of(), BriefJudge.mistakes(any));
    assertEquals(List.of(), BriefJudge.mistakes(easy));
    assertTrue(easy.pieces().isEmpty());
  }
}
