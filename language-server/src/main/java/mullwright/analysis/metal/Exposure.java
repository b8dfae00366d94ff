package mullwright.analysis.metal;

/**
 * How wet a contact gets, with the difference of potential it stands.
 *
 * <p>Thresholds by anodic-index practice; they come from older finish standards, not from the
 * standard that ranks metals in sea water.
 */
public enum Exposure {
  /** Outdoors near salt water or de-icing salt: high in chloride. */
  COASTAL("coastal", 0.15),
  /** Outdoors, wet by rain. */
  OUTDOOR("outdoor", 0.15),
  /** Indoors without conditioned air, or outdoors and sheltered from wetting. */
  UNCONDITIONED("unconditioned indoor", 0.25),
  /** Indoors with conditioned air. */
  CONDITIONED("conditioned indoor", 0.50);

  private final String words;
  private final double threshold;

  Exposure(String words, double threshold) {
    this.words = words;
    this.threshold = threshold;
  }

  /** The class in words. */
  public String words() {
    return words;
  }

  /** Greatest difference of potential that needs no isolation [V]. */
  public double threshold() {
    return threshold;
  }
}
