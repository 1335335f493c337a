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
import lozengy.model.colour.Tone;
import lozengy.model.unit.Ratio;

/**
 * A brief's yarns made ready, by their indices: tones, colours and how they differ, and what may be
 * used of each. The arrays are not to be changed; O(yarns squared) to make.
 *
 * @param index index of each yarn by its code
 * @param tones tone of each, stated or by its lightness
 * @param labs colour of each in CIELAB
 * @param differences CIEDE2000 between any two
 * @param usableMillimetres stock of each less what the rules keep back, rounded up
 */
record ReadyYarns(
    Map<String, Integer> index,
    Tone[] tones,
    Lab[] labs,
    double[][] differences,
    long[] usableMillimetres) {

  private static final BigDecimal HUNDRED = new BigDecimal(100);

  static ReadyYarns of(Brief brief) {
    List<Yarn> yarns = brief.yarns();
    int count = yarns.size();
    Map<String, Integer> index = new HashMap<>();
    Tone[] tones = new Tone[count];
    Lab[] labs = new Lab[count];
    long[] usable = new long[count];
    for (int yarn = 0; yarn < count; yarn++) {
      Yarn each = yarns.get(yarn);
      index.put(each.code(), yarn);
      labs[yarn] = LabColours.of(each.colour());
      tones[yarn] = brief.toneOf(each);
      usable[yarn] = usable(each.stock(), brief.rules().keepBackPercent());
    }
    return new ReadyYarns(index, tones, labs, differences(labs), usable);
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
}
