package lozengy.benchmarks;

/** The least that a Java program does: what starting the command is compared with. */
final class Hello {

  private Hello() {}

  /** Greets. */
  public static void main(String[] arguments) {
    System.out.println("hello");
  }
}
