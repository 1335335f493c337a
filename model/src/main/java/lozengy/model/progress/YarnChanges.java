package lozengy.model.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.NoteParts;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.input.BriefPath;
import lozengy.model.input.InputException;
import lozengy.model.input.MistakeCode;
import lozengy.model.layout.Place;

/** Does without a yarn, or puts another in its place. */
final class YarnChanges {

  private static final String ALL = "all";

  private YarnChanges() {}

  /**
   * A brief in which no planned piece may take a yarn and no round is meant for it.
   *
   * @throws InputException if there is no such yarn, or joining or edging still needs it
   */
  static Brief without(Brief brief, Change.Without wish) {
    int yarn = Selections.yarn(wish.place(), brief, wish.code());
    Blanket blanket = Blanket.ofUnjudged(brief);
    tellUse(
        wish,
        "The joining",
        BriefPath.of("joining"),
        brief.joiningInOneYarn(),
        blanket.fixedUse().joiningMillimetres());
    for (int i = 0; i < brief.edging().size(); i++) {
      Optional<YarnUse> use = Optional.of(brief.edging().get(i));
      tellUse(
          wish, "The edging", brief.edgingPath(i), use, blanket.fixedUse().edgingMillimetres(yarn));
    }
    return banned(withYarn(brief, yarn, old -> old.withShare(0)), wish.code());
  }

