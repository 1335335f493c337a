package lozengy.report.wording;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Fault;
import lozengy.model.check.Subject;
import lozengy.model.input.BriefPath;
import lozengy.model.wording.FaultWords;
import lozengy.solver.SolveResult;
import lozengy.solver.explain.argument.Reason;
import lozengy.solver.explain.argument.Refutation;
import lozengy.solver.explain.conflict.Conflict;
import lozengy.solver.explain.remedy.Relaxation;
import lozengy.solver.explain.remedy.Remedy;

/** English for what the solver finds out of a blanket. */
public final class Wording {

  /** Faults of the nearest attempt that are told. */
  private static final int MOST_FAULTS = 8;

  /** Fewer lines of a sort than this are told one by one. */
  private static final int FEW_LINES = 4;

  private final Blanket blanket;
  private final FaultWords faultWords;
  private final ReasonWords reasons;
  private final SubjectWords subjects;
  private final RelaxationWords changes;

  /**
   * Makes the words of a blanket.
   *
   * @param blanket what was asked for
   */
  public Wording(Blanket blanket) {
    this.blanket = blanket;
    this.faultWords = new FaultWords(blanket);
    this.reasons = new ReasonWords(blanket);
    this.subjects = new SubjectWords(blanket);
    this.changes = new RelaxationWords(blanket);
  }

  /** Why nothing fits, in sentences. */
  public List<String> of(SolveResult.Impossible impossible) {
    List<String> words = new ArrayList<>();
    impossible.refutations().forEach(refutation -> words.add(of(refutation)));
    impossible.conflict().ifPresent(conflict -> words.addAll(of(conflict)));
    return words;
  }

  /** What stood in the way of the nearest attempt, in sentences. */
  public List<String> of(SolveResult.Unfinished unfinished) {
    List<Fault> faults = unfinished.inTheWay();
    List<String> words =
        new ArrayList<>(faults.stream().limit(MOST_FAULTS).map(faultWords::of).toList());
    if (faults.size() > MOST_FAULTS) {
      words.add("and " + (faults.size() - MOST_FAULTS) + " more faults");
    }
    return words;
  }

  /** A reason why nothing fits, in a sentence. */
  public String of(Refutation refutation) {
    String words = of(refutation.reason());
    return refutation.left() > 0 ? words + "; and " + refutation.left() + " more like it" : words;
  }

  /** A reason why nothing fits, in a sentence. */
  public String of(Reason reason) {
    return reason.in(reasons);
  }

  /** A conflict in sentences: one for what its lines have in common, and one for each. */
  public List<String> of(Conflict conflict) {
    List<String> words = new ArrayList<>();
    words.add(
        conflict.lines().size() == 1
            ? "One line of the brief cannot hold by itself:"
            : head(conflict));
    conflict.lines().forEach(line -> words.add(line.path() + ": " + of(line.subject())));
    return words;
  }

  /** What the lines of a conflict have in common. */
  public String head(Conflict conflict) {
    if (conflict.lines().size() == 1) {
      return "This line of the brief cannot hold by itself:";
    }
    return conflict.minimal()
        ? "These lines of the brief cannot hold together; without any one of them the others"
            + " could:"
        : "These lines of the brief cannot hold together; perhaps not all of them matter:";
  }

  /** What a line of the brief asks for, in a clause. */
  public String of(Subject subject) {
    return subject.in(subjects);
  }

  /** Where lines of the brief stand in what was read. */
  public interface Places {

    /** The place of a line: {@code line 12, yarns[3]}. */
    String place(BriefPath path);

    /** The places of several lines in their order: {@code lines 27 to 34, yarns}. */
    String range(List<BriefLine> lines);

    /** The place of a field, without its line. */
    String path(BriefPath path);
  }

  /**
   * Lines of the brief, each with its place; what is said of many yarns, of many finished pieces,
   * or of many pieces by one note is said once.
   */
  public List<String> lines(List<BriefLine> lines, Places places) {
    List<String> words = new ArrayList<>();
    grouped(lines, Wording::sort)
        .values()
        .forEach(
            alike -> {
              if (alike.size() < FEW_LINES) {
                alike.forEach(
                    line -> words.add(places.place(line.path()) + ": " + of(line.subject())));
              } else if (alike.get(0).subject() instanceof Subject.Stock) {
                words.add(places.range(alike) + ": " + stocks(alike));
              } else {
                words.add(locks(alike, places));
              }
            });
    return words;
  }

