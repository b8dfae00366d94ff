package mullwright.analysis.wall;

import mullwright.derivation.Derivation;
import mullwright.model.Given;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** Makes numbers of the model into numbers that know where they come from. */
public final class Inputs {
  private Inputs() {}

  /** A length of the model: stated, or a default with its source. */
  public static Derivation length(String name, Given<Length> given) {
    return given.assumed()
        ? Derivation.assumed(name, given.value(), given.source())
        : Derivation.stated(name, given.value(), given.origin());
  }

  /** A quantity of the model: stated, or a default with its source. */
  public static Derivation quantity(String name, Given<Quantity> given, Kind kind) {
    return given.assumed()
        ? Derivation.assumed(name, given.value(), kind, given.source())
        : Derivation.stated(name, given.value(), kind, given.origin());
  }
}
