package lozengy.benchmarks.brief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.benchmarks.brief.BriefSpec.Stock;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;

/**
 * A generated brief and the valid arrangement that its stock was made for.
 *
 * @param spec what it was generated from
 * @param blanket the brief, made ready
 * @param planted a valid arrangement
 */
public record PlantedBrief(BriefSpec spec, Blanket blanket, Sequences planted) {

  private static final long PLENTY = 1_000_000_000_000L;

  /** Metres along a metre of seam and of outline, where the first yarn joins and edges. */
  private static final double JOINING = 3.5;

  private static final double EDGING = 9;

  /** Generates a brief, the same on every machine. */
  public static PlantedBrief of(BriefSpec spec) {
    SplittableRandom random = new SplittableRandom(seed(spec));
    int count = spec.yarns().dark() + spec.yarns().mid() + spec.yarns().light();
    double[] weights = new double[count];
    Arrays.setAll(weights, yarn -> weight(spec.stock(), random));
    double[] shares = new double[count];
    Arrays.setAll(shares, yarn -> spec.stock() == Stock.ODD_WITH_SHARES ? weights[yarn] : 1);
    long[] stock = new long[count];
    Arrays.fill(stock, PLENTY);
    Blanket ample = Blanket.of(brief(spec, yarns(spec, shares, stock), List.of()));
    Planter planter = new Planter(ample, weights, random);
    if (spec.plantsBordersFirst()) {
      planter.plantBorders();
    }
    Sequences planted = planter.plant();
    long[] used = ample.usedMillimetres(planted);
    double usablePart = (100 - spec.rules().keepBackPercent()) / 100;
    Arrays.setAll(
        stock, yarn -> (long) Math.ceil(used[yarn] * (1 + spec.slackPercent() / 100) / usablePart));
    List<PieceNote> notes = notes(spec, ample, planted, random);
    Blanket blanket = Blanket.of(brief(spec, yarns(spec, shares, stock), notes));
    return new PlantedBrief(spec, blanket, planted);
  }

  /**
   * Depends on neither name nor slack, so that briefs which differ in those alone are comparable.
   */
  private static int seed(BriefSpec spec) {
    BriefSpec.YarnCounts yarns = spec.yarns();
    int[] all = {
      spec.layout().across(), spec.layout().down(), yarns.dark(), yarns.mid(), yarns.light()
    };
    return 31 * Arrays.hashCode(all) + spec.rounds().hashCode();
  }

  /** In tenths, 1 where stock is even, otherwise 0.5 to 1.5. */
  private static double weight(Stock stock, SplittableRandom random) {
    return stock == Stock.EVEN ? 1 : random.nextInt(5, 16) / 10.0;
  }

  private static Brief brief(BriefSpec spec, List<Yarn> yarns, List<PieceNote> notes) {
    String first = yarns.get(0).code();
    Optional<YarnUse> none = Optional.empty();
    return Brief.of(spec.name(), spec.layout(), Recipe.motifs(spec.layout(), spec.rounds()), yarns)
        .withJoining(spec.finished() ? Optional.of(new YarnUse(first, JOINING)) : none)
        .withEdging(spec.finished() ? List.of(new YarnUse(first, EDGING)) : List.of())
        .withRules(spec.rules())
        .withPrefer(new Preferences(Map.of()))
        .withPieces(notes);
  }

  private static List<Yarn> yarns(BriefSpec spec, double[] shares, long[] stock) {
    List<Yarn> yarns = new ArrayList<>();
    Map<Tone, Integer> counts =
        Map.of(
            Tone.DARK, spec.yarns().dark(),
            Tone.MID, spec.yarns().mid(),
            Tone.LIGHT, spec.yarns().light());
    for (Tone tone : Tone.values()) {
      for (int i = 0; i < counts.get(tone); i++) {
        String word = tone.word();
        yarns.add(
            Yarn.of("%S%d".formatted(word.charAt(0), i + 1), Srgb.parse(Palette.of(tone).get(i)))
                .withName("%S%s %d".formatted(word.charAt(0), word.substring(1), i + 1))
                .withLeft(Optional.of(new YarnAmount.Length(stock[yarns.size()])))
                .withShare(shares[yarns.size()]));
      }
    }
    return yarns;
  }

  private static List<PieceNote> notes(
      BriefSpec spec, Blanket blanket, Sequences planted, SplittableRandom random) {
    int wanted = spec.known().locks() + spec.known().bans();
    Set<Integer> pieces = new LinkedHashSet<>();
    while (pieces.size() < wanted) {
      pieces.add(random.nextInt(blanket.pieceCount()));
    }
    List<PieceNote> notes = new ArrayList<>();
    for (int piece : pieces) {
      notes.add(
          notes.size() < spec.known().locks()
              ? lock(blanket, planted, piece)
              : ban(blanket, planted, piece, random));
    }
    return notes;
  }

  private static PieceNote lock(Blanket blanket, Sequences planted, int piece) {
    List<Optional<String>> codes =
        Arrays.stream(planted.of(piece))
            .mapToObj(yarn -> Optional.of(blanket.yarn(yarn).code()))
            .toList();
    return new PieceNote(List.of(blanket.place(piece).name()), codes, PieceState.PLANNED, Set.of());
  }

  private static PieceNote ban(
      Blanket blanket, Sequences planted, int piece, SplittableRandom random) {
    Set<Integer> taken = new LinkedHashSet<>();
    Arrays.stream(planted.of(piece)).forEach(taken::add);
    int yarn = random.nextInt(blanket.yarnCount());
    while (taken.contains(yarn)) {
      yarn = random.nextInt(blanket.yarnCount());
    }
    return new PieceNote(
        List.of(blanket.place(piece).name()),
        List.of(),
        PieceState.PLANNED,
        Set.of(blanket.yarn(yarn).code()));
  }
}
