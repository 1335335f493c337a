package lozengy.model.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.Layout;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;

/** Judges whether a look fits the brief: its yarns and pieces are there, its rounds are worked. */
final class LookMistakes {

  private final Brief brief;
  private final Look look;
  private final Predicate<BriefPath> doubted;
  private final List<String> codes;
  private final List<Mistake> mistakes = new ArrayList<>();
  private Layout layout;

  private LookMistakes(Brief brief, Predicate<BriefPath> doubted, List<String> codes) {
    this.brief = brief;
    this.look = brief.look();
    this.doubted = doubted;
    this.codes = codes;
  }

  /**
   * Finds the mistakes; O(pieces that the look names).
   *
   * @param layoutKnown whether the layout can be laid out; if not, only codes are judged
   * @param codes the yarns' codes; empty where any may be right
   */
  static List<Mistake> of(
      Brief brief, Predicate<BriefPath> doubted, boolean layoutKnown, List<String> codes) {
    if (brief.look().asksNothing()) {
      return List.of();
    }
    LookMistakes found = new LookMistakes(brief, doubted, codes);
    found.layout = layoutKnown ? Layout.of(brief.layout()) : null;
    found.judgeCodes(brief.look().borders(), BriefPath.of("look", "borders"));
    found.judgeBorders();
    found.judgeBordersOfLots();
    found.judgePile();
    found.judgeZones();
    found.judgeApart();
    found.judgeCounts();
    brief.look().fade().ifPresent(found::judgeFade);
    return found.mistakes;
  }

  private void add(BriefPath path, Mistake.Sort sort, String found, String remedy) {
    add(new Mistake(path, 0, sort, found, remedy));
  }

  private void add(Mistake mistake) {
    if (!doubted.test(mistake.path())) {
      mistakes.add(mistake);
    }
  }

  /** A border that is given must suit the tones of the motifs' borders. */
  private void judgeBorders() {
    for (String code : look.borders()) {
      Optional<Yarn> yarn =
          brief.yarns().stream().filter(each -> each.code().equals(code)).findFirst();
      for (PieceKind kind : yarn.isEmpty() ? List.<PieceKind>of() : kindsLaid()) {
        Motif motif = brief.motifs().get(kind);
        Tone tone = brief.toneOf(yarn.get());
        int border = motif.rounds().size() - 1;
        if (!motif.rounds().get(border).tones().contains(tone)) {
          add(
              BriefPath.of("look", "borders"),
              MistakeCode.CONTRADICTS.about(
                  code, BriefPath.of("motifs", kind.word()).field("rounds").item(border)),
              code + " is " + tone.word() + ", which the border of a " + kind.word() + " is not",
              "Name another yarn, or let motifs."
                  + kind.word()
                  + ".rounds["
                  + border
                  + "] take it");
        }
      }
    }
  }

  /** Two borders that alternate meet everywhere, which lots of one shade must nowhere. */
  private void judgeBordersOfLots() {
    List<Integer> yarns =
        IntStream.range(0, brief.yarns().size())
            .filter(yarn -> look.borders().contains(brief.yarns().get(yarn).code()))
            .boxed()
            .toList();
    if (brief.rules().lotsApart()
        && yarns.size() == 2
        && Lots.of(brief.yarns()).differ(yarns.get(0), yarns.get(1))) {
      add(
          BriefPath.of("look", "borders"),
          MistakeCode.CONTRADICTS.about(look.borders(), BriefPath.of("rules", "lots")),
          String.join(" and ", look.borders()) + " are dye lots of one shade and would alternate",
          "Name yarns of two shades, or write rules.lots: free");
    }
  }

  private List<PieceKind> kindsLaid() {
    return brief.motifs().keySet().stream()
        .filter(kind -> !doubted.test(BriefPath.of("motifs", kind.word())))
        .filter(kind -> LargeLayout.count(brief, kind) > 0)
        .toList();
  }

  private void judgeZones() {
    for (int i = 0; i < look.zones().size(); i++) {
      BriefPath path = BriefPath.of("look", "zones").item(i);
      judgeCodes(look.zones().get(i).only(), path.field("only"));
      judgeWhere(look.zones().get(i).where(), path);
    }
  }

