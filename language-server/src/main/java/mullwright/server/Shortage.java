package mullwright.server;

/**
 * What is said where memory ran out. The server stays: what it had computed is let go, and smaller
 * texts are answered as ever.
 */
final class Shortage {
  private static final long MEGABYTE = 1 << 20;

  private Shortage() {}

  /** That the walls are not checked, and how to mend it. */
  static String unchecked() {
    return "Not checked: what is open needs more memory than the server may take" + howMuch();
  }

  /** That a question is not answered, and how to mend it. */
  static String unanswered() {
    return "Not answered: this needs more memory than the server may take" + howMuch();
  }

  private static String howMuch() {
    return " ("
        + Runtime.getRuntime().maxMemory() / MEGABYTE
        + " MB). Start it with more, as in java -Xmx4g, or put fewer or smaller walls into one"
        + " file.";
  }
}
