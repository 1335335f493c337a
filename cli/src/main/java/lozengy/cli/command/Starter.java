package lozengy.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.colour.Tone;
import lozengy.model.input.SourceText;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefReader;
import lozengy.model.yarn.ToneDemand;
import lozengy.model.yarn.ToneNeeds;
import lozengy.model.yarn.YarnNeed;

/**
 * The brief to start from: a commented text in which only the layout and the balls at hand depend
 * on what is asked for. The balls are enough for the text's own recipes.
 */
final class Starter {

  private static final String TEXT = "starter.yaml";
  private static final int YARNS_PER_TONE = 4;

  /** So that shares, keep-back and leeway leave the search some choice. */
  private static final double PLENTY = 1.4;

  private static final double BALL_MILLIMETRES = 120_000;

  private Starter() {}

  /**
   * Writes the brief.
   *
   * @throws lozengy.model.input.InputException if a brief of that size would be refused
   */
  static String brief(Setting setting, int across, int down) {
    String sized = sized(setting, across, down);
    ToneNeeds needs =
        ToneNeeds.of(Blanket.of(BriefReader.read(source(stocked(sized, 0, Map.of())))));
    double fixed = needs.held().stream().mapToLong(YarnNeed::neededMillimetres).sum();
    Map<Tone, Double> byTone = new EnumMap<>(Tone.class);
    for (ToneDemand demand : needs.demands()) {
      double each = (double) demand.leastMillimetres() / demand.tones().size();
      demand.tones().forEach(tone -> byTone.merge(tone, each, Double::sum));
    }
    return stocked(sized, fixed, byTone);
  }

  private static SourceText source(String text) {
    return SourceText.of(TEXT, text);
  }

  private static String sized(Setting setting, int across, int down) {
    String marked = "[" + setting.word() + "]";
    return text()
        .lines()
        .map(line -> line.startsWith(marked) ? line.substring(marked.length()) : line)
        .filter(line -> !line.startsWith("["))
        .collect(Collectors.joining("\n", "", "\n"))
        .replace("{across}", Integer.toString(across))
        .replace("{down}", Integer.toString(down));
  }

  private static String stocked(String text, double fixed, Map<Tone, Double> byTone) {
    String stocked = text;
    for (Tone tone : Tone.values()) {
      double each = byTone.getOrDefault(tone, 0.0) / YARNS_PER_TONE;
      stocked =
          stocked
              .replace("{joining-" + tone.word() + "}", balls(each + fixed))
              .replace("{" + tone.word() + "}", balls(each));
    }
    return stocked;
  }

  private static String balls(double millimetres) {
    return Long.toString((long) Math.ceil(millimetres * PLENTY / BALL_MILLIMETRES));
  }

  private static String text() {
    try (InputStream in = Starter.class.getResourceAsStream(TEXT)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + TEXT, e);
    }
  }
}
