package lozengy.model.brief;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/**
 * Judges whether rounds in stitches can be turned into yarn: samples are of rounds and yarns that
 * the brief has, weights have put-ups, and something tells how much yarn a stitch takes.
 */
final class StitchMistakes {

  private static final BigDecimal MOST_MILLIMETRES = new BigDecimal(1_000_000);
  private static final MathContext DIGITS = new MathContext(3);

  private final Brief brief;
  private final List<String> codes;
  private final List<Mistake> mistakes = new ArrayList<>();

  private StitchMistakes(Brief brief, List<String> codes) {
    this.brief = brief;
    this.codes = codes;
  }

  /**
   * Finds the mistakes of stitches and samples.
   *
   * @param doubted tells of a path whether what stands there is wrong already
   * @param codes the yarns' codes; empty where any may be right
   */
  static List<Mistake> of(Brief brief, Predicate<BriefPath> doubted, List<String> codes) {
    StitchMistakes found = new StitchMistakes(brief, codes);
    boolean sound =
        !doubted.test(BriefPath.of("motifs"))
            && !doubted.test(BriefPath.of("yarns"))
            && !doubted.test(BriefPath.of("stitches"))
            && !brief.yarns().isEmpty();
    if (sound) {
      found.judgeSamples();
      if (found.mistakes.isEmpty()) {
        found.judgeLengths();
      }
    }
    return found.mistakes;
  }

  private void add(BriefPath path, Mistake.Sort sort, String found, String remedy) {
    mistakes.add(new Mistake(path, 0, sort, found, remedy));
  }

  private static BriefPath path(int sample) {
    return BriefPath.of("stitches", "samples").item(sample);
  }

  private void judgeSamples() {
    List<Sample> samples = brief.stitching().samples();
    for (int i = 0; i < samples.size(); i++) {
      Sample sample = samples.get(i);
      Motif motif = brief.motifs().get(sample.of());
      if (motif == null) {
        add(
            path(i).field("of"),
            MistakeCode.FIELD_MISSING.about(sample.of().word()),
            "The brief has no motif of a " + sample.of().word(),
            "Add motifs." + sample.of().word() + ", or leave the sample out");
        continue;
      }
      int rounds = motif.rounds().size();
      int last = sample.rounds().isEmpty() ? 0 : sample.rounds().get(sample.rounds().size() - 1);
      if (last > rounds) {
        add(
            path(i).field("rounds"),
            MistakeCode.OUT_OF_RANGE.about(last, 1, rounds, "rounds"),
            "A " + sample.of().word() + " has no round " + last,
            "Rounds count from 1 at the centre to " + rounds);
        continue;
      }
      judgeYarns(sample, path(i), sample.rounds().isEmpty() ? rounds : sample.rounds().size());
    }
  }

  private void judgeYarns(Sample sample, BriefPath path, int rounds) {
    List<String> yarns = sample.yarns();
    for (int i = 0; i < yarns.size(); i++) {
      BriefPath at = path.field("yarn").itemOf(i, yarns.size());
      BriefMistakes.unknownCode(yarns.get(i), at, codes).ifPresent(mistakes::add);
    }
    if (yarns.size() > 1 && yarns.size() != rounds) {
      add(
          path.field("yarn"),
          MistakeCode.WRONG_COUNT.about("yarns", yarns.size(), rounds, rounds),
          Words.count(yarns.size(), "yarn") + " for " + Words.count(rounds, "round"),
          "Name one yarn, or one for each round of the sample, the centre first");
    }
    boolean weighed = sample.takes().stream().anyMatch(YarnAmount.Weight.class::isInstance);
    if (!weighed) {
      return;
    }
    List<Yarn> own =
        brief.yarns().stream()
            .filter(yarn -> yarns.isEmpty() || yarns.contains(yarn.code()))
            .toList();
    Optional<Yarn> bare = own.stream().filter(yarn -> yarn.ball().isEmpty()).findFirst();
    if (bare.isPresent()) {
      add(
          BriefPath.of("yarns").item(brief.yarns().indexOf(bare.get())).field("ball"),
          MistakeCode.FIELD_MISSING.about("ball"),
          "A sample was weighed, and "
              + bare.get().code()
              + " has no put-up to turn the weight into metres",
          yarns.isEmpty()
              ? "Add its ball: { grams: 50, metres: 120 }, or say in which yarn the sample is"
              : "Add what is on a full ball, such as ball: { grams: 50, metres: 120 }");
    } else if (yarns.isEmpty()) {
      judgePutUpsAlike(own, path);
    }
  }

