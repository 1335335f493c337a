package lozengy.model.brief;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.Map;
import lozengy.model.input.JsonText;
import lozengy.model.stitch.Stitch;
import lozengy.model.stitch.Terms;

/** Writes stitches and what turns them into yarn, as {@link StitchingReader} reads them. */
final class StitchingWriter {

  private StitchingWriter() {}

  /** Writes how many of each stitch a round has. */
  static void counts(JsonText json, StitchCounts stitches, Terms terms) throws IOException {
    json.field("stitches").mapping();
    for (Map.Entry<Stitch, Integer> each : stitches.counts().entrySet()) {
      json.field(each.getKey().abbreviation(terms)).number(each.getValue());
    }
    json.endMapping();
  }

  /** Writes what turns stitches into yarn, where anything is told. */
  static void write(JsonText json, Stitching stitching) throws IOException {
    if (stitching.tellsNothing()) {
      return;
    }
    json.field("stitches").tallMapping();
    json.field("terms").text(stitching.terms().word());
    if (stitching.yarnWeight().isPresent()) {
      json.field("yarn-weight").text(stitching.yarnWeight().get().word());
    }
    if (stitching.hookMillimetres().isPresent()) {
      String hook = JsonText.shortest(stitching.hookMillimetres().get());
      json.field("hook").text(hook + " mm");
    }
    if (!stitching.perStitchMillimetres().isEmpty()) {
      json.field("per-stitch").mapping();
      for (Map.Entry<Stitch, BigDecimal> each : stitching.perStitchMillimetres().entrySet()) {
        json.field(each.getKey().abbreviation(stitching.terms())).text(cm(each.getValue()));
      }
      json.endMapping();
    }
    json.field("tail").text(cm(stitching.tailMillimetres()));
    if (!stitching.samples().isEmpty()) {
      json.field("samples").tallList();
      for (Sample sample : stitching.samples()) {
        sample(json, sample);
      }
      json.endList();
    }
    if (stitching.variesPercent().isPresent()) {
      json.field("varies").text(JsonText.shortest(stitching.variesPercent().get()) + " %");
    }
    if (stitching.perMinute().isPresent()) {
      json.field("per-minute").number(stitching.perMinute().get());
    }
    if (!stitching.handPercent().equals(Stitching.AS_RECKONED)) {
      json.field("hand").text(JsonText.shortest(stitching.handPercent()) + " %");
    }
    json.endMapping();
  }

  private static void sample(JsonText json, Sample sample) throws IOException {
    json.mapping().field("of").text(sample.of().word());
    if (!sample.rounds().isEmpty()) {
      json.field("rounds").list();
      for (int round : sample.rounds()) {
        json.number(round);
      }
      json.endList();
    }
    json.field("count").number(sample.count());
    json.field("takes").list();
    for (YarnAmount amount : sample.takes()) {
      json.text(BriefWriter.amount(amount));
    }
    json.endList();
    if (!sample.yarns().isEmpty()) {
      json.field("yarn").list();
      for (String code : sample.yarns()) {
        json.text(code);
      }
      json.endList();
    }
    json.endMapping();
  }

  /** A length in cm, as files state it. */
  static String cm(BigDecimal millimetres) {
    return JsonText.shortest(millimetres.movePointLeft(1)) + " cm";
  }
}
