package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Documents;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.BriefDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Node;
import lozengy.model.layout.LayoutSize;
import lozengy.model.progress.Anchor;
import lozengy.model.progress.Change;
import picocli.CommandLine.Option;

/** The options that change what is asked for in the middle of the work. */
final class ChangeOptions {

  @Option(
      names = "--brief",
      paramLabel = "FILE",
      description =
          "With an arrangement: another brief to plan it by, such as the one it came from, changed"
              + " since; - is standard input. What is worked stays, and so does what was marked of"
              + " yarns.")
  private String brief;

  @Option(
      names = "--lock",
      paramLabel = "PIECES[=YARNS]",
      description =
          "Lock pieces, such as r3c2, row3 or outline, as they are planned; or to yarns, such as"
              + " r5c1=SND,REE,~,~,MUD, the centre first, ~ for an open round. After .. yarns count"
              + " from the border: top=..,MUD. Repeatable.")
  private List<String> locks = List.of();

  @Option(
      names = "--free",
      paramLabel = "PIECES",
      description = "Take the locks of pieces back; bans stay. Repeatable.")
  private List<String> frees = List.of();

  @Option(
      names = "--ban",
      paramLabel = "PIECES=YARNS",
      description = "Keep yarns out of pieces, such as triangles=PEA. Repeatable.")
  private List<String> bans = List.of();

  @Option(
      names = "--move",
      paramLabel = "PIECES",
      description =
          "Put made pieces that are not joined yet back on the pile, such as all: they may lie at"
              + " other places of their kind. Repeatable.")
  private List<String> moves = List.of();

  @Option(
      names = "--pile",
      paramLabel = "FILE",
      description =
          "Finished pieces that have no place yet, as CSV with the columns kind, count and rounds;"
              + " - is standard input.")
  private String pile;

  @Option(
      names = "--without",
      paramLabel = "YARN",
      description = "Use a yarn no more; what is worked in it stays. Repeatable.")
  private List<String> without = List.of();

  @Option(
      names = "--swap",
      paramLabel = "YARN=YARN",
      description =
          "Put a yarn in another's place in all that is still to be worked, such as REE=SND."
              + " Repeatable.")
  private List<String> swaps = List.of();

  @Option(
      names = "--across",
      paramLabel = "N",
      description = "Change the size: squares in the first row.")
  private Integer across;

  @Option(names = "--down", paramLabel = "N", description = "Change the size: rows.")
  private Integer down;

  @Option(
      names = "--anchor",
      paramLabel = "CORNER",
      description =
          "The corner that stays where it is when the size changes: top-left (if not said),"
              + " top-right, bottom-left or bottom-right.")
  private Anchor anchor;

  private Node briefRoot;

  /**
   * Sees to it that standard input is read once.
   *
   * @param source the file that is worked on
   * @throws Refusal if two of the file, the brief and the pile are to come from standard input
   */
  void expectOwnInput(Source source) {
    boolean pileThere = pile != null && new Source(pile).isStandardInput();
    boolean briefThere = brief != null && new Source(brief).isStandardInput();
    if (pileThere && source.isStandardInput()) {
      throw twice("--pile", "the file and the pile");
    }
    if (briefThere && (source.isStandardInput() || pileThere)) {
      throw twice("--brief", pileThere ? "the brief and the pile" : "the file and the brief");
    }
  }

  private static Refusal twice(String option, String both) {
    return Refusal.of(
        option,
        MistakeCode.CONTRADICTS.about("-", "FILE"),
        "Standard input cannot be both " + both,
        "Name a file for one");
  }

  /** Where the values of another brief stand in its file, once the changes have been read. */
  Optional<Node> briefRoot() {
    return Optional.ofNullable(briefRoot);
  }

