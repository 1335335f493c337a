package lozengy.model.score;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;

/** Blankets and sequences drawn by a seed. */
final class Samples {

  private record SampleYarn(String code, String colour, long stockMillimetres, double share) {}

  private Samples() {}

  /** A small blanket of some setting, with rounds of some tones, shares and stocks. */
  static Blanket blanket(long seed) {
    return blanket(seed, 0);
  }

  /** The same blanket with its yarns in another order. */
  static Blanket blanket(long seed, long orderSeed) {
    Random random = new Random(seed);
    int across = 1 + random.nextInt(4);
    int down = 1 + random.nextInt(4);
    BlanketBuilder builder =
        switch (random.nextInt(3)) {
          case 0 -> BlanketBuilder.onPoint(across, down);
          case 1 -> BlanketBuilder.filled(across, down);
          default -> BlanketBuilder.straight(across, down);
        };
    builder
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(1100, Tone.LIGHT, Tone.MID),
            BlanketBuilder.round(1700, Tone.MID),
            BlanketBuilder.round(2300, Tone.values()),
            BlanketBuilder.round(3100, Tone.DARK, Tone.MID))
        .motif(
            PieceKind.SIDE_TRIANGLE,
            BlanketBuilder.round(1300, Tone.values()),
            BlanketBuilder.round(1900, Tone.DARK, Tone.MID))
        .motif(PieceKind.CORNER_TRIANGLE, BlanketBuilder.round(700, Tone.values()));
    List<SampleYarn> yarns = new ArrayList<>();
    String[] colours = {"#2c2a29", "#3d3540", "#5f7f4a", "#8d6a9f", "#b9b57a", "#d9c9a3"};
    for (int yarn = 0; yarn < colours.length; yarn++) {
      // stocks about what a sample needs, so that leeway is now full, now partial, now none
      long stock = 10_000 + random.nextInt(60_000);
      // many equal shares, so that remainders tie
      yarns.add(new SampleYarn("Y" + yarn, colours[yarn], stock, random.nextInt(3) / 2.0));
    }
    Collections.shuffle(yarns, new Random(orderSeed));
    yarns.forEach(
        yarn ->
            builder.yarn(
                yarn.code(), yarn.code(), yarn.colour(), yarn.stockMillimetres(), yarn.share()));
    Blanket blanket =
        builder
            .prefer(
                Map.of(
                    Part.COLOUR_VISION, 2.0,
                    Part.CONTRAST, 1.0,
                    Part.CONTRAST_BETWEEN, 1.5,
                    Part.CONTRAST_WITHIN, 0.5))
            .joining("Y0", 2)
            .piece("r1c1", PieceState.PLANNED, "Y3", null, "Y2", null)
            .build();
    double[] wanted = {Look.LIVELY, Look.CALM, 30};
    Look look = Look.NONE.withContrast(wanted[random.nextInt(3)], wanted[random.nextInt(3)]);
    return Blanket.ofUnjudged(blanket.brief().withLook(look));
  }

  /** Complete sequences, any yarn anywhere. */
  static Sequences sequences(Blanket blanket, long seed) {
    Random random = new Random(seed);
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        // by code, so that a seed means the same whatever the order of the yarns
        String code = "Y" + random.nextInt(blanket.yarnCount());
        sequences.set(piece, round, blanket.yarnIndex(code));
      }
    }
    return sequences;
  }
}
