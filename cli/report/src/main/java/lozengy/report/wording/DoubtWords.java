package lozengy.report.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.reading.Doubt;
import lozengy.model.reading.Doubts;
import lozengy.model.unit.Units;

/** Asks about values of a brief that are hardly meant: each with its place, value and question. */
public final class DoubtWords implements Doubt.Cases<String> {

  private final Blanket blanket;

  private DoubtWords(Blanket blanket) {
    this.blanket = blanket;
  }

  /** What is doubtful of a brief, a sentence or two each, the place first. */
  public static List<String> of(Blanket blanket) {
    return Doubts.of(blanket).stream().map(doubt -> of(blanket, doubt)).toList();
  }

  /** A doubt in words, the place first. */
  public static String of(Blanket blanket, Doubt doubt) {
    return doubt.path() + ": " + doubt.in(new DoubtWords(blanket));
  }

  /** What is doubtful of a brief, for programs. */
  public static List<Map<String, Object>> data(Blanket blanket) {
    return Doubts.of(blanket).stream().map(doubt -> data(blanket, doubt)).toList();
  }

  /** A doubt for programs. */
  public static Map<String, Object> data(Blanket blanket, Doubt doubt) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("code", doubt.code());
    data.put("path", doubt.path().toString());
    data.put("words", doubt.in(new DoubtWords(blanket)));
    return data;
  }

  @Override
  public String edge(Doubt.Edge doubt) {
    double off = doubt.fit().trianglePercent();
    return String.format(
        Locale.ROOT,
        "The side triangle's long edge measures %s, and spans %s: it %s by %.0f %%. %s",
        Units.cmInWords(doubt.fit().measuredCm()),
        Units.cmInWords(doubt.fit().spanCm()),
        off < 0 ? "draws in" : "ruffles",
        Math.abs(off),
        doubt
            .meant()
            .map(unit -> "Is it " + unit + "?")
            .orElse("Is that its long edge, and is the square's side right?"));
  }

  @Override
  public String amount(Doubt.Amount doubt) {
    BigDecimal times =
        BigDecimal.valueOf(Math.max(doubt.millimetres(), doubt.besideMillimetres()))
            .divide(
                BigDecimal.valueOf(
                    Math.max(1, Math.min(doubt.millimetres(), doubt.besideMillimetres()))),
                0,
                RoundingMode.HALF_UP);
    boolean large = doubt.millimetres() > doubt.besideMillimetres();
    return "Round "
        + (doubt.round() + 1)
        + " of each "
        + doubt.kind().word()
        + " takes "
        + Words.metres(doubt.millimetres())
        + ", "
        + (large ? times + " times what" : "a " + times + "th of what")
        + " a round beside it takes ("
        + Words.metres(doubt.besideMillimetres())
        + "). Is its decimal point right?";
  }

  @Override
  public String count(Doubt.Count doubt) {
    return Words.yarn(blanket, doubt.yarn())
        + ": "
        + Words.metres(doubt.countedMillimetres())
        + " were counted, and "
        + Words.metres(doubt.boughtMillimetres())
        + " were bought. Is the count right, and its unit, or is a ball missing from the brief?";
  }

  @Override
  public String apart(Doubt.Apart doubt) {
    return String.format(
        Locale.ROOT,
        "The sample takes %.0f %% %s than the samples together make of its rounds. Is its amount"
            + " right, and its count, its rounds and the tail?",
        Math.abs(doubt.percent()),
        doubt.percent() < 0 ? "less" : "more");
  }

  @Override
  public String heavier(Doubt.Heavier doubt) {
    return "By its samples a "
        + doubt.smaller().word()
        + " takes "
        + Words.metres(doubt.smallerMillimetres())
        + ", and a "
        + doubt.larger().word()
        + ", which is larger, "
        + Words.metres(doubt.largerMillimetres())
        + ". Are the weights right, and the counts?";
  }

  @Override
  public String missing(Doubt.Missing doubt) {
    return "Many programs take "
        + doubt.codeOfYarn()
        + " in a table for a missing value. Would another code do?";
  }

  @Override
  public String newer(Doubt.Newer doubt) {
    return "This field is of a newer form than this program reads. It is kept, but plays no part"
        + " here. Is there a newer program?";
  }
}
