package mullwright.analysis;

/**
 * Inch and pound units of the handbooks in SI, so that a test may state a check value as printed.
 */
public final class UsUnits {
  /** Inch [m]; exact. */
  public static final double IN = 0.0254;

  /** Foot [m]; exact. */
  public static final double FT = 0.3048;

  /** Pound-force [N]; exact. */
  public static final double LB = 4.4482216152605;

  /** Kip [N]; exact. */
  public static final double KIP = 1000 * LB;

  /** Pound a square inch [Pa]. */
  public static final double PSI = LB / (IN * IN);

  /** Thousand pounds a square inch [Pa]. */
  public static final double KSI = 1000 * PSI;

  /** Pound a square foot [Pa]. */
  public static final double PSF = LB / (FT * FT);

  /** Degree Fahrenheit as a difference of temperature [K]; exact. */
  public static final double DEG_F = 5.0 / 9.0;

  private UsUnits() {}
}
