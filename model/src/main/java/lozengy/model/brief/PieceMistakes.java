package lozengy.model.brief;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;

/** Judges what a brief says of single pieces: names, codes, numbers of rounds, contradictions. */
final class PieceMistakes {

  private static final LayoutSize SMALLEST = new LayoutSize(Setting.ON_POINT, 1, 1, false, false);

  private final Brief brief;
  private final Predicate<BriefPath> doubted;
  private final Layout layout;
  private final Set<String> codes;

  /** By piece and round, the first code held and the note that holds it. */
  private final String[][] held;

  private final int[][] heldBy;
  private final List<Mistake> mistakes = new ArrayList<>();

  private PieceMistakes(
      Brief brief, Predicate<BriefPath> doubted, Layout layout, List<String> codes) {
    this.brief = brief;
    this.doubted = doubted;
    this.layout = layout;
    int pieces = layout.places().size();
    this.held = new String[pieces][];
    this.heldBy = new int[pieces][];
    this.codes = new LinkedHashSet<>(codes);
  }

  /**
   * Finds the mistakes; O(pieces + what the notes say).
   *
   * @param layoutKnown whether the layout can be laid out; if not, only codes are judged
   * @param codes the yarns' codes; empty where any may be right
   */
  static List<Mistake> of(
      Brief brief, Predicate<BriefPath> doubted, boolean layoutKnown, List<String> codes) {
    int notes = brief.pieces().size();
    if (notes == 0) {
      return List.of();
    }
    LayoutSize size = layoutKnown ? brief.layout() : SMALLEST;
    PieceMistakes judged = new PieceMistakes(brief, doubted, Layout.of(size), codes);
    for (int i = 0; i < notes; i++) {
      judged.judgeCodes(i);
      if (layoutKnown) {
        judged.judgePlaces(i);
      }
    }
    for (int i = 0; layoutKnown && i < notes; i++) {
      judged.judgeWorked(i);
    }
    return judged.mistakes;
  }

  private void add(BriefPath path, Mistake.Sort sort, String found, String remedy) {
    mistakes.add(new Mistake(path, 0, sort, found, remedy));
  }

