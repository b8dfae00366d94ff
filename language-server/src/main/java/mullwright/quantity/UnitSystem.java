package mullwright.quantity;

/** The two systems of units that walls are drawn in. */
public enum UnitSystem {
  /** Feet, inches, pounds, degrees Fahrenheit. */
  US,
  /** Millimetres, newtons, kilograms, degrees Celsius. */
  SI
}
