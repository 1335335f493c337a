package lozengy.model.brief;

import java.io.IOException;
import lozengy.model.input.JsonText;

/** Writes a yarn of a brief. */
final class YarnWriter {

  private final JsonText json;

  YarnWriter(JsonText json) {
    this.json = json;
  }

  /** Writes a yarn as the next value. */
  void write(Yarn yarn) throws IOException {
    json.mapping();
    json.field("code").text(yarn.code());
    json.field("name").text(yarn.name());
    json.field("colour").text(yarn.colour().hex());
    json.field("balls").number(yarn.balls());
    if (yarn.left().isPresent()) {
      json.field("left").text(BriefWriter.amount(yarn.left().get()));
    }
    if (yarn.ball().isPresent()) {
      json.field("ball").mapping();
      json.field("grams").number(yarn.ball().get().grams());
      json.field("metres").number(BriefWriter.thousandths(yarn.ball().get().millimetres()));
      json.endMapping();
    }
    if (yarn.price().isPresent()) {
      json.field("price").text(price(yarn.price().get()));
    }
    json.field("share").number(yarn.share());
    if (yarn.statedTone().isPresent()) {
      json.field("tone").text(yarn.statedTone().get().word());
    }
    if (yarn.lotOf().isPresent()) {
      json.field("lot-of").text(yarn.lotOf().get());
    }
    if (yarn.gone()) {
      json.field("gone").flag(true);
    }
    if (yarn.counted().isPresent()) {
      counted(yarn.counted().get());
    }
    json.endMapping();
  }

  private void counted(Counted counted) throws IOException {
    json.field("counted").mapping();
    json.field("left").text(BriefWriter.amount(counted.left()));
    json.field("made");
    BriefWriter.codes(json, counted.made());
    json.field("joined");
    BriefWriter.codes(json, counted.joined());
    if (!counted.partWorked().isEmpty()) {
      json.field("part-worked").list();
      for (PartWorked part : counted.partWorked()) {
        json.mapping().field("rounds-worked").number(part.rounds());
        json.field("at");
        BriefWriter.codes(json, part.at());
        json.endMapping();
      }
      json.endList();
    }
    json.field("edged").text(BriefWriter.percent(counted.edgedPercent()));
    json.endMapping();
  }

  private static String price(Price price) {
    return JsonText.shortest(price.amount()) + " " + price.currency();
  }
}
