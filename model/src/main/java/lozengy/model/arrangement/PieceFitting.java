package lozengy.model.arrangement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.PieceNames;
import lozengy.model.brief.PieceState;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Located;
import lozengy.model.input.Mistake;
import lozengy.model.input.Mistake.Sort;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Words;
import lozengy.model.layout.Place;

/** Holds the pieces that a file lists against the layout: each must be there once, and fit. */
final class PieceFitting {

  private final Blanket blanket;
  private final Located list;
  private final Mistakes mistakes;
  private final Sequences sequences;
  private final StatedPiece[] listed;
  private final List<String> codes;

  private PieceFitting(Blanket blanket, Located list) {
    this.blanket = blanket;
    this.list = list;
    this.mistakes = list.mistakes();
    this.sequences = blanket.open();
    this.listed = new StatedPiece[blanket.pieceCount()];
    this.codes = blanket.brief().yarns().stream().map(yarn -> yarn.code()).toList();
  }

  /** Fits a list of pieces; what does not fit is a mistake. */
  static PieceFitting of(Blanket blanket, Located list, List<StatedPiece> pieces) {
    PieceFitting fitting = new PieceFitting(blanket, list);
    pieces.forEach(fitting::fit);
    fitting.tellMissing();
    return fitting;
  }

  /** By piece, its yarns. */
  Sequences sequences() {
    return sequences;
  }

  /** Tells where rounds that are worked by the brief are not as it says. */
  void tellWorked() {
    for (int piece = 0; piece < listed.length; piece++) {
      for (int round = 0; round < blanket.roundsWorked(piece); round++) {
        tellWorked(piece, round);
      }
    }
  }

  private void tellWorked(int piece, int round) {
    int worked = blanket.stated(piece, round);
    int yarn = sequences.yarn(piece, round);
    BriefPath step = BriefPath.of("rounds").item(round);
    if (yarn == worked || mistakes.doubt(step.in(path(piece)))) {
      return;
    }
    String name = blanket.place(piece).name();
    name +=
        blanket.partWorked(piece)
            ? " is worked to round " + blanket.roundsWorked(piece)
            : " is " + blanket.state(piece).word();
    if (yarn == Sequences.OPEN) {
      wrong(
          piece,
          step,
          MistakeCode.ROUND_OPEN.about(blanket.place(piece).name(), round + 1),
          name + " but its round " + (round + 1) + " is open",
          "Give all rounds that are worked");
    } else {
      String code = blanket.yarn(worked).code();
      wrong(
          piece,
          step,
          MistakeCode.DIFFERS_FROM_BRIEF.about(
              blanket.yarn(yarn).code(), code, blanket.place(piece).name(), round + 1),
          name + " in " + code + " by the brief, but here in " + blanket.yarn(yarn).code(),
          "Write " + code + "; what it was really worked in is for a mark to say");
    }
  }

  /** Tells where states, or what is of the pile, do not follow from the brief and the rounds. */
  void tellStates() {
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (int piece = 0; piece < listed.length; piece++) {
      if (listed[piece] == null) {
        continue;
      }
      String name = blanket.place(piece).name();
      PieceState state = laid.state(piece);
      boolean holds = laid.holds(piece);
      Optional<PieceState> stated = listed[piece].state();
      if (stated.isPresent() && stated.get() != state) {
        wrong(
            piece,
            BriefPath.of("state"),
            MistakeCode.DIFFERS_FROM_BRIEF.about(stated.get().word(), state.word(), name),
            name + " is stated to be " + stated.get().word(),
            "It is " + state.word() + " by the brief; a mark changes that");
      }
      int worked = blanket.partWorked(piece) ? blanket.roundsWorked(piece) : 0;
      Optional<Integer> rounds = listed[piece].roundsWorked();
      if (rounds.isPresent() && rounds.get() != worked) {
        wrong(
            piece,
            BriefPath.of("rounds_worked"),
            MistakeCode.DIFFERS_FROM_BRIEF.about(rounds.get(), worked, name),
            name + " is stated to have " + Words.count(rounds.get(), "worked round"),
            (worked == 0 ? "None is said of it" : "It has " + worked)
                + " by the brief; a mark changes that");
      }
      if (listed[piece].pile().isPresent() && listed[piece].pile().get() != holds) {
        wrong(
            piece,
            BriefPath.of("pile"),
            MistakeCode.DIFFERS_FROM_BRIEF.about(!holds, holds, name),
            name + " is stated " + (holds ? "not " : "") + "to be of the pile",
            (holds ? "A" : "No") + " piece of the brief's pile lies there");
      }
    }
  }

