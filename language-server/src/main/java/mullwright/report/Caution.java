package mullwright.report;

/** The caution that stands on all structural and safety output. */
public final class Caution {
  public static final String WORDS =
      "Structural and safety results are aids to drafting: a licensed engineer and the local code"
          + " govern.";

  private Caution() {}
}
