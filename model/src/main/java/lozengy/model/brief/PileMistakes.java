package lozengy.model.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.Layout;
import lozengy.model.layout.PieceKind;

/** Judges whether the pile fits the brief: codes, numbers of rounds, and places of its kinds. */
final class PileMistakes {

  private final Brief brief;
  private final Predicate<BriefPath> doubted;
  private final List<String> codes;
  private final List<Mistake> mistakes = new ArrayList<>();

  private PileMistakes(Brief brief, Predicate<BriefPath> doubted, List<String> codes) {
    this.brief = brief;
    this.doubted = doubted;
    this.codes = codes;
  }

  /**
   * Finds the mistakes; O(pieces + what the notes and the pile say).
   *
   * @param layoutKnown whether the layout can be laid out; if not, only codes are judged
   * @param codes the yarns' codes; empty where any may be right
   */
  static List<Mistake> of(
      Brief brief, Predicate<BriefPath> doubted, boolean layoutKnown, List<String> codes) {
    PileMistakes judged = new PileMistakes(brief, doubted, codes);
    boolean certain = layoutKnown && !brief.pile().isEmpty();
    for (int i = 0; i < brief.pile().size(); i++) {
      judged.judge(i);
      certain &= !doubted.test(BriefPath.of("pile").item(i));
    }
    if (certain) {
      judged.judgeRoom();
    }
    return judged.mistakes;
  }

  private void judge(int index) {
    PileEntry entry = brief.pile().get(index);
    BriefPath path = BriefPath.of("pile").item(index);
    if (doubted.test(path)) {
      return;
    }
    for (int round = 0; round < entry.rounds().size(); round++) {
      BriefPath at = path.field("rounds").item(round);
      BriefMistakes.unknownCode(entry.rounds().get(round), at, codes).ifPresent(mistakes::add);
    }
    Motif motif = brief.motifs().get(entry.kind());
    String kind = entry.kind().word();
    if (motif != null
        && motif.rounds().size() != entry.rounds().size()
        && !doubted.test(BriefPath.of("motifs", kind))) {
      mistakes.add(
          new Mistake(
              path.field("rounds"),
              0,
              MistakeCode.WRONG_COUNT.about(
                  "rounds",
                  entry.rounds().size(),
                  motif.rounds().size(),
                  motif.rounds().size(),
                  kind),
              Words.count(entry.rounds().size(), "round") + verb(entry) + "given",
              "A " + kind + " has " + Words.count(motif.rounds().size(), "round")));
    }
    int position = 0;
    for (String code : entry.counted()) {
      BriefPath at = path.field("counted").itemOf(position, entry.counted().size());
      BriefMistakes.unknownCode(code, at, codes).ifPresent(mistakes::add);
      if (brief.yarns().stream().anyMatch(y -> y.code().equals(code) && y.counted().isEmpty())) {
        mistakes.add(
            new Mistake(
                at,
                0,
                MistakeCode.NOT_COUNTED.about(code),
                code + " was not counted",
                "Leave it out, or give its count"));
      }
      position++;
    }
  }

  private static String verb(PileEntry entry) {
    return entry.rounds().size() == 1 ? " is " : " are ";
  }

  /**
   * A kind of which the layout has no place. More pieces than places are no mistake: which stay out
   * is chosen when they are laid.
   */
  private void judgeRoom() {
    Layout layout = Layout.of(brief.layout());
    for (PieceKind kind : PieceKind.values()) {
      long pieces =
          brief.pile().stream()
              .filter(entry -> entry.kind() == kind)
              .mapToLong(PileEntry::count)
              .sum();
      if (pieces > 0 && layout.places().stream().noneMatch(place -> place.kind() == kind)) {
        mistakes.add(
            new Mistake(
                BriefPath.of("pile"),
                0,
                MistakeCode.WRONG_COUNT.about("pieces", pieces, null, 0, kind.word()),
                Words.count(pieces, kind.word())
                    + (pieces == 1 ? " is" : " are")
                    + " on the pile, and the layout has no place for them",
                "Take them off the pile, or change the layout"));
      }
    }
  }
}
