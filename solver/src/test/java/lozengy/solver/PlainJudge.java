package lozengy.solver;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Round;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.ColourDifference;
import lozengy.model.layout.Layout;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Place;

/**
 * Whether an arrangement is valid, once more, from what users are told: by the brief's own words,
 * for complete sequences of a brief without a pile. It takes over which pieces are images of each
 * other, and what of a stock is to be used.
 */
final class PlainJudge {

  private final Blanket blanket;
  private final Brief brief;
  private final Layout layout;
  private final List<Place> places;
  private final Sequences sequences;
  private final int[] worked;
  private final Set<Integer> joined = new HashSet<>();

  private PlainJudge(Blanket blanket, Sequences sequences) {
    this.blanket = blanket;
    this.brief = blanket.brief();
    this.layout = blanket.layout();
    this.places = layout.places();
    this.sequences = sequences;
    this.worked = new int[places.size()];
    for (PieceNote note : brief.pieces()) {
      for (Place place : layout.select(note.at())) {
        int piece = place.index();
        int rounds = sequences.rounds(piece);
        worked[piece] = Math.max(worked[piece], note.roundsWorked(rounds));
        if (note.state(rounds) == PieceState.JOINED) {
          joined.add(piece);
        }
      }
    }
  }

  static boolean valid(Blanket blanket, Sequences sequences) {
    PlainJudge judge = new PlainJudge(blanket, sequences);
    return judge.notesHold()
        && judge.roundsMayHaveWhatTheyHave()
        && judge.seamsHold()
        && judge.piecesHold()
        && judge.imagesAndCopiesHold()
        && judge.countsHold()
        && judge.nothingRunsOut();
  }

  /** The border that the look gives a place. */
  static String givenBorder(Brief brief, Place place) {
    List<String> borders = brief.look().borders();
    int step =
        switch (brief.layout().setting()) {
          case ON_POINT -> place.y();
          case STRAIGHT -> (place.x() + place.y()) / 2;
        };
    return borders.get((step + 1) % 2 % borders.size());
  }

  /** Whether all zones that speak of a round have a yarn among theirs. */
  static boolean zonesAllow(Brief brief, Layout layout, Place place, int round, String code) {
    int rounds = brief.motifs().get(place.kind()).rounds().size();
    return brief.look().zones().stream()
        .filter(zone -> layout.select(zone.where().at()).contains(place))
        .filter(zone -> zone.where().covers(round, rounds))
        .allMatch(zone -> zone.only().contains(code));
  }

  private Yarn yarn(int piece, int round) {
    return brief.yarns().get(sequences.yarn(piece, round));
  }

  private String code(int piece, int round) {
    return yarn(piece, round).code();
  }

  private int border(int piece) {
    return sequences.rounds(piece) - 1;
  }

