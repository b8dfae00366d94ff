package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;
import mullwright.quantity.ChainRounding;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.Step;
import mullwright.quantity.UnitSystem;

/**
 * How lengths are written on a drawing: feet and inches to 1/16", or millimetres without their
 * unit. Source: conventions of the trade in the US; ISO 129-1 for millimetres (from memory).
 */
public record Figures(UnitSystem units) {
  private Step step() {
    return units == UnitSystem.US ? Step.SIXTEENTH : Step.MILLIMETRE;
  }

  /** One length. */
  public String of(Length length) {
    if (units == UnitSystem.US) {
      return LengthFormat.feetIfAny(Step.SIXTEENTH).print(length);
    }
    String text = LengthFormat.millimetres(Step.MILLIMETRE).print(length);
    return text.substring(0, text.length() - " mm".length());
  }

  /** A level above the datum, with its sign: {@code +13'-0"}, {@code ±0}. */
  public String level(Length elevation) {
    String sign = elevation.signum() > 0 ? "+" : elevation.signum() == 0 ? "±" : "";
    return sign
        + (units == UnitSystem.US
            ? LengthFormat.feetInches(Step.SIXTEENTH).print(elevation)
            : of(elevation));
  }

  /** The parts between places, so that they add up to what their overall says. */
  public List<String> chain(List<Length> places) {
    List<Length> parts = new ArrayList<>();
    for (int i = 1; i < places.size(); i++) {
      parts.add(places.get(i).minus(places.get(i - 1)));
    }
    return ChainRounding.parts(parts, step().length()).stream().map(this::of).toList();
  }
}
