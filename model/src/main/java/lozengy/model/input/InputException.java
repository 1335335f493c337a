package lozengy.model.input;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with all its mistakes. */
public class InputException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Mistake> mistakes;

  /**
   * Makes the exception.
   *
   * @param mistakes all mistakes, at least one
   */
  public InputException(List<Mistake> mistakes) {
    super(mistakes.stream().map(Mistake::words).collect(Collectors.joining("\n")));
    this.mistakes = List.copyOf(mistakes);
  }

  /** {@return all mistakes, in the input's order} */
  public List<Mistake> mistakes() {
    return mistakes;
  }
}