  private void judgePlaces(int index) {
    PieceNote note = brief.pieces().get(index);
    BriefPath path = BriefPath.of("pieces").item(index);
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < note.at().size(); i++) {
      String name = note.at().get(i);
      BriefPath at = path.field("at").itemOf(i, note.at().size());
      if (layout.select(name).isEmpty()) {
        if (!doubted.test(at)) {
          mistakes.add(GroupNames.unknown(name, at, layout));
        }
      } else if (!seen.add(name)) {
        String kind = layout.find(name).isPresent() ? "The piece " : "";
        add(
            at,
            MistakeCode.NAMED_TWICE.about(name),
            kind + name + " is named twice",
            "Name it once");
      }
    }
    Set<PieceKind> judged = EnumSet.noneOf(PieceKind.class);
    for (Place place : layout.select(note.at())) {
      if (judged.add(place.kind())) {
        judgeRounds(note, place, path);
      }
      Motif motif = brief.motifs().get(place.kind());
      if (motif != null && !note.rounds().isEmpty() && note.fits(motif.rounds().size())) {
        hold(note, place, index);
      }
    }
  }

  private void judgeCodes(int index) {
    PieceNote note = brief.pieces().get(index);
    BriefPath path = BriefPath.of("pieces").item(index);
    for (int round = 0; round < note.rounds().size(); round++) {
      BriefPath at = path.field("rounds").item(round + (note.fromBorder() ? 1 : 0));
      note.rounds()
          .get(round)
          .flatMap(code -> BriefMistakes.unknownCode(code, at, codes))
          .ifPresent(mistakes::add);
    }
    int position = 0;
    for (String code : note.not()) {
      BriefPath at = path.field("not").itemOf(position, note.not().size());
      BriefMistakes.unknownCode(code, at, codes).ifPresent(mistakes::add);
      position++;
    }
  }

  /** Whether a note's rounds fit pieces of a kind, told at one of them. */
  private void judgeRounds(PieceNote note, Place place, BriefPath path) {
    Motif motif = brief.motifs().get(place.kind());
    int given = note.rounds().size();
    if (motif == null || given == 0 || doubted.test(BriefPath.of("motifs", place.kind().word()))) {
      return;
    }
    int rounds = motif.rounds().size();
    if (!note.fits(rounds) && !doubted.test(path.field("rounds"))) {
      add(
          path.field("rounds"),
          MistakeCode.WRONG_COUNT.about("rounds", given, rounds, rounds, place.name()),
          place.name() + " is given " + Words.count(given, "round"),
          "A "
              + place.kind().word()
              + " has "
              + Words.count(rounds, "round")
              + "; ~ leaves one open, and .. before the first counts from the border");
    }
  }

  private void hold(PieceNote note, Place place, int index) {
    int piece = place.index();
    List<Optional<String>> codes = note.codes(brief.motifs().get(place.kind()).rounds().size());
    if (held[piece] == null) {
      held[piece] = new String[codes.size()];
      heldBy[piece] = new int[codes.size()];
    }
    for (int round = 0; round < codes.size(); round++) {
      String code = codes.get(round).orElse(null);
      String earlier = held[piece][round];
      if (code == null) {
        continue;
      }
      if (earlier == null) {
        held[piece][round] = code;
        heldBy[piece][round] = index;
      } else if (!earlier.equals(code)) {
        add(
            BriefPath.of("pieces")
                .item(index)
                .field("rounds")
                .item(note.fromBorder() ? 1 + round - codes.size() + note.rounds().size() : round),
            MistakeCode.CONTRADICTS.about(
                code,
                List.of(earlier, BriefPath.of("pieces").item(heldBy[piece][round])),
                place.name(),
                round + 1),
            "Round "
                + (round + 1)
                + " of "
                + place.name()
                + " is held in "
                + code
                + " here and "
                + other(earlier, heldBy[piece][round], round, codes.size()),
            brief.pieces().get(heldBy[piece][round]).roundsWorked(codes.size()) <= round
                ? "Keep one of the two"
                : "Leave it out, or make the piece planned to work it anew");
      }
    }
  }

  private String other(String code, int by, int round, int count) {
    PieceNote note = brief.pieces().get(by);
    PieceState state = note.state(count);
    String worked = state == PieceState.PLANNED ? "worked" : state.word();
    return (note.roundsWorked(count) > round ? "is " + worked + " in " + code : "in " + code)
        + " by pieces["
        + by
        + "]";
  }

  /** A worked piece must have all its rounds, by this note or another. */
  private void judgeWorked(int index) {
    PieceNote note = brief.pieces().get(index);
    BriefPath path = BriefPath.of("pieces").item(index);
    if (!note.anyWorked() || doubted.test(path)) {
      return;
    }
    Set<PieceKind> beyond = EnumSet.noneOf(PieceKind.class);
    for (Place place : layout.select(note.at())) {
      Motif motif = brief.motifs().get(place.kind());
      boolean unknown = motif == null || doubted.test(BriefPath.of("motifs", place.kind().word()));
      if (unknown || !note.rounds().isEmpty() && !note.fits(motif.rounds().size())) {
        continue;
      }
      int count = motif.rounds().size();
      if (note.roundsWorked() > count) {
        if (beyond.add(place.kind())) {
          add(
              path.field("rounds-worked"),
              MistakeCode.OUT_OF_RANGE.about(note.roundsWorked(), 1, count),
              place.name() + " is given " + Words.count(note.roundsWorked(), "worked round"),
              "A " + place.kind().word() + " has " + Words.count(count, "round"));
        }
        continue;
      }
      String[] rounds = held[place.index()];
      int open = 0;
      while (rounds != null && open < rounds.length && rounds[open] != null) {
        open++;
      }
      int worked = note.roundsWorked(count);
      if (open < worked) {
        String state =
            worked < count
                ? " has " + Words.count(worked, "worked round")
                : " is " + note.state(count).word();
        add(
            path.field("rounds"),
            MistakeCode.ROUND_OPEN.about(place.name(), open + 1),
            place.name() + state + " but its round " + (open + 1) + " is open",
            worked < count
                ? "Give the yarns of all rounds that are worked"
                : "Give all rounds of a worked piece");
      }
    }
  }
}