  private static <T> Map<Object, List<T>> grouped(List<T> all, Function<T, Object> sort) {
    Map<Object, List<T>> groups = new LinkedHashMap<>();
    all.forEach(each -> groups.computeIfAbsent(sort.apply(each), s -> new ArrayList<>()).add(each));
    return groups;
  }

  /** What may be told together has the same sort; any other line has one of its own. */
  private static Object sort(BriefLine line) {
    if (line.subject() instanceof Subject.Stock) {
      return Subject.Stock.class;
    }
    if (line.subject() instanceof Subject.Lock lock) {
      return lock.worked() ? Subject.Lock.class : List.of(line.path().whole(), lock.rounds());
    }
    return line.path();
  }

  /** What there is of yarns, those of which there is the same together. */
  private String stocks(List<BriefLine> lines) {
    List<Subject.Stock> stocks =
        lines.stream().map(line -> (Subject.Stock) line.subject()).toList();
    return String.join(
        "; ",
        grouped(stocks, stock -> List.of(stock.millimetres(), stock.settled())).values().stream()
            .map(subjects::stocks)
            .toList());
  }

  private String locks(List<BriefLine> lines, Places places) {
    Subject.Lock first = (Subject.Lock) lines.get(0).subject();
    List<Integer> pieces =
        lines.stream().map(line -> ((Subject.Lock) line.subject()).piece()).toList();
    List<String> names = RelaxationWords.names(blanket, pieces);
    String are = Words.list(names) + (names.size() == 1 ? " is " : " are ");
    return first.worked()
        ? places.path(BriefPath.of("pieces")) + ": " + are + "worked, and stay so"
        : places.place(lines.get(0).path().whole()) + ": " + are + subjects.held(first);
  }

  /** What to do, in a clause that bids. */
  public String of(Relaxation change) {
    return change.in(changes);
  }

  /** A remedy in a sentence: what to do, and what is proved of it. */
  public String of(Remedy remedy) {
    List<String> steps = remedy.steps().stream().map(step -> of(step.change())).toList();
    return Phrases.capital(Words.list(steps))
        + proved(remedy).map(proof -> " (" + proof + ")").orElse("");
  }

  /** What is proved of a remedy beyond that it works; empty where nothing is. */
  public Optional<String> proved(Remedy remedy) {
    List<String> proved = new ArrayList<>();
    if (remedy.proof().fewestBalls()) {
      proved.add("no fewer balls do, proved");
    }
    if (remedy.proof().mildest()) {
      proved.add("less of a change does not do, proved");
    }
    for (Remedy.Instead instead : remedy.proof().instead()) {
      proved.add(instead(instead, remedy.proof().instead().size() > 1));
    }
    return proved.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", proved));
  }

  private String instead(Remedy.Instead instead, boolean several) {
    String others =
        "or as many of "
            + Phrases.either(blanket, instead.yarns())
            + (several ? " in place of " + blanket.yarn(instead.yarn()).code() : "");
    return instead.mixed() ? others + ", or mixed among them" : others;
  }

  /**
   * The new value of a step's field as a brief file writes it, or what to do with it; empty where
   * the whole field is to be left out.
   */
  public Optional<String> value(Remedy.Step step) {
    if (step.change() instanceof Relaxation.FreePieces free) {
      return Optional.of(leftOut(free.pieces(), free.whole(), held(free.bans(), false)));
    }
    if (step.change() instanceof Relaxation.WorkAnew anew) {
      return Optional.of(leftOut(List.of(anew.piece()), anew.whole(), held(anew.bans(), true)));
    }
    if (step.change() instanceof Relaxation.LiftBan ban) {
      return Optional.of(ban.whole() ? "leave it out" : "leave " + ban.at() + " out of it");
    }
    return step.value();
  }

  private static String held(boolean bans, boolean worked) {
    return bans ? "its rounds" + (worked ? " and its state" : "") : "it";
  }

  private String leftOut(List<Integer> pieces, boolean whole, String held) {
    return whole
        ? "leave " + held + " out"
        : "leave " + String.join(", ", RelaxationWords.names(blanket, pieces)) + " out of it";
  }

  /** Options of {@code solve} that do the same to an arrangement; none where there are none. */
  public List<String> options(Relaxation change) {
    if (change instanceof Relaxation.FreePieces free) {
      return List.of("--free", String.join(",", RelaxationWords.names(blanket, free.pieces())));
    }
    if (change instanceof Relaxation.WorkFewerRows rows) {
      return List.of("--down", Integer.toString(rows.down()));
    }
    return List.of();
  }
}