  /** Pieces whose lines leave a field out that follows from the rest, by the field's name. */
  Map<String, List<Integer>> leftOut() {
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    Map<String, List<Integer>> all = new LinkedHashMap<>();
    for (int piece = 0; piece < listed.length; piece++) {
      StatedPiece line = listed[piece];
      note(all, "kind", piece, line.kind().isPresent());
      note(all, "state", piece, line.state().isPresent());
      note(
          all,
          "rounds_worked",
          piece,
          line.roundsWorked().isPresent() || !blanket.partWorked(piece));
      note(all, "pile", piece, line.pile().isPresent() || !laid.holds(piece));
      note(all, "x", piece, line.x().isPresent());
      note(all, "y", piece, line.y().isPresent());
    }
    return all;
  }

  private static void note(
      Map<String, List<Integer>> all, String field, int piece, boolean stated) {
    if (!stated) {
      all.computeIfAbsent(field, each -> new ArrayList<>()).add(piece);
    }
  }

  private void fit(StatedPiece piece) {
    if (piece.at().isEmpty()) {
      return;
    }
    String name = piece.at().get();
    Optional<Place> found = blanket.layout().find(name);
    if (found.isEmpty()) {
      wrong(
          piece,
          "at",
          MistakeCode.UNKNOWN_PIECE.about(name),
          "There is no piece " + Words.quoted(name),
          PieceNames.remedy(name, blanket.brief().layout()));
      return;
    }
    Place place = found.get();
    if (listed[place.index()] != null) {
      wrong(
          piece,
          "at",
          MistakeCode.NAMED_TWICE.about(name),
          "The piece " + name + " is listed twice",
          "List each piece once");
      return;
    }
    listed[place.index()] = piece;
    String kind = place.kind().word();
    if (piece.kind().isPresent() && piece.kind().get() != place.kind()) {
      String stated = piece.kind().get().word();
      wrong(
          piece,
          "kind",
          MistakeCode.DIFFERS_FROM_BRIEF.about(stated, kind, name),
          name + " is stated to be a " + stated,
          "It is a " + kind);
    }
    tellCoordinate(piece, "x", piece.x(), place.x());
    tellCoordinate(piece, "y", piece.y(), place.y());
    rounds(piece, place);
  }

  private void tellCoordinate(StatedPiece piece, String axis, Optional<Integer> stated, int is) {
    if (stated.isPresent() && stated.get() != is) {
      String name = piece.at().orElseThrow();
      wrong(
          piece,
          axis,
          MistakeCode.DIFFERS_FROM_BRIEF.about(stated.get(), is, name),
          name + " is stated to lie at " + axis + " " + stated.get(),
          "It is " + is);
    }
  }

  private void rounds(StatedPiece piece, Place place) {
    int rounds = blanket.roundCount(place.index());
    String name = place.name();
    if (piece.rounds().size() != rounds) {
      if (!mistakes.doubt(piece.located().path().field("rounds"))) {
        wrong(
            piece,
            "rounds",
            MistakeCode.WRONG_COUNT.about("rounds", piece.rounds().size(), rounds, rounds, name),
            name + " is given " + Words.count(piece.rounds().size(), "round"),
            "A " + place.kind().word() + " has " + Words.count(rounds, "round"));
      }
      return;
    }
    for (int round = 0; round < rounds; round++) {
      Optional<String> code = piece.rounds().get(round);
      BriefPath path = BriefPath.of("rounds").item(round);
      if (code.isEmpty()) {
        continue;
      }
      BriefMistakes.unknownCode(code.get(), path, codes).ifPresent(piece.located()::add);
      int yarn = blanket.yarnIndex(code.get());
      if (yarn >= 0) {
        sequences.set(place.index(), round, yarn);
      }
    }
  }

  private void tellMissing() {
    int missing = 0;
    String first = "";
    for (int piece = 0; piece < listed.length; piece++) {
      if (listed[piece] == null) {
        first = missing++ == 0 ? blanket.place(piece).name() : first;
      }
    }
    if (missing > 0 && mistakes.none()) {
      String others = missing == 1 ? " is" : " and " + Words.count(missing - 1, "other") + " are";
      list.wrong(
          MistakeCode.WRONG_COUNT.about(
              "pieces", listed.length - missing, listed.length, listed.length),
          first + others + " not listed",
          "List each of the " + Words.count(listed.length, "piece") + " of the layout");
    }
  }

  private BriefPath path(int piece) {
    return listed[piece] == null ? list.path() : listed[piece].located().path();
  }

  private void wrong(int piece, BriefPath step, Sort sort, String found, String remedy) {
    if (listed[piece] == null) {
      list.wrong(sort, found, remedy);
    } else {
      wrong(listed[piece], step, sort, found, remedy);
    }
  }

  private void wrong(StatedPiece piece, String field, Sort sort, String found, String remedy) {
    wrong(piece, BriefPath.of(field), sort, found, remedy);
  }

  private void wrong(StatedPiece piece, BriefPath step, Sort sort, String found, String remedy) {
    piece.located().add(new Mistake(step, 0, sort, found, remedy));
  }
}
