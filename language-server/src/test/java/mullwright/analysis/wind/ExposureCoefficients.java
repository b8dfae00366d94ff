package mullwright.analysis.wind;

/** Velocity pressure exposure coefficients as printed: ASCE 7-16 table 26.10-1, from memory. */
public final class ExposureCoefficients {
  /** Height above ground [ft], then K_z in exposure B, C and D. */
  public static final double[][] TABLE = {
    {15, 0.57, 0.85, 1.03},
    {20, 0.62, 0.90, 1.08},
    {25, 0.66, 0.94, 1.12},
    {30, 0.70, 0.98, 1.16},
    {40, 0.76, 1.04, 1.22},
    {50, 0.81, 1.09, 1.27},
    {60, 0.85, 1.13, 1.31},
    {70, 0.89, 1.17, 1.34},
    {80, 0.93, 1.21, 1.38},
    {90, 0.96, 1.24, 1.40},
    {100, 0.99, 1.26, 1.43},
    {120, 1.04, 1.31, 1.48},
    {140, 1.09, 1.36, 1.52},
    {160, 1.13, 1.39, 1.55},
    {180, 1.17, 1.43, 1.58},
    {200, 1.20, 1.46, 1.61},
    {250, 1.28, 1.53, 1.68},
    {300, 1.35, 1.59, 1.73},
    {350, 1.41, 1.64, 1.78},
    {400, 1.47, 1.69, 1.82},
    {450, 1.52, 1.73, 1.86},
    {500, 1.56, 1.77, 1.89}
  };

  private ExposureCoefficients() {}
}