  private static void tellUse(
      Change.Without wish, String what, BriefPath where, Optional<YarnUse> use, long millimetres) {
    if (millimetres > 0 && use.filter(u -> u.yarn().equals(wish.code())).isPresent()) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.CONTRADICTS.about(wish.code(), where),
          what + " is in " + wish.code(),
          "Put another yarn in its place: swap " + wish.code() + " for it");
    }
  }

  /**
   * How things stand with one yarn in another's place: in the rounds of planned pieces, in locks,
   * in joining and edging, in the shares, and in what the look says of it.
   *
   * @throws InputException if there is no such yarn
   */
  static CurrentPlan swap(CurrentPlan current, Change.Swap wish) {
    Brief brief = current.brief();
    int from = Selections.yarn(wish.place(), brief, wish.from());
    int to = Selections.yarn(wish.place(), brief, wish.to());
    if (from == to) {
      throw Selections.wrong(
          wish.place(),
          MistakeCode.NOTHING_TO_CHANGE.about(wish.to()),
          wish.to() + " is the same yarn",
          "Name another to put in its place");
    }
    Blanket blanket = Blanket.ofUnjudged(brief);
    double share = brief.yarns().get(from).share();
    Brief swapped = withYarn(brief, to, old -> old.withShare(old.share() + share));
    swapped = withYarn(swapped, from, old -> old.withShare(0));
    if (begun(blanket, wish)) {
      swapped = withYarn(swapped, to, old -> counted(old, to, blanket, edged(brief, from)));
    }
    swapped =
        swapped
            .withJoining(
                brief
                    .joining()
                    .map(
                        joining ->
                            joining instanceof YarnUse use
                                ? swapped(use, wish, brief.yarns().get(from))
                                : joining))
            .withEdging(
                brief.edging().stream()
                    .map(use -> swapped(use, wish, brief.yarns().get(from)))
                    .toList());
    swapped = swapped.withPieces(notes(blanket, wish)).withLook(SwappedLook.of(blanket, wish));
    return new CurrentPlan(
        banned(swapped, wish.from()), current.sequences().map(s -> swapped(blanket, s, from, to)));
  }

  private static YarnUse swapped(YarnUse use, Change.Swap wish, Yarn from) {
    return use.yarn().equals(wish.from()) ? use.in(wish.to(), from.ball()) : use;
  }

  private static Sequences swapped(Blanket blanket, Sequences old, int from, int to) {
    Sequences swapped = old.copy();
    PilePlacement laid = PilePlacement.of(blanket, old);
    for (int piece = 0; piece < old.pieces(); piece++) {
      for (int round = 0; round < old.rounds(piece); round++) {
        if (round >= laid.roundsWorked(piece) && old.yarn(piece, round) == from) {
          swapped.set(piece, round, to);
        }
      }
    }
    return swapped;
  }

  /**
   * Notes that lock planned pieces to the new yarn, which is no longer banned; of worked pieces
   * nothing changes.
   */
  private static List<PieceNote> notes(Blanket blanket, Change.Swap wish) {
    Optional<String> from = Optional.of(wish.from());
    List<PieceNote> parted =
        NoteParts.loosened(
            blanket.layout(),
            blanket.brief().pieces(),
            (note, place) ->
                !note.anyWorked()
                    && note.rounds().contains(from)
                    && blanket.state(place.index()) != PieceState.PLANNED);
    List<PieceNote> notes = new ArrayList<>();
    parted.remove(ban(wish.to()));
    for (PieceNote note : parted) {
      if (note.state() != PieceState.PLANNED || !note.rounds().contains(from)) {
        notes.add(note);
        continue;
      }
      NoteParts parts =
          NoteParts.of(blanket.layout(), note, place -> blanket.roundsWorked(place.index()) > 0);
      if (!parts.others().isEmpty()) {
        notes.add(swapped(note.of(parts.others()), note.rounds(), 0, wish));
      }
      for (Place place : blanket.layout().select(parts.chosen())) {
        int worked = blanket.roundsWorked(place.index());
        List<Optional<String>> codes = note.codes(blanket.roundCount(place.index()));
        PieceNote whole =
            new PieceNote(note.at(), codes, false, note.state(), note.roundsWorked(), note.not());
        notes.add(swapped(whole.of(List.of(place.name())), codes, worked, wish));
      }
    }
    return notes;
  }

  /** A note with the other yarn in the rounds from one on. */
  private static PieceNote swapped(
      PieceNote note, List<Optional<String>> rounds, int from, Change.Swap wish) {
    List<Optional<String>> codes = new ArrayList<>(rounds);
    for (int round = from; round < codes.size(); round++) {
      if (codes.get(round).equals(Optional.of(wish.from()))) {
        codes.set(round, Optional.of(wish.to()));
      }
    }
    return new PieceNote(
        note.at(), codes, note.fromBorder(), note.state(), note.roundsWorked(), note.not());
  }

  /** Whether some of the joining or the edging is done in the yarn that goes. */
  private static boolean begun(Blanket blanket, Change.Swap wish) {
    Brief brief = blanket.brief();
    boolean joins =
        brief.joiningInOneYarn().filter(use -> use.yarn().equals(wish.from())).isPresent();
    boolean edges = brief.edging().stream().anyMatch(use -> use.yarn().equals(wish.from()));
    return joins && Worked.names(blanket, PieceState.JOINED).size() > 1
        || edges && edged(brief, blanket.yarnIndex(wish.from())) > 0;
  }

  private static double edged(Brief brief, int from) {
    return brief.yarns().get(from).counted().map(Counted::edgedPercent).orElse(0.0);
  }

  /**
   * The new yarn of joining or edging, counted as it must stand: what is joined or edged already
   * was so in the old one and must not count against it.
   */
  private static Yarn counted(Yarn old, int yarn, Blanket blanket, double edged) {
    boolean edges =
        blanket.brief().edging().stream().anyMatch(use -> use.yarn().equals(old.code()));
    Counted all =
        Worked.count(
            blanket,
            new YarnAmount.Length(old.stockMillimetres()),
            edges ? old.counted().map(Counted::edgedPercent).orElse(0.0) : edged);
    Blanket counted =
        Blanket.ofUnjudged(
            withYarn(blanket.brief(), yarn, each -> each.withCount(Optional.of(all))));
    // what the count settles of this yarn's own work comes off its stock
    long worked =
        blanket.usedMillimetres(blanket.locks())[yarn]
            - counted.usedMillimetres(blanket.locks())[yarn];
    long left = Math.max(0, old.stockMillimetres() - worked);
    return old.withCount(Optional.of(all.withLeft(new YarnAmount.Length(left))));
  }

  private static Brief withYarn(Brief brief, int yarn, UnaryOperator<Yarn> change) {
    List<Yarn> yarns = new ArrayList<>(brief.yarns());
    yarns.set(yarn, change.apply(yarns.get(yarn)));
    return brief.withYarns(yarns);
  }

  /** The brief with a yarn banned from all pieces. */
  private static Brief banned(Brief brief, String code) {
    PieceNote ban = ban(code);
    if (brief.pieces().contains(ban)) {
      return brief;
    }
    List<PieceNote> notes = new ArrayList<>(brief.pieces());
    notes.add(ban);
    return brief.withPieces(notes);
  }

  private static PieceNote ban(String code) {
    return new PieceNote(List.of(ALL), List.of(), PieceState.PLANNED, Set.of(code));
  }
}
