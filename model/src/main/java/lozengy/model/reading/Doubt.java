package lozengy.model.reading;

import java.util.Optional;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.EdgeFit;
import lozengy.model.layout.PieceKind;

/** A value of a brief that may be right, but hardly is: worth a question, no mistake. */
public sealed interface Doubt {

  /** {@return what sort of doubt it is, a stable word for programs} */
  String code();

  /** {@return the field of the brief that is doubted} */
  BriefPath path();

  /**
   * {@return what one of the cases gives for it}
   *
   * @param cases a case for each sort of doubt
   * @param <T> what they give
   */
  <T> T in(Cases<T> cases);

  /**
   * A case for each sort of doubt.
   *
   * @param <T> what they give
   */
  interface Cases<T> {

    /**
     * {@return what it gives for a triangle's edge}
     *
     * @param doubt the doubt
     */
    T edge(Edge doubt);

    /**
     * {@return what it gives for a round}
     *
     * @param doubt the doubt
     */
    T amount(Amount doubt);

    /**
     * {@return what it gives for a count}
     *
     * @param doubt the doubt
     */
    T count(Count doubt);

    /**
     * {@return what it gives for a sample that others contradict}
     *
     * @param doubt the doubt
     */
    T apart(Apart doubt);

    /**
     * {@return what it gives for a smaller piece that takes more than a larger one}
     *
     * @param doubt the doubt
     */
    T heavier(Heavier doubt);

    /**
     * {@return what it gives for a code that programs take for a missing value}
     *
     * @param doubt the doubt
     */
    T missing(Missing doubt);

    /**
     * {@return what it gives for a field that a newer program has written}
     *
     * @param doubt the doubt
     */
    T newer(Newer doubt);
  }

  /**
   * A side triangle's long edge is far from what it spans.
   *
   * @param path the field
   * @param fit the edge held against the layout
   * @param meant the unit in which the same number would fit, {@code cm} or {@code in}; empty where
   *     neither does
   */
  record Edge(BriefPath path, EdgeFit fit, Optional<String> meant) implements Doubt {
    @Override
    public String code() {
      return "edge-far-off";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.edge(this);
    }
  }

  /**
   * A round takes many times what the rounds beside it take, or as small a part of it.
   *
   * @param path the round
   * @param kind the motif's kind
   * @param round from the centre, from 0
   * @param millimetres what it takes, in mm
   * @param besideMillimetres what that one of the rounds beside it takes that comes nearest, in mm
   */
  record Amount(BriefPath path, PieceKind kind, int round, long millimetres, long besideMillimetres)
      implements Doubt {
    @Override
    public String code() {
      return "amount-far-off";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.amount(this);
    }
  }

  /**
   * More of a yarn was counted than was bought of it.
   *
   * @param path the field
   * @param yarn index of the yarn
   * @param countedMillimetres what was counted, in mm
   * @param boughtMillimetres balls and loose yarn as the brief tells them, in mm
   */
  record Count(BriefPath path, int yarn, long countedMillimetres, long boughtMillimetres)
      implements Doubt {
    @Override
    public String code() {
      return "count-above-bought";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.count(this);
    }
  }

  /**
   * A sample takes much more or less than what all samples together make of its rounds.
   *
   * @param path the amount
   * @param percent per cent by which it takes more; below 0 where it takes less
   */
  record Apart(BriefPath path, double percent) implements Doubt {
    @Override
    public String code() {
      return "samples-apart";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.apart(this);
    }
  }

  /**
   * By the samples, a smaller piece takes more yarn than a larger one.
   *
   * @param path the samples
   * @param smaller kind of the smaller piece
   * @param larger kind of the larger one
   * @param smallerMillimetres what the smaller takes, in mm
   * @param largerMillimetres what the larger takes, in mm
   */
  record Heavier(
      BriefPath path,
      PieceKind smaller,
      PieceKind larger,
      long smallerMillimetres,
      long largerMillimetres)
      implements Doubt {
    @Override
    public String code() {
      return "sample-heavier";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.heavier(this);
    }
  }

  /**
   * A yarn's code is a word that readers of tables take for a missing value.
   *
   * @param path the field
   * @param codeOfYarn the code
   */
  record Missing(BriefPath path, String codeOfYarn) implements Doubt {
    @Override
    public String code() {
      return "code-means-missing";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.missing(this);
    }
  }

  /**
   * A field that is not known, in a file that states a newer form than this program's.
   *
   * @param path the field
   */
  record Newer(BriefPath path) implements Doubt {
    @Override
    public String code() {
      return "field-newer";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.newer(this);
    }
  }
}
