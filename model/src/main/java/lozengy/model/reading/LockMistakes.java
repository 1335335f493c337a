package lozengy.model.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.check.Rule;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.layout.Place;

/** Judges whether what a brief holds of single pieces breaks a rule. */
final class LockMistakes {

  /** Whether locks overdraw a yarn depends on the other rounds too: that is for a solver to say. */
  private static final Set<RuleId> NOT_OF_LOCKS = Set.of(RuleId.COMPLETE, RuleId.YARN_TOTALS);

  private LockMistakes() {}

  /**
   * Finds the mistakes of a brief whose parts fit together.
   *
   * @return the mistakes with their paths, in the brief's order
   */
  static List<Mistake> of(Brief brief) {
    if (brief.pieces().stream().allMatch(note -> note.rounds().isEmpty())
        && brief.look().borders().isEmpty()) {
      return List.of();
    }
    Blanket blanket = Blanket.ofUnjudged(brief);
    Sequences locks = blanket.locks();
    int[] noteOf = lastNotes(blanket);
    List<Mistake> mistakes = new ArrayList<>();
    for (Rule rule : Check.rules()) {
      if (NOT_OF_LOCKS.contains(rule.id())) {
        continue;
      }
      Map<List<Object>, List<Fault>> sorts = new LinkedHashMap<>();
      for (Fault fault : rule.faults(blanket, locks)) {
        int note = fault.pieces().stream().mapToInt(piece -> noteOf[piece]).max().orElse(-1);
        List<Object> sort = List.of(note, AlikeFaults.said(blanket, fault), remedy(blanket, fault));
        sorts.computeIfAbsent(sort, s -> new ArrayList<>()).add(fault);
      }
      sorts.forEach(
          (sort, faults) -> {
            BriefPath path =
                sort.get(0) instanceof Integer note && note >= 0
                    ? BriefPath.of("pieces").item(note).field("rounds")
                    : BriefPath.of("look");
            for (String words : AlikeFaults.words(blanket, faults)) {
              mistakes.add(new Mistake(path, 0, withoutPoint(words), (String) sort.get(2)));
            }
          });
    }
    return mistakes;
  }

  /** By piece, the last note that holds a round of it, or -1. */
  private static int[] lastNotes(Blanket blanket) {
    int[] noteOf = new int[blanket.pieceCount()];
    Arrays.fill(noteOf, -1);
    List<PieceNote> notes = blanket.brief().pieces();
    for (int i = 0; i < notes.size(); i++) {
      if (notes.get(i).rounds().isEmpty()) {
        continue;
      }
      for (Place place : blanket.layout().select(notes.get(i).at())) {
        noteOf[place.index()] = i;
      }
    }
    return noteOf;
  }

  private static String remedy(Blanket blanket, Fault fault) {
    boolean worked =
        fault.pieces().stream().allMatch(piece -> blanket.state(piece) != PieceState.PLANNED);
    if (worked && fault.rule() == RuleId.NEIGHBOUR_BORDERS) {
      return "Make one of them planned, to work it anew, or put one on the pile";
    }
    String hold = "Hold another yarn there";
    return switch (fault.rule()) {
      case BANS -> hold + ", or lift the ban";
      case TONES -> hold + ", or let the motif's round take its tone";
      case WITHIN_PIECE -> hold + ", or change within-piece";
      case SYMMETRY -> "Give both the same yarn, or change look.symmetry";
      case ZONES -> hold + ", or change the zone";
      case BORDERS -> hold + ", or change look.borders";
      case COUNTS -> hold + ", or change look.counts";
      case APART -> hold + ", or change look.apart";
      case COPIES -> hold + ", or raise copies";
      case PILE -> "Leave these places open, or take pieces off the pile";
      default -> hold;
    };
  }

  private static String withoutPoint(String words) {
    return words.endsWith(".") ? words.substring(0, words.length() - 1) : words;
  }
}
