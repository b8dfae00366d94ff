package mullwright.server;

/**
 * What is said where memory ran out. A server stays: what it had computed is let go, and smaller
 * texts are answered as ever.
 */
public final class Shortage {
  private static final long MEGABYTE = 1 << 20;

  private Shortage() {}

  /** That the walls are not checked, and how to mend it. */
  static String unchecked() {
    return "Not checked: " + needs("what is open", "put fewer or smaller walls into one file");
  }

  /** That a question is not answered, and how to mend it. */
  static String unanswered() {
    return "Not answered: " + needs("this", "put fewer or smaller walls into one file");
  }

  /**
   * That something needs more memory than there is, and how to mend it.
   *
   * @param what needs it
   * @param instead what to do where there is no more to give
   */
  public static String needs(String what, String instead) {
    return what
        + " needs more memory than Java may take ("
        + Runtime.getRuntime().maxMemory() / MEGABYTE
        + " MB). Start it with more, as in java -Xmx4g, or "
        + instead
        + ".";
  }
}
