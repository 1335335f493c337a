package lozengy.cli.process;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.report.FailureData;

/** An input or a call that cannot be carried out, with all its mistakes and where they are. */
public class Refusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String place;
  private final transient List<Mistake> mistakes;

  /**
   * Makes a refusal.
   *
   * @param place the file or option concerned, as the user wrote it; empty for the whole call
   * @param mistakes the mistakes, at least one
   */
  public Refusal(String place, List<Mistake> mistakes) {
    super(
        mistakes.stream().map(each -> words(place, each)).collect(Collectors.joining("\n")),
        null,
        false,
        false);
    this.place = place;
    this.mistakes = List.copyOf(mistakes);
  }

  /**
   * Refuses for one mistake.
   *
   * @param place the file or option concerned; empty for the whole call
   * @param sort what sort of mistake it is
   * @param found what was found
   * @param remedy what would be right
   */
  public static Refusal of(String place, Mistake.Sort sort, String found, String remedy) {
    return new Refusal(place, List.of(Mistake.ofWhole(sort, found, remedy)));
  }

  /** Refuses a file for the mistakes that its reader found. */
  public static Refusal of(String place, InputException cause) {
    return new Refusal(place, cause.mistakes());
  }

  /** A failure of any kind, in words for its user. */
  public static Refusal of(Throwable failure) {
    return failure instanceof Refusal refusal
        ? refusal
        : new Refusal("", FailureData.mistakes(failure));
  }

  /** The file or option concerned; empty for the whole call. */
  public String place() {
    return place;
  }

  /** The mistakes. */
  public List<Mistake> mistakes() {
    return mistakes;
  }

  /** A mistake in one line, its place first. */
  public static String words(String place, Mistake mistake) {
    String separator = mistake.line() > 0 || !mistake.path().steps().isEmpty() ? ", " : ": ";
    return place.isEmpty() ? mistake.words() : place + separator + mistake.words();
  }
}
