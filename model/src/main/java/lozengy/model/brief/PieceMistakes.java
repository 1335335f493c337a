package lozengy.model.brief;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import lozengy.model.input.Mistake;
import lozengy.model.input.Words;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Place;
import lozengy.model.layout.Setting;

/** Judges what a brief says of single pieces: names, codes, numbers of rounds, contradictions. */
final class PieceMistakes {

  private static final LayoutSize SMALLEST = new LayoutSize(Setting.ON_POINT, 1, 1, false, false);

  private final Brief brief;
  private final Predicate<String> doubted;
  private final Layout layout;
  private final Set<String> codes;

  /** By piece and round, the first code held and the note that holds it. */
  private final String[][] held;

  private final int[][] heldBy;
  private final List<Mistake> mistakes = new ArrayList<>();

  private PieceMistakes(Brief brief, Predicate<String> doubted, Layout layout, List<String> codes) {
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
      Brief brief, Predicate<String> doubted, boolean layoutKnown, List<String> codes) {
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

  private void add(String path, String found, String remedy) {
    mistakes.add(new Mistake(path, 0, found, remedy));
  }

  private void judgePlaces(int index) {
    PieceNote note = brief.pieces().get(index);
    String path = "pieces[" + index + "]";
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < note.at().size(); i++) {
      String name = note.at().get(i);
      String at = note.at().size() == 1 ? path + ".at" : path + ".at[" + i + "]";
      Optional<Place> place = layout.find(name);
      if (place.isEmpty()) {
        if (!doubted.test(at)) {
          add(
              at,
              "There is no piece " + Words.quoted(name),
              PieceNames.remedy(name, brief.layout()));
        }
      } else if (!seen.add(name)) {
        add(at, "The piece " + name + " is named twice", "Name it once");
      } else if (roundsFit(note, place.get(), path)) {
        hold(note, place.get(), index);
      }
    }
  }

  private void judgeCodes(int index) {
    PieceNote note = brief.pieces().get(index);
    String path = "pieces[" + index + "]";
    for (int round = 0; round < note.rounds().size(); round++) {
      String at = path + ".rounds[" + round + "]";
      note.rounds()
          .get(round)
          .flatMap(code -> BriefMistakes.unknownCode(code, at, codes))
          .ifPresent(mistakes::add);
    }
    int position = 0;
    for (String code : note.not()) {
      String at = note.not().size() == 1 ? path + ".not" : path + ".not[" + position + "]";
      BriefMistakes.unknownCode(code, at, codes).ifPresent(mistakes::add);
      position++;
    }
  }

  private boolean roundsFit(PieceNote note, Place place, String path) {
    Motif motif = brief.motifs().get(place.kind());
    int given = note.rounds().size();
    if (motif == null || given == 0 || doubted.test("motifs." + place.kind().word())) {
      return false;
    }
    int rounds = motif.rounds().size();
    if (given != rounds && !doubted.test(path + ".rounds")) {
      add(
          path + ".rounds",
          place.name() + " is given " + Words.count(given, "round"),
          "A "
              + place.kind().word()
              + " has "
              + Words.count(rounds, "round")
              + "; ~ leaves one open");
    }
    return given == rounds;
  }

  private void hold(PieceNote note, Place place, int index) {
    int piece = place.index();
    if (held[piece] == null) {
      held[piece] = new String[note.rounds().size()];
      heldBy[piece] = new int[note.rounds().size()];
    }
    for (int round = 0; round < note.rounds().size(); round++) {
      String code = note.rounds().get(round).orElse(null);
      String earlier = held[piece][round];
      if (code == null) {
        continue;
      }
      if (earlier == null) {
        held[piece][round] = code;
        heldBy[piece][round] = index;
      } else if (!earlier.equals(code)) {
        add(
            "pieces[" + index + "].rounds[" + round + "]",
            "Round "
                + (round + 1)
                + " of "
                + place.name()
                + " is held in "
                + code
                + " here and in "
                + earlier
                + " by pieces["
                + heldBy[piece][round]
                + "]",
            "Keep one of the two");
      }
    }
  }

  /** A worked piece must have all its rounds, by this note or another. */
  private void judgeWorked(int index) {
    PieceNote note = brief.pieces().get(index);
    String path = "pieces[" + index + "]";
    if (note.state() == PieceState.PLANNED || doubted.test(path)) {
      return;
    }
    for (String name : note.at()) {
      Optional<Place> place = layout.find(name);
      Motif motif = place.map(p -> brief.motifs().get(p.kind())).orElse(null);
      boolean unknown = motif == null || doubted.test("motifs." + place.get().kind().word());
      if (unknown || note.rounds().size() > 0 && note.rounds().size() != motif.rounds().size()) {
        continue;
      }
      String[] rounds = held[place.get().index()];
      int open = 0;
      while (rounds != null && open < rounds.length && rounds[open] != null) {
        open++;
      }
      if (rounds == null || open < rounds.length) {
        add(
            path + ".rounds",
            name + " is " + note.state().word() + " but its round " + (open + 1) + " is open",
            "Give all rounds of a worked piece");
      }
    }
  }
}