  private void judgeApart() {
    for (int i = 0; i < look.apart().size(); i++) {
      Look.Pair pair = look.apart().get(i);
      BriefPath path = BriefPath.of("look", "apart").item(i);
      judgeCodes(List.of(pair.first(), pair.second()), path);
      if (pair.on().seams() && look.borders().containsAll(List.of(pair.first(), pair.second()))) {
        add(
            path,
            MistakeCode.CONTRADICTS.about(
                List.of(pair.first(), pair.second()), BriefPath.of("look", "borders")),
            pair.first() + " and " + pair.second() + " alternate as borders",
            "Keep them apart, or let look.borders alternate, not both");
      }
    }
  }

  /** A count cannot ask for more pieces than it speaks of. */
  private void judgeCounts() {
    for (int i = 0; i < look.counts().size(); i++) {
      Look.Count count = look.counts().get(i);
      BriefPath path = BriefPath.of("look", "counts").item(i);
      judgeCodes(List.of(count.yarn()), path.field("yarn"));
      judgeWhere(count.where(), path);
      boolean named =
          layout != null
              && count.where().at().stream().noneMatch(name -> layout.select(name).isEmpty());
      long pieces =
          named
              ? layout.select(count.where().at()).stream()
                  .filter(p -> covers(count.where(), p))
                  .count()
              : 0;
      if (pieces > 0 && count.atLeast() > pieces) {
        add(
            path.field("at-least"),
            MistakeCode.OUT_OF_RANGE.about(count.atLeast(), null, pieces, "pieces"),
            "At least %d pieces are asked for, and only %d have such a round"
                .formatted(count.atLeast(), pieces),
            "Ask for no more than " + pieces + ", or name more pieces in at");
      }
    }
  }

  /** Pieces of a pile may lie anywhere, and their images would have to follow: not planned yet. */
  private void judgePile() {
    if (look.symmetry() != Symmetry.NONE && !brief.pile().isEmpty()) {
      add(
          BriefPath.of("look", "symmetry"),
          MistakeCode.CONTRADICTS.about(look.symmetry().word(), BriefPath.of("pile")),
          "There is a pile, and a piece of it goes only where no other must be its image",
          "Name their places, as state: made under pieces, and their images follow; or leave"
              + " look.symmetry out");
    }
  }

  private void judgeFade(Fade fade) {
    judgeCodes(fade.yarns(), BriefPath.of("look", "fade", "order"));
    judgeWhere(fade.where(), BriefPath.of("look", "fade"));
  }

  private void judgeCodes(List<String> named, BriefPath path) {
    for (int i = 0; i < named.size(); i++) {
      BriefPath at = path.itemOf(i, named.size());
      if (!doubted.test(at) && !doubted.test(path)) {
        BriefMistakes.unknownCode(named.get(i), at, codes).ifPresent(mistakes::add);
        if (named.subList(0, i).contains(named.get(i))) {
          add(
              at,
              MistakeCode.NAMED_TWICE.about(named.get(i)),
              named.get(i) + " is named twice",
              "Name another yarn, or leave one out");
        }
      }
    }
  }

  private void judgeWhere(Where where, BriefPath path) {
    if (layout == null) {
      return;
    }
    boolean known = true;
    for (int i = 0; i < where.at().size(); i++) {
      String name = where.at().get(i);
      if (layout.select(name).isEmpty()) {
        known = false;
        BriefPath at = path.field("at").itemOf(i, where.at().size());
        add(GroupNames.unknown(name, at, layout));
      }
    }
    if (known
        && !doubted.test(BriefPath.of("motifs"))
        && layout.select(where.at()).stream().noneMatch(p -> covers(where, p))) {
      add(
          path.field("rounds"),
          MistakeCode.OUT_OF_RANGE.about(where.rounds(), null, null, "rounds"),
          "None of these pieces has "
              + Words.plural(where.rounds().size(), "round")
              + " "
              + String.join(" and ", where.rounds().stream().map(String::valueOf).toList()),
          "Count the rounds from 1 at the centre, or write border");
    }
  }

  private boolean covers(Where where, Place place) {
    Motif motif = brief.motifs().get(place.kind());
    if (motif == null) {
      return true;
    }
    int rounds = motif.rounds().size();
    for (int round = 0; round < rounds; round++) {
      if (where.covers(round, rounds)) {
        return true;
      }
    }
    return false;
  }
}
