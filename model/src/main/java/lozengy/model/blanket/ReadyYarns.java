package lozengy.model.blanket;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.ColourDifference;
import lozengy.model.colour.Lab;
import lozengy.model.colour.LabColours;
import lozengy.model.colour.SeenDifferences;
import lozengy.model.colour.Tone;
import lozengy.model.unit.Ratio;

/**
 * A brief's yarns made ready, by their indices: tones, colours and how they differ, and what may be
 * used of each. Takes O(yarns squared) to make. Immutable.
 */
public final class ReadyYarns {

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private final Brief brief;
  private final Map<String, Integer> index = new HashMap<>();
  private final Tone[] tones;
  private final Lab[] labs;
  private final double[][] differences;
  private final long[] usable;
  private SeenDifferences seen;

  ReadyYarns(Brief brief) {
    this.brief = brief;
    List<Yarn> yarns = brief.yarns();
    int count = yarns.size();
    this.tones = new Tone[count];
    this.labs = new Lab[count];
    this.usable = new long[count];
    for (int yarn = 0; yarn < count; yarn++) {
      Yarn each = yarns.get(yarn);
      index.put(each.code(), yarn);
      labs[yarn] = LabColours.of(each.colour());
      tones[yarn] = brief.toneOf(each);
      usable[yarn] = usable(each.stock(), brief.rules().keepBackPercent());
    }
    this.differences = differences(labs);
  }

  private static long usable(Ratio stock, double keepBackPercent) {
    BigDecimal percent = HUNDRED.subtract(BigDecimal.valueOf(keepBackPercent));
    return stock.times(percent).dividedBy(HUNDRED).up();
  }

  private static double[][] differences(Lab[] labs) {
    double[][] differences = new double[labs.length][labs.length];
    for (int a = 0; a < labs.length; a++) {
      for (int b = 0; b < a; b++) {
        differences[a][b] = ColourDifference.ciede2000(labs[a], labs[b]);
        differences[b][a] = differences[a][b];
      }
    }
    return differences;
  }

  /** How many. */
  int count() {
    return tones.length;
  }

  /** Index of each by its code; not to be changed. */
  Map<String, Integer> index() {
    return index;
  }

  /**
   * {@return the tone of a yarn, stated or by its lightness}
   *
   * @param yarn the yarn's index, from 0
   */
  public Tone tone(int yarn) {
    return tones[yarn];
  }

  /**
   * {@return a yarn's colour in CIELAB}
   *
   * @param yarn the yarn's index, from 0
   */
  public Lab lab(int yarn) {
    return labs[yarn];
  }

  /**
   * {@return CIEDE2000 between two yarns' colours}
   *
   * @param yarnA the one yarn's index, from 0
   * @param yarnB the other yarn's index, from 0
   */
  public double difference(int yarnA, int yarnB) {
    return differences[yarnA][yarnB];
  }

  /**
   * {@return differences between yarns' colours as seen by people who lack one kind of cone} Worked
   * out on the first call, which takes O(yarns squared).
   */
  public synchronized SeenDifferences seen() {
    if (seen == null) {
      seen = new SeenDifferences(brief.yarns().stream().map(Yarn::colour).toList());
    }
    return seen;
  }

  /**
   * {@return whether two borders in these yarns count as the same: the same yarn, or less than
   * min-contrast}
   *
   * @param yarnA the one yarn's index, from 0
   * @param yarnB the other yarn's index, from 0
   */
  public boolean sameBorder(int yarnA, int yarnB) {
    return yarnA == yarnB || difference(yarnA, yarnB) < brief.rules().minContrast();
  }

  /**
   * {@return millimetres of a yarn at hand less what the rules keep back, rounded up}
   *
   * @param yarn the yarn's index, from 0
   */
  public long usableMillimetres(int yarn) {
    return usable[yarn];
  }
}
