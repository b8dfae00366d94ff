package mullwright.analysis.movement;

/** Coefficients of linear expansion of the materials a wall meets; handbooks, from memory. */
public enum Expansion {
  /** Aluminum: 13.1e-6 a degree Fahrenheit. */
  ALUMINUM(13.1e-6 * 9 / 5),
  /** Carbon steel: 6.5e-6 a degree Fahrenheit. */
  STEEL(6.5e-6 * 9 / 5),
  /** Soda-lime glass: 5.0e-6 a degree Fahrenheit. */
  GLASS(5.0e-6 * 9 / 5);

  /** Where the coefficients stand. */
  public static final String SOURCE = "handbooks, from memory";

  private final double coefficient;

  Expansion(double coefficient) {
    this.coefficient = coefficient;
  }

  /** Coefficient of linear expansion [1/K]. */
  public double coefficient() {
    return coefficient;
  }
}
