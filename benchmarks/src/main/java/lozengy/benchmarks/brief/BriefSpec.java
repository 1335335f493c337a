package lozengy.benchmarks.brief;

import lozengy.model.brief.Rules;
import lozengy.model.layout.LayoutSize;

/**
 * What to generate a brief from.
 *
 * @param name name of the brief, fit for a file's name
 * @param layout the layout
 * @param rounds the rounds of every motif, centre first, one letter each: D dark, M mid, L light, I
 *     light or mid, A any tone
 * @param yarns how many yarns there are of each tone
 * @param slackPercent stock over what the planted arrangement takes
 * @param stock how the planted arrangement uses the yarns
 * @param known what is known of single pieces
 * @param rules the rules
 * @param finished whether the first yarn also joins and edges
 */
public record BriefSpec(
    String name,
    LayoutSize layout,
    String rounds,
    YarnCounts yarns,
    double slackPercent,
    Stock stock,
    Known known,
    Rules rules,
    boolean finished) {

  /** Borders up to which so many pieces as below are few. */
  private static final int FEW_BORDERS = 5;

  private static final long MANY_PIECES = 90;

  /** How the planted arrangement uses the yarns, and so what is at hand. */
  public enum Stock {
    /** All yarns of a tone about equally; all shares 1. */
    EVEN,
    /** Up to three times as much of one as of another; all shares 1. */
    ODD,
    /** The same, and the shares asked for are in the same proportions. */
    ODD_WITH_SHARES
  }

  /** How many yarns there are of each tone. */
  public record YarnCounts(int dark, int mid, int light) {}

  /**
   * What is known of single pieces.
   *
   * @param locks how many pieces have all their rounds locked to the planted ones
   * @param bans how many pieces may not take one of the yarns that they do not have
   */
  public record Known(int locks, int bans) {
    /** Nothing is known. */
    public static final Known NOTHING = new Known(0, 0);
  }

  /** How many yarns a border may take. */
  public int borderYarns() {
    return switch (rounds.charAt(rounds.length() - 1)) {
      case 'D' -> yarns.dark();
      case 'M' -> yarns.mid();
      case 'L' -> yarns.light();
      case 'I' -> yarns.light() + yarns.mid();
      default -> yarns.dark() + yarns.mid() + yarns.light();
    };
  }

  /**
   * Whether there are so few border yarns for so many pieces that a planted arrangement begins with
   * all borders: dealt piece by piece, some piece would find no border left.
   */
  boolean plantsBordersFirst() {
    return borderYarns() <= FEW_BORDERS && layout.pieces() > MANY_PIECES;
  }
}
