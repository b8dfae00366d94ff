package mullwright.analysis.wall;

import java.util.Locale;
import mullwright.derivation.Derivation;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;

/** Modulus of elasticity by the metal's name, for deflection. */
public final class Stiffness {
  /** Aluminium: 10 000 ksi (Aluminum Design Manual, modulus for deflection, from memory). */
  public static final double ALUMINIUM = 10_000 * 6_894_757.293_168;

  /** Steel: 29 000 ksi (steel handbooks, from memory). */
  public static final double STEEL = 29_000 * 6_894_757.293_168;

  private Stiffness() {}

  /** The modulus of a metal with where it comes from. */
  static Derivation explain(String metal) {
    double modulus = modulus(metal);
    return Derivation.assumed(
        "modulus",
        Quantity.ofSi(modulus, Kind.STRESS),
        Kind.STRESS,
        modulus == STEEL
            ? "steel handbooks, from memory"
            : "Aluminum Design Manual, modulus for deflection, from memory");
  }

  /** The modulus [Pa] of steel for metals named steel or stainless, of aluminium otherwise. */
  public static double modulus(String metal) {
    String name = metal.toLowerCase(Locale.ROOT);
    return name.contains("steel") || name.contains("stainless") || name.contains("galvanized")
        ? STEEL
        : ALUMINIUM;
  }
}
