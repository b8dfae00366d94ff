package mullwright.review;

import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/** What a fact says. Two values are equal if they mean the same, in whatever unit written. */
public sealed interface Value {
  /** The value as people read it. */
  String words(UnitSystem units);

  /** The value without rounding. */
  default String exactly(UnitSystem units) {
    return words(units);
  }

  /** A length. */
  record Size(Length length) implements Value {
    @Override
    public String words(UnitSystem units) {
      return LengthPrinter.in(units, length);
    }

    @Override
    public String exactly(UnitSystem units) {
      return LengthPrinter.exact(length, units);
    }
  }

  /** A quantity of any other kind. */
  record Amount(Quantity quantity, Kind kind) implements Value {
    @Override
    public String words(UnitSystem units) {
      return QuantityPrinter.in(units, quantity, kind);
    }

    @Override
    public String exactly(UnitSystem units) {
      return QuantityPrinter.exact(quantity, kind, units);
    }
  }

  /** A name, a word, several words. */
  record Words(String text) implements Value {
    @Override
    public String words(UnitSystem units) {
      return text.isEmpty() ? "none" : text;
    }
  }

  /**
   * A place in height.
   *
   * @param base the floor or row it is measured from; empty for the datum
   */
  record Place(Optional<Name> base, Length offset) implements Value {
    @Override
    public String words(UnitSystem units) {
      return at(LengthPrinter.in(units, offset.abs()), LengthPrinter.in(units, offset));
    }

    @Override
    public String exactly(UnitSystem units) {
      return at(LengthPrinter.exact(offset.abs(), units), LengthPrinter.exact(offset, units));
    }

    private String at(String distance, String height) {
      if (base.isEmpty()) {
        return height;
      }
      String name = base.get().id();
      return offset.signum() == 0
          ? name
          : distance + (offset.signum() > 0 ? " above " : " below ") + name;
    }
  }
}
