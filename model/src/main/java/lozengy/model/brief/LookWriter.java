package lozengy.model.brief;

import java.io.IOException;
import java.util.List;
import lozengy.model.input.JsonText;

/** Writes the look that a brief asks for; nothing where it asks for none. */
final class LookWriter {

  private final JsonText json;

  private LookWriter(JsonText json) {
    this.json = json;
  }

  /**
   * @param always whether it is written where it asks for nothing, too
   */
  static void write(JsonText json, Look look, boolean always) throws IOException {
    if (always || !look.asksNothing()) {
      new LookWriter(json).look(look);
    }
  }

  private void look(Look look) throws IOException {
    json.field("look").tallMapping();
    if (look.symmetry() != Symmetry.NONE) {
      json.field("symmetry").text(look.symmetry().word());
    }
    contrast(look.contrast());
    if (!look.borders().isEmpty()) {
      json.field("borders");
      BriefWriter.codes(json, look.borders());
    }
    if (!look.zones().isEmpty()) {
      json.field("zones").tallList();
      for (Look.Zone zone : look.zones()) {
        json.mapping();
        where(zone.where());
        json.field("only");
        BriefWriter.codes(json, zone.only());
        json.endMapping();
      }
      json.endList();
    }
    if (!look.apart().isEmpty()) {
      json.field("apart").tallList();
      for (Look.Pair pair : look.apart()) {
        if (pair.on() != Look.Meeting.SEAMS) {
          json.mapping().field("yarns");
        }
        BriefWriter.codes(json, List.of(pair.first(), pair.second()));
        if (pair.on() != Look.Meeting.SEAMS) {
          json.field("on").text(pair.on().word());
          json.endMapping();
        }
      }
      json.endList();
    }
    if (!look.counts().isEmpty()) {
      json.field("counts").tallList();
      for (Look.Count count : look.counts()) {
        count(count);
      }
      json.endList();
    }
    if (look.fade().isPresent()) {
      Fade fade = look.fade().get();
      json.field("fade").mapping();
      json.field("towards").text(fade.towards().word());
      json.field("order");
      if (fade.order() == Fade.Order.STATED) {
        BriefWriter.codes(json, fade.yarns());
      } else {
        json.text(fade.order().word());
      }
      where(fade.where());
      json.endMapping();
    }
    if (look.order().isPresent()) {
      json.field("order").text(look.order().get().word());
    }
    json.endMapping();
  }

  private void contrast(Look.Contrast contrast) throws IOException {
    if (contrast.between() != contrast.within()) {
      json.field("contrast").mapping();
      json.field("between").number(contrast.between());
      json.field("within").number(contrast.within());
      json.endMapping();
    } else if (contrast.between() != Look.LIVELY) {
      json.field("contrast").number(contrast.between());
    }
  }

  private void count(Look.Count count) throws IOException {
    json.mapping();
    json.field("yarn").text(count.yarn());
    where(count.where());
    if (count.atLeast() > 0 || count.atMost().isEmpty()) {
      json.field("at-least").number(count.atLeast());
    }
    if (count.atMost().isPresent()) {
      json.field("at-most").number(count.atMost().getAsInt());
    }
    json.endMapping();
  }

  private void where(Where where) throws IOException {
    json.field("at");
    BriefWriter.codes(json, where.at());
    json.field("rounds");
    if (where.rounds().isEmpty()) {
      json.text("all");
      return;
    }
    json.list();
    for (int round : where.rounds()) {
      if (round == Where.BORDER) {
        json.text("border");
      } else {
        json.number(round);
      }
    }
    json.endList();
  }
}
