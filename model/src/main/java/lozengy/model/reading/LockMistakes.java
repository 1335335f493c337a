package lozengy.model.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.check.Fault;
import lozengy.model.check.Ground;
import lozengy.model.check.Rule;
import lozengy.model.check.RuleBook;
import lozengy.model.check.RuleId;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.Place;
import lozengy.model.wording.FaultWords;

/** Judges whether what a brief holds of single pieces breaks a rule. */
final class LockMistakes {

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
    for (Rule rule : RuleBook.rules()) {
      if (!rule.judgesLocks()) {
        continue;
      }
      Map<List<Object>, List<Fault>> sorts = new LinkedHashMap<>();
      for (Fault fault : rule.faults(blanket, locks)) {
        int note = fault.pieces().stream().mapToInt(piece -> noteOf[piece]).max().orElse(-1);
        List<Object> sort =
            List.of(note, fault.ofAnyPieces(), of(blanket, fault), remedy(blanket, rule, fault));
        sorts.computeIfAbsent(sort, s -> new ArrayList<>()).add(fault);
      }
      sorts.forEach(
          (sort, faults) -> {
            BriefPath path =
                sort.get(0) instanceof Integer note && note >= 0
                    ? BriefPath.of("pieces").item(note).field("rounds")
                    : BriefPath.of("look");
            FaultWords wording = new FaultWords(blanket);
            for (List<Fault> told : wording.toldTogether(faults)) {
              String words = wording.together(told);
              mistakes.add(new Mistake(path, 0, data(blanket, told), words, (String) sort.get(3)));
            }
          });
    }
    return mistakes;
  }

  /** Of what sort the pieces of a fault are, where what is said of them depends on it. */
  private static List<Object> of(Blanket blanket, Fault fault) {
    if (fault.pieces().size() == 2 && fault.rule() != RuleId.SYMMETRY) {
      return List.of();
    }
    return fault.pieces().stream()
        .<Object>map(piece -> List.of(blanket.kind(piece), blanket.state(piece)))
        .toList();
  }

  /** What rule is broken, by which pieces and yarns. */
  private static Mistake.Sort data(Blanket blanket, List<Fault> faults) {
    Fault first = faults.get(0);
    List<String> pieces =
        faults.stream()
            .flatMap(fault -> fault.pieces().stream())
            .distinct()
            .map(piece -> blanket.place(piece).name())
            .toList();
    List<String> yarns = first.yarns().stream().map(y -> blanket.yarn(y).code()).toList();
    List<Integer> rounds = first.rounds().stream().map(r -> r + 1).toList();
    return MistakeCode.BREAKS_RULE.about(first.rule().word(), first.code(), pieces, rounds, yarns);
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

  private static String remedy(Blanket blanket, Rule rule, Fault fault) {
    boolean worked =
        fault.pieces().stream().allMatch(piece -> blanket.state(piece) != PieceState.PLANNED);
    return worked && fault.pieces().size() == 2 && clashes(blanket, rule)
        ? "Make one of them planned, to work it anew, or put one on the pile"
        : rule.insteadOfLock();
  }

  private static boolean clashes(Blanket blanket, Rule rule) {
    return rule.lines(blanket).stream()
        .anyMatch(line -> line.grounds(Ground.Clash.class).findAny().isPresent());
  }
}