  /** Where no yarn is named, a weight must be the same length in all. */
  private void judgePutUpsAlike(List<Yarn> own, BriefPath path) {
    Yarn first = own.get(0);
    own.stream()
        .filter(yarn -> !alike(first, yarn))
        .findFirst()
        .ifPresent(
            other ->
                add(
                    path.field("yarn"),
                    MistakeCode.FIELD_MISSING.about("yarn"),
                    "The sample does not say its yarn, and a gram of "
                        + first.code()
                        + " is another length than one of "
                        + other.code(),
                    "Add yarn: "
                        + first.code()
                        + ", or a list with the yarn of each round, the centre first"));
  }

  private static boolean alike(Yarn one, Yarn other) {
    Ball first = one.ball().orElseThrow();
    Ball second = other.ball().orElseThrow();
    return first
            .millimetres()
            .multiply(second.grams())
            .compareTo(second.millimetres().multiply(first.grams()))
        == 0;
  }

  private void judgeLengths() {
    RoundLengths lengths = RoundLengths.of(brief);
    for (RoundLengths.Held light : lengths.tooLight()) {
      Sample sample = brief.stitching().samples().get(light.sample());
      boolean byLength = sample.takes().get(light.amount()) instanceof YarnAmount.Length;
      String weighed = figure(light.weighed(), byLength);
      String tails = figure(light.tails(), byLength);
      boolean tailsAlone = light.weighed().compareTo(light.tails()) <= 0;
      add(
          path(light.sample()).field("takes").itemOf(light.amount(), sample.takes().size()),
          MistakeCode.LIGHTER_THAN_TAILS.about(weighed, tails),
          tailsAlone
              ? "The sample takes " + weighed + ", and its tails alone take " + tails
              : "The sample takes "
                  + weighed
                  + ", which its tails and the rounds that are known otherwise use up",
          "Weigh it with its tails, several pieces at once, and say with count how many; look at"
              + " tail, rounds and yarn too");
    }
    if (mistakes.isEmpty()) {
      brief.motifs().forEach((kind, motif) -> judgeRounds(kind, motif, lengths));
    }
  }

  private void judgeRounds(PieceKind kind, Motif motif, RoundLengths lengths) {
    for (int round = 0; round < motif.rounds().size(); round++) {
      BriefPath path = BriefPath.of("motifs", kind.word(), "rounds").item(round).field("stitches");
      if (lengths.basis(kind, round) == RoundLengths.Basis.UNKNOWN) {
        if (mistakes.isEmpty()) {
          add(
              path,
              MistakeCode.NO_STARTING_VALUE.about(written(motif, round)),
              "Nothing tells how much yarn these stitches take",
              "At the top of the brief add stitches: { yarn-weight: light, hook: 3.5 mm } for rough"
                  + " starting values, or a sample, such as stitches: { samples: [ { of: "
                  + kind.word()
                  + ", count: 4, takes: 26.4 g } ] }");
        }
      } else if (lengths.amount(kind, round) instanceof YarnAmount.Length length
          && length.millimetres().compareTo(MOST_MILLIMETRES) > 0
          && lengths.basis(kind, round) != RoundLengths.Basis.STATED) {
        add(
            path,
            MistakeCode.OUT_OF_RANGE.about(figure(length.millimetres(), true), 0, 1000, "m"),
            "These stitches come to " + figure(length.millimetres(), true),
            "A round takes at most 1000 m; look at the stitches and the samples");
      }
    }
  }

  private List<String> written(Motif motif, int round) {
    StitchCounts counted = (StitchCounts) motif.rounds().get(round).amount();
    return counted.counts().keySet().stream()
        .map(stitch -> stitch.abbreviation(brief.stitching().terms()))
        .toList();
  }

  private static String figure(BigDecimal thousandths, boolean length) {
    return thousandths.movePointLeft(3).round(DIGITS).stripTrailingZeros().toPlainString()
        + (length ? " m" : " g");
  }
}
