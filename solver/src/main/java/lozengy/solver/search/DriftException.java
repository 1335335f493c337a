package lozengy.solver.search;

/** What a search keeps as it goes has come apart from what holds from scratch: a fault of ours. */
public final class DriftException extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  DriftException(String message) {
    super(message);
  }
}
