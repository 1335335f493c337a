package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Overtaken;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.Diary;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.WholeFile;
import lozengy.model.progress.Mark;
import lozengy.model.progress.Marked;
import lozengy.model.progress.MarkedArrangement;
import lozengy.report.Json;
import lozengy.report.mark.MarkReport;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Marks in an arrangement what has come about since it was planned. */
@Command(
    description = {
      "Marks in an arrangement what has come about: pieces that are made or joined, yarns that came"
          + " out otherwise than planned, and what is left of a yarn. So are single rounds, from the"
          + " centre out, and steps of the make list.",
      "",
      "The file is replaced, whole or not at all, if no other is named. What is marked is a fact:"
          + " it may break a rule, and 'lozengy check' then says so. Planning the rest again is for"
          + " 'lozengy solve'. Where lists overlap, the furthest counts: joined over made, made over"
          + " begun, begun over planned. --undo takes the last mark back, and again the one before:"
          + " up to 20 since it was planned.",
    },
    footer = {
      "",
      "Pieces: r3c2, top1, top-left; row3; strip2; squares, triangles, corners; top, right,",
      "bottom, left, outline; all; and ranges such as r3c1..r3c6, row1..row3, strip1..strip4.",
      "",
      "Examples:",
      "  lozengy mark throw.arrangement.json --joined strip1..strip4 --made r7c1..r7c4",
      "  lozengy mark throw.arrangement.json --worked r4c2=~,~,SND,~,~",
      "  lozengy mark throw.arrangement.json --step 1-3 --step 4=row1..row3",
      "  lozengy mark throw.arrangement.json --rounds squares=2 --left REE=85g --on 2025-11-20",
      "  lozengy mark throw.arrangement.json --hand counted",
      "  lozengy mark throw.arrangement.json --made - < finished.csv",
      "  lozengy mark throw.arrangement.json --undo"
    })
final class MarkCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FILE", description = "An arrangement; - is standard input.")
  private String file;

  @Mixin private MarkOptions options;

  @Option(
      names = "--undo",
      description =
          "Take the last mark back; what was before stands again. May be given again, up to 20 times.")
  private boolean undo;

  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  MarkCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (undo == options.any() || undo && options.dated()) {
      throw undo
          ? Refusal.of(
              "--undo",
              MistakeCode.CONTRADICTS.about("--undo"),
              "Other marks are given with it",
              "Take back first, then mark")
          : Refusal.of(
              "",
              MistakeCode.OPTION_MISSING.about(),
              "Nothing is to be marked",
              "Give --made, --joined, --planned, --rounds, --step, --worked, --left, --bought, --add,"
                  + " --lot, --gone, --uncount or --hand, or --undo");
    }
    Source source = new Source(file);
    if (source.isStandardInput() && options.readsStandardInput()) {
      throw Refusal.of(
          "standard input",
          MistakeCode.CONTRADICTS.about("-", "FILE"),
          "It cannot be both the arrangement and a list",
          "Name a file");
    }
    Optional<Mark> mark = undo ? Optional.empty() : Optional.of(options.mark(terminal));
    while (!done(source, mark)) {
      // another has changed the file since it was read: what it holds now is marked instead
    }
    return ExitCode.DONE.code();
  }

  /** Marks; false if another has changed the file meanwhile, which was left alone then. */
  private boolean done(Source source, Optional<Mark> mark) {
    Target target = output.targetOr(() -> usualTarget(source));
    target.expect();
    Arrangement before = Inputs.readComplete(source, terminal);
    MarkReport report = mark.isPresent() ? marked(before, mark.get()) : undone(source, before);
    if (report.nothingNew()) {
      tell(report, Optional.empty(), target);
      return true;
    }
    String text = ArrangementWriter.text(report.now());
    try {
      target.write(terminal, text.getBytes(StandardCharsets.UTF_8));
    } catch (Overtaken e) {
      if (!inPlace(source, target)) {
        throw e;
      }
      return false;
    }
    tell(report, target.file().map(Object::toString), target);
    return true;
  }

  private static boolean inPlace(Source source, Target target) {
    return !source.isStandardInput()
        && WholeFile.place(source.path()).equals(WholeFile.place(target.file().orElseThrow()));
  }

  private static MarkReport marked(Arrangement before, Mark mark) {
    MarkReader.refuseToCome(mark.on().orElseThrow(), before.diary().lastDay());
    Marked marked = MarkedArrangement.marked(before, mark);
    return MarkReport.of(before, MarkedArrangement.of(before, mark, marked), marked.overlapping());
  }

  private static MarkReport undone(Source source, Arrangement before) {
    return MarkReport.of(
        before,
        MarkedArrangement.undone(before)
            .orElseThrow(
                () ->
                    Refusal.of(
                        source.label(),
                        MistakeCode.NOTHING_TO_CHANGE.about(),
                        "There is no mark to take back",
                        "The last "
                            + Diary.MOST_TAKEN_BACK
                            + " marks can be, and none from before it was planned")),
        List.of());
  }

  private Target usualTarget(Source source) {
    return source.isStandardInput()
        ? Target.standardOutput()
        : new Target(Optional.of(source.path()), true);
  }

  private void tell(MarkReport report, Optional<String> written, Target target) {
    boolean toStandardOutput = target.file().isEmpty() && !report.nothingNew();
    if (json.wanted() && !toStandardOutput) {
      terminal.out().println(Json.result("mark-result", report.json(written)));
      return;
    }
    var words = toStandardOutput ? terminal.err() : terminal.out();
    report.lines(undo).forEach(words::println);
    written.ifPresent(path -> words.println("Wrote " + path));
  }
}
