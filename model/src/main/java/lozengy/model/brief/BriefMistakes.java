package lozengy.model.brief;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Nearest;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/**
 * Judges whether the parts of a brief fit together: codes that are used are there and unique, every
 * kind of piece has a motif, pieces that are named are there, and so on. Whether what it holds of
 * single pieces breaks a rule is not judged here.
 */
public final class BriefMistakes {

  private final Brief brief;
  private final Predicate<BriefPath> doubted;
  private final List<String> codes;
  private final List<Mistake> mistakes = new ArrayList<>();

  private BriefMistakes(Brief brief, Predicate<BriefPath> doubted) {
    this.brief = brief;
    this.doubted = doubted;
    this.codes = codes(brief, doubted);
  }

  /**
   * Finds all mistakes of a brief's parts.
   *
   * @param brief the brief
   * @return the mistakes with their paths and without lines, in the brief's order; empty if none
   */
  public static List<Mistake> ofParts(Brief brief) {
    return ofParts(brief, path -> false);
  }

  /**
   * Finds all mistakes of a brief's parts.
   *
   * @param doubted tells of a path whether what stands there is wrong already, so that nothing is
   *     concluded from it
   */
  static List<Mistake> ofParts(Brief brief, Predicate<BriefPath> doubted) {
    BriefMistakes found = new BriefMistakes(brief, doubted);
    boolean layoutKnown = !doubted.test(BriefPath.of("layout")) && found.layoutFits();
    if (layoutKnown) {
      found.judgeMotifs();
    }
    found.judgeYarns();
    found.mistakes.addAll(StitchMistakes.of(brief, doubted, found.codes));
    brief
        .joiningInOneYarn()
        .ifPresent(use -> found.judgeUse("joining", BriefPath.of("joining"), use));
    if (brief.joiningInBorders().filter(Joining::weighed).isPresent()) {
      for (int yarn = 0; yarn < brief.yarns().size(); yarn++) {
        found.needPutUp("joining", yarn);
      }
    }
    for (int i = 0; i < brief.edging().size(); i++) {
      found.judgeUse("edging", brief.edgingPath(i), brief.edging().get(i));
    }
    if (layoutKnown) {
      found.mistakes.addAll(CountMistakes.of(brief, doubted));
    }
    found.mistakes.addAll(LookMistakes.of(brief, doubted, layoutKnown, found.codes));
    found.mistakes.addAll(PieceMistakes.of(brief, doubted, layoutKnown, found.codes));
    found.mistakes.addAll(PileMistakes.of(brief, doubted, layoutKnown, found.codes));
    return found.mistakes;
  }

  private void add(BriefPath path, Mistake.Sort sort, String found, String remedy) {
    mistakes.add(new Mistake(path, 0, sort, found, remedy));
  }

  private boolean layoutFits() {
    if (!LargeLayout.tooLarge(brief)) {
      return true;
    }
    add(
        BriefPath.of("layout"),
        LargeLayout.sort(brief),
        LargeLayout.found(brief),
        LargeLayout.remedy());
    return false;
  }

  private void judgeMotifs() {
    for (PieceKind kind : PieceKind.values()) {
      BriefPath path = BriefPath.of("motifs", kind.word());
      Motif motif = brief.motifs().get(kind);
      if (doubted.test(path)) {
        continue;
      }
      if (motif == null && LargeLayout.count(brief, kind) > 0) {
        add(
            path,
            MistakeCode.FIELD_MISSING.about(kind.word()),
            "The layout has "
                + Words.count(LargeLayout.count(brief, kind), kind.word())
                + " but no motif for them",
            "Add motifs." + kind.word() + remedyWithout(kind));
      } else if (kind == PieceKind.SQUARE && motif != null && motif.edgeCm().isEmpty()) {
        add(
            path.field("side"),
            MistakeCode.FIELD_MISSING.about("side"),
            "The square's side is missing",
            "Add it, such as side: 10 cm");
      }
    }
  }

  private static String remedyWithout(PieceKind kind) {
    return switch (kind) {
      case SQUARE -> "";
      case SIDE_TRIANGLE -> ", or write sides: open in the layout";
      case CORNER_TRIANGLE -> ", or write corners: open in the layout";
    };
  }

