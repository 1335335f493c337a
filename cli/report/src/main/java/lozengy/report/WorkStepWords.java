package lozengy.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.brief.YarnUse;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.making.MakeList;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;

/** Says what a step of the work is, in words and as data. */
public final class WorkStepWords {

  private final Blanket blanket;
  private final Sequences sequences;

  /** Words for the steps of a plan. */
  public WorkStepWords(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.sequences = sequences;
  }

  /**
   * What a step is, in a line: {@code Reed (REE), 12.4 m}, {@code strip 5, r6c2}, {@code join strip
   * 5, 3.2 m of MUD}.
   */
  public String title(WorkStep step) {
    if (step instanceof WorkStep.Work work) {
      MakeList.Task first = work.tasks().get(0);
      return work.strip().isPresent()
          ? "strip " + work.strip().getAsInt() + ", " + name(first.piece())
          : Words.yarn(blanket, yarn(first)) + ", " + Amount.metres(millimetres(step));
    }
    if (step instanceof WorkStep.Join join) {
      return "join strip " + join.strip() + joiningOf(step);
    }
    return "edge the outline" + edgingOf(step);
  }

  /** Which pieces are joined, and to what; a single column of squares may have no strip before. */
  private String joined(int number) {
    List<Strip> strips = Strips.of(blanket.layout());
    Strip strip = strips.get(number - 1);
    boolean single = strip.pieces().size() == 1;
    String names = strip.pieces().stream().map(Place::name).collect(Collectors.joining(", "));
    String pieces = single ? names : "its pieces from left to right: " + names;
    boolean meets = number > 1 && meet(strips.get(number - 2), strip);
    return pieces + (meets ? (single ? " to strip " : ", then to strip ") + (number - 1) : "");
  }

  private boolean meet(Strip before, Strip strip) {
    Set<Integer> ones = indices(before);
    Set<Integer> others = indices(strip);
    Pairs seams = blanket.layout().seams();
    return IntStream.range(0, seams.size())
        .anyMatch(
            seam ->
                ones.contains(seams.first()[seam]) && others.contains(seams.second()[seam])
                    || others.contains(seams.first()[seam]) && ones.contains(seams.second()[seam]));
  }

  private static Set<Integer> indices(Strip strip) {
    return strip.pieces().stream().map(Place::index).collect(Collectors.toSet());
  }

  private String joiningOf(WorkStep step) {
    return blanket.brief().joiningInBorders().isPresent()
        ? ", " + Amount.metres(millimetres(step)) + BlanketWords.IN_BORDERS
        : of(step, blanket.brief().joiningInOneYarn().orElse(null));
  }

  private String edgingOf(WorkStep step) {
    List<YarnUse> edging = blanket.brief().edging();
    if (edging.size() < 2) {
      return of(step, edging.isEmpty() ? null : edging.get(0));
    }
    List<String> yarns =
        edging.stream()
            .map(YarnUse::yarn)
            .filter(code -> blanket.fixedUse().edgingMillimetres(blanket.yarnIndex(code)) > 0)
            .toList();
    List<String> amounts = BlanketWords.edging(blanket, yarns);
    // a yarn that comes again has one amount for all its rounds, and so no single place among them
    return yarns.stream().distinct().count() < yarns.size()
        ? ", from the inside out in "
            + String.join(", then ", yarns)
            + ": "
            + String.join(" and ", amounts)
        : ", from the inside out: " + String.join(", then ", amounts);
  }

  private String of(WorkStep step, YarnUse use) {
    return use == null ? "" : ", " + Amount.metres(millimetres(step)) + " of " + use.yarn();
  }

  /** What a step holds, a line each: pieces by round, the rounds of one piece, pieces to join. */
  public List<String> lines(WorkStep step) {
    if (step instanceof WorkStep.Work work && work.strip().isPresent()) {
      return List.of(
          work.tasks().stream()
              .map(task -> WorkWords.round(blanket, task) + " " + Words.yarn(blanket, yarn(task)))
              .collect(Collectors.joining(", ")));
    }
    if (step instanceof WorkStep.Work work) {
      return WorkWords.lines(blanket, work.tasks()).stream()
          .map(line -> line.what() + ": " + String.join(", ", line.pieces()))
          .toList();
    }
    return step instanceof WorkStep.Join join ? List.of(joined(join.strip())) : List.of();
  }

  /** What {@code mark} is told when a step is done; empty of edging, which is told with a count. */
  public String mark(WorkSteps steps, WorkStep step) {
    if (step instanceof WorkStep.Join join) {
      return "--joined " + strips(join);
    }
    if (!(step instanceof WorkStep.Work work)) {
      return "";
    }
    MakeList.Task last = work.tasks().get(work.tasks().size() - 1);
    return switch (steps.order()) {
      case BALL -> "--step " + step.number();
      case STRIP -> "--made " + name(last.piece());
      case ROUND ->
          "--rounds "
              + String.join(",", names(work.tasks().stream().map(MakeList.Task::piece).toList()))
              + "="
              + (last.round() + 1);
    };
  }

  /** The strips that are joined once a join is done, as a selector. */
  private String strips(WorkStep.Join join) {
    int first = join.pieces().get(0);
    int from =
        Strips.of(blanket.layout()).stream()
            .filter(strip -> strip.pieces().contains(blanket.place(first)))
            .mapToInt(Strip::number)
            .findFirst()
            .orElseThrow();
    String last = "strip" + join.strip();
    return from == join.strip() ? last : "strip" + from + ".." + last;
  }

  /** Millimetres of yarn that a step takes. */
  public long millimetres(WorkStep step) {
    if (step instanceof WorkStep.Work work) {
      return work.tasks().stream()
          .mapToLong(
              task ->
                  blanket
                      .motifs()
                      .needMillimetres(blanket.kind(task.piece()), task.round(), yarn(task)))
          .sum();
    }
    return step instanceof WorkStep.Join join
        ? join.millimetres()
        : ((WorkStep.Edge) step).millimetres();
  }

  /** A step as data. */
  public Map<String, Object> data(WorkStep step) {
    List<Object> rounds = new ArrayList<>();
    List<String> joined = List.of();
    String does = "edge";
    if (step instanceof WorkStep.Work work) {
      does = "work";
      for (MakeList.Task task : work.tasks()) {
        rounds.add(
            Json.object(
                "at", name(task.piece()),
                "round", task.round() + 1,
                "yarn", PlainText.oneLine(blanket.yarn(yarn(task)).code())));
      }
    } else if (step instanceof WorkStep.Join join) {
      does = "join";
      joined = names(join.pieces());
    }
    return Json.object(
        "step", step.number(),
        "does", does,
        "metres", millimetres(step) / 1000.0,
        "rounds", rounds,
        "joined", joined);
  }

  private int yarn(MakeList.Task task) {
    return sequences.yarn(task.piece(), task.round());
  }

  private String name(int piece) {
    return blanket.place(piece).name();
  }

  private List<String> names(List<Integer> pieces) {
    return pieces.stream().map(this::name).toList();
  }
}
