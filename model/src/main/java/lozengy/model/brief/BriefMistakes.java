package lozengy.model.brief;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.model.input.Mistake;
import lozengy.model.input.Nearest;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/**
 * Judges whether the parts of a brief fit together: codes that are used are there and unique, every
 * kind of piece has a motif, pieces that are named are there, locks do not break a rule, and so on.
 */
public final class BriefMistakes {

  private static final Pattern NOTE = Pattern.compile("pieces\\[(\\d+)\\].*");

  /** Widely: the thickest yarn for arms in place of needles, and the thinnest sewing thread. */
  private static final double LEAST_METRES_PER_GRAM = 0.01;

  private static final double MOST_METRES_PER_GRAM = 100;

  private static final PieceNote SILENT =
      new PieceNote(List.of("all"), List.of(), PieceState.PLANNED, Set.of());

  private final Brief brief;
  private final Predicate<String> doubted;
  private final List<String> codes;
  private final List<Mistake> mistakes = new ArrayList<>();

  private BriefMistakes(Brief brief, Predicate<String> doubted) {
    this.brief = brief;
    this.doubted = doubted;
    this.codes = codes(brief, doubted);
  }

  /**
   * Finds all mistakes of a brief. Locks are held against the rules as far as the parts fit
   * together: a note with a mistake of its own holds nothing there.
   *
   * @param brief the brief
   * @return the mistakes with their paths and without lines, in the brief's order; empty if none
   */
  public static List<Mistake> of(Brief brief) {
    List<Mistake> mistakes = new ArrayList<>(ofParts(brief));
    mistakes.addAll(ofLocks(brief, mistakes.stream().map(Mistake::path).toList()));
    return mistakes;
  }

  /**
   * Finds locks that break a rule. Where more is wrong than single notes on pieces, none is looked
   * for.
   *
   * @param wrong paths of other mistakes; a note that is wrong itself holds nothing here
   */
  static List<Mistake> ofLocks(Brief brief, Collection<String> wrong) {
    Set<Integer> notes = new HashSet<>();
    for (String path : wrong) {
      Matcher note = NOTE.matcher(path);
      if (!note.matches()) {
        return List.of();
      }
      notes.add(Integer.parseInt(note.group(1)));
    }
    return LockMistakes.of(without(brief, notes));
  }

  /**
   * Finds all mistakes of a brief but locks that break a rule.
   *
   * @param brief the brief
   * @return the mistakes with their paths and without lines, in the brief's order; empty if none
   */
  public static List<Mistake> ofParts(Brief brief) {
    return ofParts(brief, path -> false);
  }

  /** The brief with some notes that say nothing; the others keep their places. */
  private static Brief without(Brief brief, Set<Integer> silent) {
    List<PieceNote> notes = new ArrayList<>(brief.pieces());
    silent.forEach(i -> notes.set(i, SILENT));
    return silent.isEmpty() ? brief : brief.withPieces(notes);
  }

  /**
   * Finds all mistakes but locks that break a rule.
   *
   * @param doubted tells of a path whether what stands there is wrong already, so that nothing is
   *     concluded from it
   */
  static List<Mistake> ofParts(Brief brief, Predicate<String> doubted) {
    BriefMistakes found = new BriefMistakes(brief, doubted);
    boolean layoutKnown = !doubted.test("layout") && found.layoutFits();
    if (layoutKnown) {
      found.judgeMotifs();
    }
    found.judgeYarns();
    found.judgeUse("joining", brief.joining());
    found.judgeUse("edging", brief.edging());
    if (layoutKnown) {
      found.mistakes.addAll(CountMistakes.of(brief, doubted));
    }
    found.mistakes.addAll(LookMistakes.of(brief, doubted, layoutKnown, found.codes));
    found.mistakes.addAll(PieceMistakes.of(brief, doubted, layoutKnown, found.codes));
    found.mistakes.addAll(PileMistakes.of(brief, doubted, layoutKnown, found.codes));
    return found.mistakes;
  }

  private void add(String path, String found, String remedy) {
    mistakes.add(new Mistake(path, 0, found, remedy));
  }

  private boolean layoutFits() {
    if (!LargeLayout.tooLarge(brief)) {
      return true;
    }
    add("layout", LargeLayout.found(brief), LargeLayout.remedy());
    return false;
  }