  /**
   * The changes that are asked for.
   *
   * @param document what is asked for as it is
   * @param terminal where standard input comes from
   * @throws Refusal with all options that cannot be read
   */
  List<Change> changes(Document document, Terminal terminal) {
    List<Change> changes = new ArrayList<>();
    Brief asked = Inputs.blanket(document).brief();
    if (brief != null) {
      Change.Rebrief rebrief = rebrief(document, terminal);
      changes.add(rebrief);
      asked = rebrief.brief();
    }
    LayoutSize size = asked.layout();
    if (pile != null) {
      Source source = new Source(pile);
      String text = source.read(terminal).text();
      changes.add(new Change.Put("--pile " + pile, PileFile.read(source.label(), text, asked)));
    }
    for (String pieces : moves) {
      changes.add(new Change.Move("--move " + pieces, PieceLists.selectors(pieces)));
    }
    List<Mistake> mistakes = new ArrayList<>();
    resize(size, mistakes).ifPresent(changes::add);
    for (String swap : swaps) {
      Assigned.read("--swap", swap, "Name both yarns, such as REE=SND", mistakes)
          .ifPresent(read -> changes.add(new Change.Swap(read.place(), read.left(), read.right())));
    }
    for (String code : without) {
      changes.add(new Change.Without("--without " + code, code.strip()));
    }
    for (String pieces : frees) {
      changes.add(new Change.Free("--free " + pieces, PieceLists.selectors(pieces)));
    }
    for (String ban : bans) {
      Assigned.read("--ban", ban, "Name pieces and yarns, such as triangles=PEA", mistakes)
          .ifPresent(read -> changes.add(new Change.Hold(read.place(), ban(read))));
    }
    for (String lock : locks) {
      lock(lock, changes, mistakes);
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
    return changes;
  }

  private Change.Rebrief rebrief(Document document, Terminal terminal) {
    String place = "--brief " + brief;
    if (!(document instanceof ArrangementDocument plan)) {
      throw Refusal.of(
          place,
          MistakeCode.CONTRADICTS.about(brief, "FILE"),
          "There is no plan for it to change",
          "Name an arrangement before it, or plan this brief by itself");
    }
    Documents.Unjudged read = Inputs.readUnjudged(new Source(brief), terminal);
    if (!(read.document() instanceof BriefDocument another)) {
      throw Refusal.of(
          place,
          MistakeCode.WRONG_FORMAT.about(Arrangement.FORMAT, Brief.FORMAT),
          "This is an arrangement",
          "Name a brief");
    }
    briefRoot = read.root();
    return new Change.Rebrief(place, another.brief(), plan.arrangement().diary().yarns());
  }

  /** The options as they were given, to give them again. */
  List<String> arguments() {
    List<String> arguments = new ArrayList<>();
    if (brief != null) {
      arguments.addAll(List.of("--brief", brief));
    }
    locks.forEach(lock -> arguments.addAll(List.of("--lock", lock)));
    frees.forEach(free -> arguments.addAll(List.of("--free", free)));
    moves.forEach(pieces -> arguments.addAll(List.of("--move", pieces)));
    if (pile != null) {
      arguments.addAll(List.of("--pile", pile));
    }
    bans.forEach(ban -> arguments.addAll(List.of("--ban", ban)));
    without.forEach(code -> arguments.addAll(List.of("--without", code)));
    swaps.forEach(swap -> arguments.addAll(List.of("--swap", swap)));
    if (across != null) {
      arguments.addAll(List.of("--across", across.toString()));
    }
    if (down != null) {
      arguments.addAll(List.of("--down", down.toString()));
    }
    if (anchor != null) {
      arguments.addAll(List.of("--anchor", anchor.word()));
    }
    return arguments;
  }

  private Optional<Change> resize(LayoutSize size, List<Mistake> mistakes) {
    if (across == null && down == null) {
      if (anchor != null) {
        mistakes.add(
            Mistake.ofWish(
                "--anchor",
                MistakeCode.OPTION_MISSING.about("--across"),
                "The size does not change",
                "Give --across or --down with it"));
      }
      return Optional.empty();
    }
    int toAcross = across == null ? size.across() : across;
    int toDown = down == null ? size.down() : down;
    if (toAcross < 1 || toDown < 1) {
      mistakes.add(
          Mistake.ofWish(
              "--across, --down",
              MistakeCode.OUT_OF_RANGE.about(Math.min(toAcross, toDown), 1),
              toAcross + " across and " + toDown + " down",
              "Give whole numbers, 1 or more"));
      return Optional.empty();
    }
    String place = across == null ? "--down" : down == null ? "--across" : "--across, --down";
    return Optional.of(
        new Change.Resize(place, toAcross, toDown, anchor == null ? Anchor.TOP_LEFT : anchor));
  }

  private static PieceNote ban(Assigned ban) {
    return Notes.ban(PieceLists.selectors(ban.left()), PieceLists.selectors(ban.right()));
  }

  private static void lock(String lock, List<Change> changes, List<Mistake> mistakes) {
    if (!lock.contains("=")) {
      changes.add(new Change.Lock("--lock " + lock, PieceLists.selectors(lock)));
      return;
    }
    Assigned.read("--lock", lock, "Name yarns, such as r5c1=SND,REE,~,~,MUD", mistakes)
        .flatMap(read -> Notes.rounds(read, mistakes).map(n -> new Change.Hold(read.place(), n)))
        .ifPresent(changes::add);
  }
}
