package lozengy.model.stitch;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Kinds of stitches, by their US names. Names of both terms up to the treble: Craft Yarn Council,
 * Standards and Guidelines; the two taller ones and the UK's {@code ss} from memory.
 *
 * <p>How much yarn a stitch takes is first told in loops, one loop being the yarn once around the
 * hook. The numbers of loops are our own, rough, without a source: what they are good for is how
 * stitches compare, which a maker's samples then scale.
 */
public enum Stitch {
  /** Chain. */
  CHAIN("1.2", "chain", "ch", "chain", "ch"),
  /** Slip stitch. */
  SLIP_STITCH("1", "slip stitch", "sl st", "slip stitch", "ss"),
  /** Single crochet; UK double crochet. */
  SINGLE("1.8", "single crochet", "sc", "double crochet", "dc"),
  /** Half double crochet; UK half treble. */
  HALF_DOUBLE("2.5", "half double crochet", "hdc", "half treble crochet", "htr"),
  /** Double crochet; UK treble. */
  DOUBLE("3.3", "double crochet", "dc", "treble crochet", "tr"),
  /** Treble; UK double treble. */
  TREBLE("4.3", "treble crochet", "tr", "double treble crochet", "dtr"),
  /** Double treble; UK triple treble. */
  DOUBLE_TREBLE("5.3", "double treble crochet", "dtr", "triple treble crochet", "trtr"),
  /** Triple treble; UK quadruple treble. */
  TRIPLE_TREBLE("6.3", "triple treble crochet", "trtr", "quadruple treble crochet", "qtr");

  private static final String CROCHET = " crochet";

  private static final Map<Terms, Map<String, Stitch>> NAMES = names();

  private final BigDecimal loops;
  private final String[] us;
  private final String[] uk;

  Stitch(String loops, String us, String usShort, String uk, String ukShort) {
    this.loops = new BigDecimal(loops);
    this.us = new String[] {us, usShort};
    this.uk = new String[] {uk, ukShort};
  }

  /** {@return how much yarn it takes to start with, in loops around the hook; rough} */
  public BigDecimal loops() {
    return loops;
  }

  /**
   * {@return its abbreviation, such as {@code dc}}
   *
   * @param terms in whose terms
   */
  public String abbreviation(Terms terms) {
    return (terms == Terms.US ? us : uk)[1];
  }

  /**
   * {@return its name in full, such as {@code double crochet}}
   *
   * @param terms in whose terms
   */
  public String fullName(Terms terms) {
    return (terms == Terms.US ? us : uk)[0];
  }

  /**
   * {@return what a written name means, in each of the terms that have it; empty where neither has}
   * Names in full, with or without {@code crochet}, and abbreviations; capitals, hyphens and
   * underscores make no difference.
   *
   * @param written the name
   */
  public static Map<Terms, Stitch> meanings(String written) {
    String name =
        written.strip().toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ').strip();
    Map<Terms, Stitch> meanings = new EnumMap<>(Terms.class);
    NAMES.forEach(
        (terms, names) -> {
          if (names.containsKey(name)) {
            meanings.put(terms, names.get(name));
          }
        });
    return meanings;
  }

  /**
   * {@return all names in some terms, with what they mean}
   *
   * @param terms in whose terms
   */
  public static Map<String, Stitch> names(Terms terms) {
    return NAMES.get(terms);
  }

  private static Map<Terms, Map<String, Stitch>> names() {
    Map<Terms, Map<String, Stitch>> all = new EnumMap<>(Terms.class);
    for (Terms terms : Terms.values()) {
      Map<String, Stitch> names = new LinkedHashMap<>();
      for (Stitch stitch : values()) {
        String full = stitch.fullName(terms);
        names.put(stitch.abbreviation(terms), stitch);
        names.put(full, stitch);
        if (full.endsWith(CROCHET)) {
          names.put(full.substring(0, full.length() - CROCHET.length()), stitch);
        }
      }
      names.put(SLIP_STITCH.us[1], SLIP_STITCH);
      names.put(SLIP_STITCH.uk[1], SLIP_STITCH);
      all.put(terms, Collections.unmodifiableMap(names));
    }
    return all;
  }
}