  private void judgeMotifs() {
    for (PieceKind kind : PieceKind.values()) {
      String path = "motifs." + kind.word();
      Motif motif = brief.motifs().get(kind);
      if (doubted.test(path)) {
        continue;
      }
      if (motif == null && LargeLayout.count(brief, kind) > 0) {
        add(
            path,
            "The layout has "
                + Words.count(LargeLayout.count(brief, kind), kind.word())
                + " but no motif for them",
            "Add motifs." + kind.word() + remedyWithout(kind));
      } else if (kind == PieceKind.SQUARE && motif != null && motif.edgeCm().isEmpty()) {
        add(path + ".side", "The square's side is missing", "Add it, such as side: 10 cm");
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
    if (yarns.isEmpty() && !doubted.test("yarns")) {
      add("yarns", "There is no yarn", "List at least one yarn");
      return;
    }
    Map<String, Integer> byCode = new HashMap<>();
    boolean weights =
        brief.motifs().values().stream()
            .flatMap(motif -> motif.rounds().stream())
            .anyMatch(round -> round.amount() instanceof YarnAmount.Weight);
    for (int i = 0; i < yarns.size(); i++) {
      Yarn yarn = yarns.get(i);
      String path = "yarns[" + i + "]";
      Integer earlier = byCode.putIfAbsent(yarn.code().toLowerCase(Locale.ROOT), i);
      if (earlier != null && !doubted.test(path + ".code")) {
        add(
            path + ".code",
            "The code " + yarn.code() + " is taken by yarns[" + earlier + "]",
            "Give each yarn a code of its own; capitals make no difference");
      }
      if (weights && yarn.ball().isEmpty() && !doubted.test(path)) {
        add(
            path + ".ball",
            "Rounds are given by weight, and "
                + yarn.code()
                + " has no put-up to turn it into metres",
            "Add what is on a full ball, such as ball: { grams: 50, metres: 120 }");
      }
      if (yarn.ball().isPresent() && !doubted.test(path + ".ball")) {
        judgePutUp(yarn.ball().get(), path + ".ball");
      }
    }
    if (!yarns.isEmpty()
        && yarns.stream().allMatch(yarn -> yarn.share() == 0)
        && !doubted.test("yarns")) {
      add("yarns", "Every yarn has share 0", "Give at least one yarn a share above 0");
    }
  }

  private void judgePutUp(Ball ball, String path) {
    double metresPerGram = ball.millimetres() / 1000.0 / ball.grams();
    if (metresPerGram < LEAST_METRES_PER_GRAM || metresPerGram > MOST_METRES_PER_GRAM) {
      add(
          path,
          "A ball of %s g with %s m has %s m to the gram"
              .formatted(
                  figure(ball.grams()), figure(ball.millimetres() / 1000.0), figure(metresPerGram)),
          "Yarn has 0.01 to 100 m to the gram; look at the band for grams and metres of a full ball");
    }
  }

  /** Three digits at least. */
  private static String figure(double number) {
    BigDecimal exact = BigDecimal.valueOf(number);
    int digits = Math.max(3, exact.precision() - exact.scale());
    return exact.round(new MathContext(digits)).stripTrailingZeros().toPlainString();
  }

  private void judgeUse(String name, Optional<YarnUse> use) {
    if (use.isPresent() && !doubted.test(name + ".yarn")) {
      unknownCode(use.get().yarn(), name + ".yarn", codes).ifPresent(mistakes::add);
    }
  }

  /** The yarns' codes; empty where the code of one is doubted, so that any may be right. */
  private static List<String> codes(Brief brief, Predicate<String> doubted) {
    boolean known = !doubted.test("yarns[0].code");
    for (int i = 1; i < brief.yarns().size(); i++) {
      known &= !doubted.test("yarns[" + i + "].code");
    }
    return known ? brief.yarns().stream().map(Yarn::code).toList() : List.of();
  }

  /**
   * The mistake of a code that no yarn has.
   *
   * @param codes all codes; empty where any may be right
   */
  static Optional<Mistake> unknownCode(String code, String path, Collection<String> codes) {
    if (codes.isEmpty() || codes.contains(code)) {
      return Optional.empty();
    }
    String remedy =
        Nearest.to(code, codes)
            .map(near -> "Maybe " + near + " is meant")
            .orElse("The yarns' codes are " + String.join(", ", codes));
    return Optional.of(new Mistake(path, 0, "No yarn has the code " + Words.quoted(code), remedy));
  }
}