  private void judgeYarns() {
    List<Yarn> yarns = brief.yarns();
    if (yarns.isEmpty() && !doubted.test(BriefPath.of("yarns"))) {
      add(
          BriefPath.of("yarns"),
          MistakeCode.WRONG_COUNT.about("yarns", 0, 1),
          "There is no yarn",
          "List at least one yarn");
      return;
    }
    Map<String, Integer> byCode = new HashMap<>();
    boolean weights =
        brief.motifs().values().stream()
            .flatMap(motif -> motif.rounds().stream())
            .anyMatch(round -> round.amount() instanceof YarnAmount.Weight);
    for (int i = 0; i < yarns.size(); i++) {
      Yarn yarn = yarns.get(i);
      BriefPath path = BriefPath.of("yarns").item(i);
      Integer earlier = byCode.putIfAbsent(yarn.code().toLowerCase(Locale.ROOT), i);
      if (earlier != null && !doubted.test(path.field("code"))) {
        add(
            path.field("code"),
            MistakeCode.NAMED_TWICE.about(yarn.code(), BriefPath.of("yarns").item(earlier)),
            "The code " + yarn.code() + " is taken by yarns[" + earlier + "]",
            "Give each yarn a code of its own; capitals make no difference");
      }
      if (weights && yarn.ball().isEmpty() && !doubted.test(path)) {
        add(
            path.field("ball"),
            MistakeCode.FIELD_MISSING.about("ball"),
            "Rounds are given by weight, and "
                + yarn.code()
                + " has no put-up to turn it into metres",
            "Add what is on a full ball, such as ball: { grams: 50, metres: 120 }");
      }
      if (yarn.ball().isPresent() && !doubted.test(path.field("ball"))) {
        PutUpMistake.of(yarn.ball().get(), path.field("ball")).ifPresent(mistakes::add);
      }
    }
    for (int i = 0; i < yarns.size(); i++) {
      judgeLot(yarns.get(i), BriefPath.of("yarns").item(i).field("lot-of"));
    }
    judgeCurrencies();
    if (!yarns.isEmpty()
        && yarns.stream().allMatch(yarn -> yarn.share() == 0)
        && !doubted.test(BriefPath.of("yarns"))) {
      add(
          BriefPath.of("yarns"),
          MistakeCode.OUT_OF_RANGE.about(0, null, null, null, 0),
          "Every yarn has share 0",
          "Give at least one yarn a share above 0");
    }
  }

  /** Prices are added up, so they are in one currency. */
  private void judgeCurrencies() {
    String first = null;
    for (int i = 0; i < brief.yarns().size(); i++) {
      Optional<String> currency = brief.yarns().get(i).price().map(Price::currency);
      first = first == null ? currency.orElse(null) : first;
      if (currency.isPresent() && !currency.get().equals(first)) {
        add(
            BriefPath.of("yarns").item(i).field("price"),
            MistakeCode.CONTRADICTS.about(currency.get(), first),
            "The price is in " + currency.get() + ", and an earlier yarn's in " + first,
            "Give all prices in one currency");
      }
    }
  }

  /** A lot is of a shade that the brief has, and of its tone. */
  private void judgeLot(Yarn yarn, BriefPath path) {
    String shade = yarn.lotOf().orElse(null);
    if (shade == null || doubted.test(path)) {
      return;
    }
    unknownCode(shade, path, codes).ifPresent(mistakes::add);
    if (shade.equals(yarn.code())) {
      add(
          path,
          MistakeCode.CONTRADICTS.about(shade, yarn.code()),
          shade + " cannot be another dye lot of itself",
          "Name the yarn that it is another dye lot of, or leave lot-of out");
    }
    Tone tone = brief.toneOf(yarn);
    brief.yarns().stream()
        .filter(each -> each.code().equals(shade))
        .map(brief::toneOf)
        .filter(other -> other != tone)
        .findFirst()
        .ifPresent(
            other ->
                add(
                    path,
                    MistakeCode.CONTRADICTS.about(tone.word(), other.word()),
                    "%s is %s, and %s is %s: dye lots of one shade have one tone"
                        .formatted(yarn.code(), tone.word(), shade, other.word()),
                    "State the same tone for both, or leave lot-of out"));
  }

  private void judgeUse(String name, BriefPath at, YarnUse use) {
    BriefPath path = at.field("yarn");
    if (doubted.test(path)) {
      return;
    }
    unknownCode(use.yarn(), path, codes).ifPresent(mistakes::add);
    int yarn = codes.indexOf(use.yarn());
    if (yarn >= 0 && use.weighed()) {
      needPutUp(name, yarn);
    }
  }

  private void needPutUp(String name, int yarn) {
    BriefPath ball = BriefPath.of("yarns").item(yarn).field("ball");
    if (brief.yarns().get(yarn).ball().isEmpty() && !doubted.test(ball)) {
      add(
          ball,
          MistakeCode.FIELD_MISSING.about("ball"),
          "A strip of the "
              + name
              + " was weighed, and "
              + brief.yarns().get(yarn).code()
              + " has no put-up to turn the weight into metres",
          "Add what is on a full ball, such as ball: { grams: 50, metres: 120 }");
    }
  }

  /** The yarns' codes; empty where the code of one is doubted, so that any may be right. */
  private static List<String> codes(Brief brief, Predicate<BriefPath> doubted) {
    boolean known = !doubted.test(code(0));
    for (int i = 1; i < brief.yarns().size(); i++) {
      known &= !doubted.test(code(i));
    }
    return known ? brief.yarns().stream().map(Yarn::code).toList() : List.of();
  }

  private static BriefPath code(int yarn) {
    return BriefPath.of("yarns").item(yarn).field("code");
  }

  /**
   * {@return the mistake of a code that no yarn has; empty where one has it}
   *
   * @param code the code
   * @param path where it stands
   * @param codes all codes; empty where any may be right
   */
  public static Optional<Mistake> unknownCode(
      String code, BriefPath path, Collection<String> codes) {
    if (codes.isEmpty() || codes.contains(code)) {
      return Optional.empty();
    }
    String remedy =
        Nearest.to(code, codes)
            .map(near -> "Maybe " + near + " is meant")
            .orElse("The yarns' codes are " + String.join(", ", codes));
    return Optional.of(
        new Mistake(
            path,
            0,
            MistakeCode.UNKNOWN_YARN.about(code),
            "No yarn has the code " + Words.quoted(code),
            remedy));
  }
}