  private boolean notesHold() {
    for (PieceNote note : brief.pieces()) {
      for (Place place : layout.select(note.at())) {
        int rounds = sequences.rounds(place.index());
        List<Optional<String>> codes = note.codes(rounds);
        for (int round = 0; round < rounds; round++) {
          String code = code(place.index(), round);
          boolean other = codes.get(round).isPresent() && !codes.get(round).get().equals(code);
          boolean banned = round >= worked[place.index()] && note.not().contains(code);
          if (other || banned) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean roundsMayHaveWhatTheyHave() {
    for (Place place : places) {
      List<Round> rounds = brief.motifs().get(place.kind()).rounds();
      for (int round = worked[place.index()]; round < rounds.size(); round++) {
        Yarn yarn = yarn(place.index(), round);
        boolean given = !brief.look().borders().isEmpty() && round == rounds.size() - 1;
        if (given && !yarn.code().equals(givenBorder(brief, place))
            || yarn.gone()
            || !rounds.get(round).tones().contains(brief.toneOf(yarn))
            || !zonesAllow(brief, layout, place, round, yarn.code())) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean seamsHold() {
    Pairs seams = layout.seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      int a = seams.first()[seam];
      int b = seams.second()[seam];
      if (joined.contains(a) && joined.contains(b)) {
        continue;
      }
      Yarn one = yarn(a, border(a));
      Yarn other = yarn(b, border(b));
      boolean given = hasGivenBorder(a) && hasGivenBorder(b);
      double difference =
          ColourDifference.ciede2000(
              blanket.yarns().lab(sequences.yarn(a, border(a))),
              blanket.yarns().lab(sequences.yarn(b, border(b))));
      if (!given && (one.equals(other) || difference < brief.rules().minContrast())
          || brief.rules().centresDiffer() && code(a, 0).equals(code(b, 0))
          || meetWrongly(one, other, true)) {
        return false;
      }
    }
    return true;
  }

  private boolean hasGivenBorder(int piece) {
    return !brief.look().borders().isEmpty()
        && code(piece, border(piece)).equals(givenBorder(brief, places.get(piece)));
  }

  private boolean meetWrongly(Yarn one, Yarn other, boolean onSeam) {
    Set<String> both = Set.of(one.code(), other.code().equals(one.code()) ? "" : other.code());
    boolean apart =
        brief.look().apart().stream()
            .filter(pair -> onSeam ? pair.on().seams() : pair.on().rounds())
            .map(pair -> Set.of(pair.first(), pair.second()))
            .anyMatch(both::equals);
    boolean lots =
        brief.rules().lotsApart() && !one.equals(other) && shade(one).equals(shade(other));
    return apart || lots;
  }

  private String shade(Yarn yarn) {
    return yarn.lotOf().isEmpty()
        ? yarn.code()
        : shade(
            brief.yarns().stream()
                .filter(each -> each.code().equals(yarn.lotOf().get()))
                .findFirst()
                .orElseThrow());
  }

  private boolean piecesHold() {
    WithinPiece within = brief.rules().withinPiece();
    for (int piece = 0; piece < places.size(); piece++) {
      for (int later = worked[piece]; later < sequences.rounds(piece); later++) {
        for (int round = 0; round < later; round++) {
          boolean beside = round == later - 1;
          boolean equal = code(piece, round).equals(code(piece, later));
          if (equal && (within == WithinPiece.ALL_DIFFER || beside && within != WithinPiece.FREE)
              || beside && meetWrongly(yarn(piece, round), yarn(piece, later), false)) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private boolean imagesAndCopiesHold() {
    Map<List<Integer>, int[]> alike = new HashMap<>();
    for (int lead : blanket.orbits().leads()) {
      List<Integer> sequence = Arrays.stream(sequences.of(lead)).boxed().toList();
      boolean finished = false;
      for (int image : blanket.orbits().members(lead)) {
        if (!Arrays.equals(sequences.of(image), sequences.of(lead))) {
          return false;
        }
        finished |= worked[image] == sequences.rounds(image);
      }
      int[] counts = alike.computeIfAbsent(sequence, each -> new int[2]);
      counts[0]++;
      counts[1] += finished ? 1 : 0;
    }
    int copies = brief.rules().copies().orElse(Integer.MAX_VALUE);
    return alike.values().stream().allMatch(of -> of[0] <= copies || of[0] == of[1]);
  }

  private boolean countsHold() {
    for (Look.Count count : brief.look().counts()) {
      int shown = 0;
      int made = 0;
      boolean planned = false;
      for (Place place : layout.select(count.where().at())) {
        int rounds = sequences.rounds(place.index());
        boolean shows = false;
        boolean fact = false;
        for (int round = 0; round < rounds; round++) {
          if (!count.where().covers(round, rounds)) {
            continue;
          }
          boolean isWorked = round < worked[place.index()];
          planned |= !isWorked;
          if (code(place.index(), round).equals(count.yarn())) {
            shows = true;
            fact |= isWorked;
          }
        }
        shown += shows ? 1 : 0;
        made += fact ? 1 : 0;
      }
      if (shown > Math.max(made, count.atMost().orElse(Integer.MAX_VALUE))
          || planned && shown < count.atLeast()) {
        return false;
      }
    }
    return true;
  }

  private boolean nothingRunsOut() {
    long[] used = PlainUse.millimetres(blanket, sequences);
    for (int yarn = 0; yarn < used.length; yarn++) {
      if (used[yarn] + blanket.fixedUse().millimetres(yarn)
          > blanket.yarns().usableMillimetres(yarn)) {
        return false;
      }
    }
    return true;
  }
}
