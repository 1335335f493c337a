package lozengy.model.arrangement;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.input.FormatVersion;
import lozengy.model.input.JsonText;
import lozengy.model.layout.Place;

/**
 * Writes arrangements as JSON: the same bytes for the same arrangement, one piece a line, scores
 * with up to six decimals and metres to the millimetre. Streams, so that memory does not grow with
 * the pieces.
 */
public final class ArrangementWriter {

  private static final int SCORE_DECIMALS = Arrangement.Bound.DECIMALS;

  private final JsonText json;
  private final Blanket blanket;

  private ArrangementWriter(JsonText json, Blanket blanket) {
    this.json = json.with(blanket.brief().around().placed(itemNames(blanket)));
    this.blanket = blanket;
  }

  private static Map<String, List<String>> itemNames(Blanket blanket) {
    if (blanket.brief().around().fields().isEmpty()) {
      return Map.of();
    }
    List<String> pieces = blanket.layout().places().stream().map(Place::name).toList();
    return Map.of(
        "pieces", pieces, "earlier", pieces, "yarns", blanket.brief().itemNames().get("yarns"));
  }

  /**
   * Writes a file's content.
   *
   * @param out the stream, which is left open
   * @param arrangement the arrangement
   * @throws IOException if the stream fails
   */
  public static void write(OutputStream out, Arrangement arrangement) throws IOException {
    JsonText.write(out, json -> write(json, arrangement));
  }

  /**
   * Writes an arrangement as one value among others.
   *
   * @param json where it is written
   * @param arrangement the arrangement
   * @throws IOException if the stream fails
   */
  public static void write(JsonText json, Arrangement arrangement) throws IOException {
    new ArrangementWriter(json, arrangement.blanket()).write(arrangement);
  }

  /**
   * {@return the arrangement as a file's text}
   *
   * @param arrangement the arrangement
   */
  public static String text(Arrangement arrangement) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      write(bytes, arrangement);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /**
   * {@return what is known of an arrangement that may have open rounds, as a file's text: without a
   * score}
   *
   * @param blanket the brief made ready
   * @param sequences the yarns of its pieces
   */
  public static String text(Blanket blanket, Sequences sequences) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      JsonText.write(bytes, json -> new ArrangementWriter(json, blanket).write(sequences));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  private void write(Sequences sequences) throws IOException {
    begin(sequences);
    json.field("brief");
    BriefWriter.write(json, blanket.brief());
    json.endMapping();
  }

  private void begin(Sequences sequences) throws IOException {
    json.tallMapping();
    json.field("format")
        .text(FormatVersion.text(Arrangement.FORMAT, blanket.brief().around().newer()));
    json.field("title").text(blanket.brief().title());
    pieces(sequences);
    yarns(sequences);
  }

  private void write(Arrangement arrangement) throws IOException {
    begin(arrangement.sequences());
    score(arrangement);
    solved(json, arrangement.solved());
    if (arrangement.earlier().isPresent()) {
      earlier(arrangement.earlier().get());
    }
    DiaryWriter.write(json, arrangement);
    json.field("brief");
    BriefWriter.write(json, blanket.brief());
    json.endMapping();
  }

  private void pieces(Sequences sequences) throws IOException {
    json.field("pieces").tallList();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (Place place : blanket.layout().places()) {
      boolean fromPile = laid.holds(place.index());
      PieceState state = fromPile ? PieceState.MADE : blanket.state(place.index());
      json.mapping();
      json.field("at").text(place.name());
      json.field("kind").text(place.kind().word());
      json.field("state").text(state.word());
      if (blanket.partWorked(place.index())) {
        json.field("rounds_worked").number(blanket.roundsWorked(place.index()));
      }
      if (fromPile) {
        json.field("pile").flag(true);
      }
      rounds(sequences, place.index());
      json.field("x").number(place.x());
      json.field("y").number(place.y());
      json.endMapping();
    }
    json.endList();
  }

  private void rounds(Sequences sequences, int piece) throws IOException {
    json.field("rounds").list();
    for (int round = 0; round < sequences.rounds(piece); round++) {
      int yarn = sequences.yarn(piece, round);
      json.text(yarn == Sequences.OPEN ? Optional.empty() : Optional.of(blanket.yarn(yarn).code()));
    }
    json.endList();
  }

  private void yarns(Sequences sequences) throws IOException {
    long[] used = blanket.usedMillimetres(sequences);
    json.field("yarns").tallList();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      long stock = blanket.yarn(yarn).stockMillimetres();
      json.mapping();
      json.field("code").text(blanket.yarn(yarn).code());
      json.field("name").text(blanket.yarn(yarn).name());
      json.field("available_m").number(BigDecimal.valueOf(stock, 3));
      json.field("used_m").number(BigDecimal.valueOf(used[yarn], 3));
      json.field("left_m").number(BigDecimal.valueOf(stock - used[yarn], 3));
      json.endMapping();
    }
    json.endList();
  }

  private void score(Arrangement arrangement) throws IOException {
    json.field("score").mapping();
    json.field("total").rounded(Optional.of(arrangement.score().total()), SCORE_DECIMALS);
    json.field("parts").mapping();
    for (Part part : Part.OF_TOTAL) {
      Optional<Double> figure = Optional.ofNullable(arrangement.score().parts().get(part));
      if (figure.isPresent() || !part.onlyIfAsked()) {
        json.field(part.word()).rounded(figure, SCORE_DECIMALS);
      }
    }
    json.endMapping();
    Optional<Double> keep = Optional.ofNullable(arrangement.score().parts().get(Part.KEEP));
    json.field("keep").rounded(keep, SCORE_DECIMALS);
    json.field("objective").rounded(Optional.of(arrangement.score().objective()), SCORE_DECIMALS);
    bound(json, arrangement.bound());
    json.endMapping();
  }

  static void bound(JsonText json, Optional<Arrangement.Bound> bound) throws IOException {
    json.field("bound").rounded(bound.map(Arrangement.Bound::total), SCORE_DECIMALS);
    json.field("bound_proof").text(bound.map(Arrangement.Bound::proof));
    Optional<Double> objective = bound.flatMap(Arrangement.Bound::objective);
    if (objective.isPresent()) {
      json.field("objective_bound").rounded(objective, SCORE_DECIMALS);
    }
  }

  static void solved(JsonText json, Optional<Arrangement.Solved> found) throws IOException {
    json.field("solved");
    if (found.isEmpty()) {
      json.text(Optional.empty());
      return;
    }
    Arrangement.Solved solved = found.get();
    json.mapping();
    json.field("seed").number(solved.seed());
    json.field("moves").number(solved.moves());
    if (solved.walkers() != Arrangement.Solved.USUAL_WALKERS) {
      json.field("walkers").number(solved.walkers());
    }
    json.field("seconds");
    if (solved.seconds().isPresent()) {
      json.number((double) solved.seconds().get());
    } else {
      json.text(Optional.empty());
    }
    json.field("version").text(solved.version());
    json.field("proof").text(solved.proof());
    if (solved.choice().isPresent()) {
      json.field("choice").mapping();
      json.field("count").number(solved.choice().get().count());
      json.field("within_points").number(solved.choice().get().withinPoints());
      json.endMapping();
    }
    json.endMapping();
  }

  private void earlier(Sequences earlier) throws IOException {
    json.field("earlier").tallList();
    for (Place place : blanket.layout().places()) {
      json.mapping().field("at").text(place.name());
      rounds(earlier, place.index());
      json.endMapping();
    }
    json.endList();
  }
}
