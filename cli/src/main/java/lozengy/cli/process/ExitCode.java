package lozengy.cli.process;

import lozengy.report.FailureData;
import picocli.CommandLine.ParameterException;

/** What the program's exit codes say. */
public enum ExitCode {
  /** Done as asked. */
  DONE(0),
  /** The program is at fault. */
  PROGRAM_FAULT(FailureData.PROGRAM_FAULT),
  /** The input or the call is wrong. */
  WRONG_INPUT(FailureData.WRONG_INPUT),
  /** It is proved that no arrangement fits. */
  IMPOSSIBLE(3),
  /** Stopped before an arrangement was found. */
  UNFINISHED(4),
  /** A check found faults. */
  FAULTS_FOUND(5),
  /** A batch was stopped before its last line. */
  STOPPED(6);

  private final int code;

  ExitCode(int code) {
    this.code = code;
  }

  /** The number that the shell sees. */
  public int code() {
    return code;
  }

  /** The exit code of a failure. */
  public static ExitCode of(Throwable failure) {
    return failure instanceof Refusal
            || failure instanceof ParameterException
            || FailureData.exit(failure) == FailureData.WRONG_INPUT
        ? WRONG_INPUT
        : PROGRAM_FAULT;
  }
}
