package lozengy.report.wording;

import java.util.List;
import java.util.OptionalInt;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.GroupedNames;
import lozengy.model.wording.WhereWords;
import lozengy.solver.explain.remedy.Relaxation;

/** What to do for a remedy, each in a clause that bids. */
final class RelaxationWords implements Relaxation.Cases<String> {

  private final Blanket blanket;

  RelaxationWords(Blanket blanket) {
    this.blanket = blanket;
  }

  /** Pieces by name, rows and runs put together. */
  static List<String> names(Blanket blanket, List<Integer> pieces) {
    return pieces.size() == 1
        ? List.of(Words.piece(blanket, pieces.get(0)))
        : GroupedNames.of(blanket.layout(), pieces.stream().map(blanket::place).toList());
  }

  @Override
  public String buyBalls(Relaxation.BuyBalls change) {
    return "buy "
        + lozengy.model.input.Words.count(change.balls(), "ball")
        + " of "
        + Words.yarn(blanket, change.yarn());
  }

  @Override
  public String buyLength(Relaxation.BuyLength change) {
    return "buy "
        + Words.metres(change.millimetres())
        + " of "
        + Words.yarn(blanket, change.yarn());
  }

  @Override
  public String freePieces(Relaxation.FreePieces change) {
    List<String> names = names(blanket, change.pieces());
    return "free " + Words.list(names) + (names.size() == 1 ? " of its lock" : " of their locks");
  }

  @Override
  public String workAnew(Relaxation.WorkAnew change) {
    String name = Words.piece(blanket, change.piece());
    return change.state() == PieceState.JOINED
        ? "take out " + name + " and work it anew"
        : "work " + name + " anew";
  }

  @Override
  public String liftBan(Relaxation.LiftBan change) {
    return "lift the ban of %s from %s".formatted(String.join(", ", change.codes()), change.at());
  }

  @Override
  public String giveUp(Relaxation.GiveUp change) {
    return "no longer ask that " + change.subject().in(new SubjectWords(blanket));
  }

  @Override
  public String dropSymmetry(Relaxation.DropSymmetry change) {
    return "give up the symmetry";
  }

  @Override
  public String freeBorders(Relaxation.FreeBorders change) {
    return "leave the borders free";
  }

  @Override
  public String dropZone(Relaxation.DropZone change) {
    return "give up the zone of " + String.join(", ", change.codes());
  }

  @Override
  public String letMeet(Relaxation.LetMeet change) {
    return "let " + change.first() + " and " + change.second() + " meet";
  }

  @Override
  public String askForFewer(Relaxation.AskForFewer change) {
    return let("only", change.atLeast()) + WhereWords.of(change.count());
  }

  @Override
  public String allowMore(Relaxation.AllowMore change) {
    return let("up to", change.atMost()) + WhereWords.of(change.count());
  }

  private static String let(String only, OptionalInt number) {
    return number.isEmpty() ? "let any number " : "let " + only + " " + number.getAsInt() + " ";
  }

  @Override
  public String allowTone(Relaxation.AllowTone change) {
    return "let round %d of a %s be %s too"
        .formatted(change.round() + 1, change.kind().word(), change.tone().word());
  }

  @Override
  public String edgeIn(Relaxation.EdgeIn change) {
    return "edge in " + Words.yarn(blanket, change.yarn());
  }

  @Override
  public String joinIn(Relaxation.JoinIn change) {
    return "join in " + Words.yarn(blanket, change.yarn());
  }

  @Override
  public String dropEdging(Relaxation.DropEdging change) {
    return "leave the edging out";
  }

  @Override
  public String leavePieces(Relaxation.LeavePieces change) {
    return "leave %d of the pile's %s in %s out"
        .formatted(
            change.fewer(),
            Phrases.count(change.entry().count(), change.entry().kind()),
            String.join(", ", change.entry().rounds()));
  }

  @Override
  public String workFewerRows(Relaxation.WorkFewerRows change) {
    return "work " + lozengy.model.input.Words.count(change.rows(), "row") + " less";
  }

  @Override
  public String lowerContrast(Relaxation.LowerContrast change) {
    return "lower min-contrast to " + Words.number(change.minContrast());
  }

  @Override
  public String raiseCopies(Relaxation.RaiseCopies change) {
    return change.copies().isEmpty()
        ? "let any number of pieces share a sequence"
        : "let " + change.copies().getAsInt() + " pieces share a sequence";
  }

  @Override
  public String letRoundsMatch(Relaxation.LetRoundsMatch change) {
    return change.within() == WithinPiece.FREE
        ? "let neighbouring rounds of a piece be alike"
        : "let rounds of a piece that do not touch be alike";
  }

  @Override
  public String keepLessBack(Relaxation.KeepLessBack change) {
    return change.percent() == 0
        ? "keep nothing back"
        : "keep only " + Words.number(change.percent()) + " % back";
  }
}
