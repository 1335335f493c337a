package lozengy.report.wording;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.Subject;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;
import lozengy.model.wording.WhereWords;

/** What lines of a brief ask for, each in a clause. */
final class SubjectWords implements Subject.Cases<String> {

  private final Blanket blanket;

  SubjectWords(Blanket blanket) {
    this.blanket = blanket;
  }

  /** What there is of yarns of which there is the same. */
  String stocks(List<Subject.Stock> alike) {
    Subject.Stock first = alike.get(0);
    if (alike.size() == 1) {
      return stock(first);
    }
    return Phrases.yarns(blanket, alike.stream().map(Subject.Stock::yarn).toList())
        + " have "
        + amount(first)
        + " each";
  }

  @Override
  public String stock(Subject.Stock subject) {
    return blanket.yarn(subject.yarn()).gone()
        ? gone(new Subject.Gone(subject.yarn()))
        : Words.yarn(blanket, subject.yarn()) + " has " + amount(subject);
  }

  private static String amount(Subject.Stock subject) {
    String amount = Words.metres(subject.millimetres());
    return subject.settled() > 0
        ? amount + ", and had " + Words.metres(subject.settled()) + " worked when it was counted"
        : amount;
  }

  @Override
  public String joining(Subject.Joining subject) {
    return "joining takes " + of(subject.millimetres(), subject.yarn());
  }

  @Override
  public String joiningInBorders(Subject.JoiningInBorders subject) {
    return "borders' yarns take their seams, too";
  }

  @Override
  public String edging(Subject.Edging subject) {
    return "edging takes " + of(subject.millimetres(), subject.yarn());
  }

  private String of(long millimetres, int yarn) {
    return Words.metres(millimetres) + " of " + Words.yarn(blanket, yarn);
  }

  @Override
  public String keepBack(Subject.KeepBack subject) {
    return Words.number(subject.percent()) + " % of each yarn is kept back";
  }

  @Override
  public String tone(Subject.Tone subject) {
    String yarns =
        subject.yarns().isEmpty() ? "no yarn is" : Phrases.codes(blanket, subject.yarns());
    return "round %d of each %s is %s (%s)"
        .formatted(
            subject.round() + 1, subject.kind().word(), Phrases.tones(subject.tones()), yarns);
  }

  @Override
  public String lock(Subject.Lock subject) {
    return Words.piece(blanket, subject.piece()) + " is " + held(subject);
  }

  /** How a piece is held, and in which yarns: {@code locked: round 2 in Reed (REE)}. */
  String held(Subject.Lock subject) {
    List<String> rounds =
        subject.rounds().stream()
            .map(
                held ->
                    Words.round(blanket, subject.piece(), held.round())
                        + " in "
                        + Words.yarn(blanket, held.yarn()))
            .toList();
    String worked = subject.state() == PieceState.PLANNED ? "worked" : subject.state().word();
    String state = subject.worked() ? worked : "locked";
    return state + ": " + String.join(", ", rounds);
  }

  @Override
  public String ban(Subject.Ban subject) {
    return subject.at()
        + (subject.one() ? " takes no " : ": no ")
        + String.join(" or ", subject.codes());
  }

  @Override
  public String gone(Subject.Gone subject) {
    return Words.yarn(blanket, subject.yarn()) + " is gone";
  }

  @Override
  public String zone(Subject.Zone subject) {
    return "%s of %s: only %s"
        .formatted(
            WhereWords.rounds(subject.zone().where()),
            String.join(", ", subject.zone().where().at()),
            String.join(", ", subject.zone().only()));
  }

  @Override
  public String apart(Subject.Apart subject) {
    return subject.first()
        + " and "
        + subject.second()
        + switch (subject.on()) {
          case SEAMS -> " meet on no seam";
          case ROUNDS -> " are not side by side in a piece";
          case BOTH -> " meet on no seam and are not side by side in a piece";
        };
  }

  @Override
  public String lots(Subject.Lots subject) {
    return subject.shades().stream()
        .map(lots -> Words.list(lots.stream().map(yarn -> blanket.yarn(yarn).code()).toList()))
        .collect(Collectors.joining("; ", "dye lots of one shade (", ") do not meet"));
  }

  @Override
  public String givenBorders(Subject.GivenBorders subject) {
    return subject.codes().size() == 1
        ? "all borders are " + subject.codes().get(0)
        : "borders alternate between " + String.join(" and ", subject.codes());
  }

  @Override
  public String images(Subject.Images subject) {
    return subject.symmetry() == Symmetry.HALF_TURN
        ? "the blanket is the same after a half turn"
        : "the blanket is its own mirror image (" + subject.symmetry().word() + ")";
  }

  @Override
  public String differ(Subject.Differ subject) {
    return subject.part().word() + "s on a seam differ";
  }

  @Override
  public String contrast(Subject.Contrast subject) {
    return "borders on a seam are at least " + Words.number(subject.least()) + " apart in colour";
  }

  @Override
  public String within(Subject.Within subject) {
    return subject.within() == WithinPiece.ALL_DIFFER
        ? "all rounds of a piece differ"
        : "adjacent rounds of a piece differ";
  }

  @Override
  public String copies(Subject.Copies subject) {
    String shared =
        subject.most() == 1
            ? "no two pieces share a sequence"
            : "at most " + subject.most() + " pieces share a sequence";
    return subject.images() ? shared + ", images of each other counted as one" : shared;
  }

  @Override
  public String count(Subject.Count subject) {
    String least =
        subject.least()
            ? "at least " + subject.count().atLeast()
            : "at most " + subject.count().atMost().orElseThrow();
    return least + " " + WhereWords.of(subject.count());
  }

  @Override
  public String onPile(Subject.OnPile subject) {
    PieceKind kind = subject.kind();
    String also =
        subject.also().isEmpty()
            ? ""
            : subject.also().stream()
                .map(BriefPath::toString)
                .collect(Collectors.joining(" and ", ", those of ", " among them"));
    return "%s in %s to lay%s"
        .formatted(
            lozengy.model.input.Words.count(subject.count(), "finished " + kind.word()),
            Phrases.codes(blanket, subject.yarns()),
            also);
  }
}
