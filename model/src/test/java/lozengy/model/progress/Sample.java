package lozengy.model.progress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;

/** A small blanket in the middle of the work: 3 across and 2 down, filled. */
final class Sample {

  private static final String HEAD =
      """
      format: lozengy-brief/1
      title: In work
      layout: { setting: on-point, across: 3, down: 2 }
      motifs:
        square: { side: 10 cm, rounds: [ { metres: 1 }, { metres: 2 }, { metres: 3 } ] }
        triangle: { rounds: [ { metres: 1 }, { metres: 2 } ] }
        corner: { rounds: [ { metres: 1 }, { metres: 2 } ] }
      yarns:
        - { code: MUD, colour: "#2c2a29", left: 500 m }
        - { code: REE, colour: "#b9b57a", balls: 4, ball: { grams: 50, metres: 100 } }
        - { code: PEA, colour: "#553527", left: 500 m, share: 2 }
        - { code: SKY, colour: "#98bfdb", left: 500 m }
      joining: { yarn: MUD, metres-per-metre: 3 }
      edging: { yarn: PEA, metres-per-metre: 4 }
      pieces:
      """;

  private Sample() {}

  /** The brief with some notes, each a line of YAML. */
  static Brief brief(String... notes) {
    String pieces =
        notes.length == 0
            ? HEAD.replace("pieces:\n", "")
            : HEAD + Arrays.stream(notes).map(n -> "  - " + n + "\n").collect(Collectors.joining());
    return BriefReader.read(SourceText.of("brief.yaml", pieces));
  }

  /**
   * A plan without repeats: squares of odd rows in MUD, REE, PEA, those of even rows and the
   * triangles in SKY and REE; locks of the brief hold.
   */
  static Sequences plan(Brief brief) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    Sequences plan = blanket.open();
    for (int piece = 0; piece < plan.pieces(); piece++) {
      boolean odd = blanket.place(piece).y() % 2 == 1;
      String[] codes =
          odd ? new String[] {"MUD", "REE", "PEA"} : new String[] {"MUD", "SKY", "REE"};
      int skipped = codes.length - plan.rounds(piece);
      for (int round = 0; round < plan.rounds(piece); round++) {
        int locked = blanket.locked(piece, round);
        plan.set(
            piece,
            round,
            locked == Sequences.OPEN ? blanket.yarnIndex(codes[round + skipped]) : locked);
      }
    }
    return plan;
  }

  static CurrentPlan current(String... notes) {
    Brief brief = brief(notes);
    return new CurrentPlan(brief, java.util.Optional.of(plan(brief)));
  }

  /** The codes of a piece, {@code ~} for an open round. */
  static String codes(Blanket blanket, Sequences sequences, String name) {
    int piece = blanket.layout().find(name).orElseThrow().index();
    List<String> codes = new ArrayList<>();
    for (int yarn : sequences.of(piece)) {
      codes.add(yarn == Sequences.OPEN ? "~" : blanket.yarn(yarn).code());
    }
    return String.join(" ", codes);
  }

  /** The codes that a piece is locked to. */
  static String locks(Blanket blanket, String name) {
    return codes(blanket, blanket.locks(), name);
  }
}
