package lozengy.cli.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.cli.process.Refusal;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.NearestSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.model.unit.Units;
import lozengy.model.yarn.Sized;
import lozengy.report.Figures;

/**
 * Sizes that are asked for: {@code lap}, {@code lap=4x6}, {@code lap=90x120cm} or {@code
 * lap=36x48in}.
 */
final class SizeWish {

  /** Finished sizes in cm, width and height: common practice, no source. */
  private static final Map<String, String> USUAL = new LinkedHashMap<>();

  static {
    USUAL.put("cushion", "40x40cm");
    USUAL.put("lap", "90x120cm");
    USUAL.put("throw", "130x170cm");
    USUAL.put("bed", "200x220cm");
  }

  private static final String FORMS =
      "Give a name and squares across x down, as lap=4x6, or a finished size, as lap=90x120cm or"
          + " lap=36x48in; "
          + String.join(", ", USUAL.keySet())
          + " alone stand for usual ones";

  private static final Pattern NAME = Pattern.compile("[\\p{Alnum}][\\p{Alnum}_-]{0,39}");
  private static final Pattern FORM =
      Pattern.compile(
          "(?:about )?\\s*(\\d{1,9}(?:\\.\\d{1,3})?)\\s*x\\s*(\\d{1,9}(?:\\.\\d{1,3})?)\\s*(cm|in)?");

  private SizeWish() {}

  /** The names of the usual sizes. */
  static List<String> usual() {
    return List.copyOf(USUAL.keySet());
  }

  /**
   * A brief in the sizes that are asked for, in their order.
   *
   * @param place what messages call them
   * @throws Refusal with all mistakes: what is no size, a name given twice, a size that no layout
   *     comes near or that the brief cannot have
   */
  static List<Sized> of(Brief brief, List<String> wishes, String place) {
    List<Mistake> mistakes = new ArrayList<>();
    Map<String, Sized> sizes = new LinkedHashMap<>();
    for (String wish : wishes) {
      int sign = wish.indexOf('=');
      String name = (sign < 0 ? wish : wish.substring(0, sign)).strip();
      String form = sign < 0 ? USUAL.getOrDefault(name, "") : wish.substring(sign + 1).strip();
      Matcher matcher = FORM.matcher(form);
      if (!NAME.matcher(name).matches() || !matcher.matches()) {
        mistakes.add(
            Mistake.ofWish(place, MistakeCode.MALFORMED.about(wish), "'" + wish + "'", FORMS));
      } else if (sizes.containsKey(name)) {
        mistakes.add(
            Mistake.ofWish(
                place,
                MistakeCode.NAMED_TWICE.about(name),
                "Two sizes are called '" + name + "'",
                "Give each a name of its own"));
      } else {
        layout(brief, wish, matcher, place, mistakes)
            .ifPresent(layout -> sizes.put(name, Sized.of(name, brief, layout)));
      }
    }
    sizes.values().forEach(each -> mistakes.addAll(mistakes(each, place)));
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
    return List.copyOf(sizes.values());
  }

  private static List<Mistake> mistakes(Sized size, String place) {
    return BriefJudge.mistakes(size.brief()).stream()
        .map(mistake -> mistake.at(BriefPath.of(place + " " + size.name()), 0))
        .toList();
  }

  private static Optional<LayoutSize> layout(
      Brief brief, String wish, Matcher form, String place, List<Mistake> mistakes) {
    LayoutSize like = brief.layout();
    if (form.group(3) == null) {
      try {
        return Optional.of(
            new LayoutSize(
                like.setting(),
                Integer.parseInt(form.group(1)),
                Integer.parseInt(form.group(2)),
                like.sideTriangles(),
                like.cornerTriangles()));
      } catch (IllegalArgumentException e) {
        mistakes.add(
            Mistake.ofWish(place, MistakeCode.MALFORMED.about(wish), "'" + wish + "'", FORMS));
        return Optional.empty();
      }
    }
    double unit = form.group(3).equals("in") ? Units.CM_PER_INCH.doubleValue() : 1;
    double widthCm = Double.parseDouble(form.group(1)) * unit;
    double heightCm = Double.parseDouble(form.group(2)) * unit;
    double sideCm = brief.motifs().get(PieceKind.SQUARE).edgeCm().orElseThrow();
    Optional<NearestSize> nearest =
        widthCm > 0 && heightCm > 0
            ? NearestSize.of(like, sideCm, widthCm, heightCm)
            : Optional.empty();
    if (nearest.filter(NearestSize::near).isEmpty()) {
      mistakes.add(notNear(wish, sideCm, nearest, place));
      return Optional.empty();
    }
    return nearest.map(NearestSize::size);
  }

  private static Mistake notNear(
      String wish, double sideCm, Optional<NearestSize> nearest, String place) {
    String found =
        nearest
            .map(
                each ->
                    "the nearest has "
                        + each.size().across()
                        + " x "
                        + each.size().down()
                        + " and measures "
                        + Figures.fixed(each.widthCm(), 1)
                        + " x "
                        + Figures.fixed(each.heightCm(), 1)
                        + " cm")
            .orElse("no blanket is planned with so many");
    return Mistake.ofWish(
        place,
        MistakeCode.NO_SIZE_NEAR.about(
            wish,
            nearest.map(NearestSize::widthCm).orElse(null),
            nearest.map(NearestSize::heightCm).orElse(null)),
        "No layout of squares of "
            + Figures.shortest(sideCm, 2)
            + " cm comes near '"
            + wish
            + "': "
            + found,
        "Ask for that, or for another size; squares across x down are taken as they are");
  }

  /** The blankets of sizes by their names. */
  static Map<String, Blanket> blankets(List<Sized> sizes) {
    Map<String, Blanket> blankets = new LinkedHashMap<>();
    sizes.forEach(each -> blankets.put(each.name(), Blanket.ofUnjudged(each.brief())));
    return blankets;
  }
}
