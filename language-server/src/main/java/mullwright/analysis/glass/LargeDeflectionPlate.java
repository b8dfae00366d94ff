package mullwright.analysis.glass;

import java.util.Optional;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;
import mullwright.analysis.Refusal;

/**
 * Deflection and stress of a rectangular lite held on four edges, with the membrane forces that
 * stiffen it once it deflects more than about half its thickness.
 *
 * <p>Thin-plate equations for large deflections, D∇⁴w = q + t·L(F,w) and ∇⁴F = −(E/2)·L(w,w), with
 * L(F,w) = F,yy w,xx + F,xx w,yy − 2 F,xy w,xy and D = E t³/(12(1−ν²)). The edges are held normal
 * to the glass, turn freely, and slip and pull in freely in its plane, as glass in gaskets does and
 * as ASTM E1300 assumes. Solved by a spectral method: cosines for w, flat-edged polynomials for the
 * stress function F, Newton's method for the coefficients.
 *
 * <p>Symbols: a, b sides [m]; t thickness [m]; q pressure [Pa]; E Young's modulus [Pa]; ν Poisson's
 * ratio; w deflection [m]; F stress function [N]. The only numbers that matter are a/b, ν and q̂ =
 * q(ab)²/(E t⁴).
 *
 * <p>Range: 1 ≤ a/b ≤ 5, q̂ ≤ 2500, b ≥ 20 t, 0 ≤ ν ≤ 0.5. Compared with shell elements in this
 * range (see the accuracy table): deflection within 1 %, stress within 1 % up to q̂ = 1500 and
 * within 4 % beyond. The stress is that of thin-plate theory; the last few thicknesses next to a
 * corner that is free to twist, hold-downs, holes and point supports are outside it.
 */
public final class LargeDeflectionPlate {
  /** Largest long side over short side. */
  public static final double LARGEST_RATIO = 5;

  /** Largest load intensity q̂ = q(ab)²/(E t⁴). */
  public static final double LARGEST_LOAD = 2500;

  private static final double THINNEST = 20;

  private LargeDeflectionPlate() {}

  /**
   * A lite and its load; which side is the longer does not matter.
   *
   * @param width one side [m]
   * @param height the other side [m]
   * @param thickness thickness, the minimum one for strength [m]
   * @param youngsModulus E [Pa]
   * @param poissonsRatio ν
   * @param pressure uniform pressure, either way [Pa]
   */
  public record Lite(
      double width,
      double height,
      double thickness,
      double youngsModulus,
      double poissonsRatio,
      double pressure) {

    /** The same lite under another pressure [Pa]. */
    public Lite under(double other) {
      return new Lite(width, height, thickness, youngsModulus, poissonsRatio, other);
    }

    double ratio() {
      return Math.max(width, height) / Math.min(width, height);
    }

    /** q̂ of one pascal. */
    double intensity() {
      double area = width * height;
      double square = thickness * thickness;
      return area * area / (youngsModulus * square * square);
    }

    /** E t²/(ab) [Pa], the unit of stress. */
    double stressUnit() {
      return youngsModulus * thickness * thickness / (width * height);
    }
  }

  /**
   * What the lite does.
   *
   * @param centreDeflection deflection of the centre [m]
   * @param largestStress largest principal stress on the tension face [Pa]
   * @param peakAlong where that is along the long side, 0 at the centre and 1 at the edge
   * @param peakAcross the same along the short side
   * @param loadIntensity q̂ = q(ab)²/(E t⁴)
   */
  public record Response(
      double centreDeflection,
      double largestStress,
      double peakAlong,
      double peakAcross,
      double loadIntensity) {}

  /** Deflection and stress of a lite, or why the method declines. */
  public static Outcome<Response> solve(Lite lite) {
    double q = Math.abs(lite.pressure()) * lite.intensity();
    Guard guard = shape(lite).finite("pressure", lite.pressure(), "Pa");
    if (q > LARGEST_LOAD) {
      String most = "at most " + (long) (LARGEST_LOAD / lite.intensity()) + " Pa for this lite";
      guard.that(false, "pressure", lite.pressure(), "Pa", most);
    }
    Optional<Refusal> refused = guard.refused();
    if (refused.isPresent()) {
      return new Outcome.Refused<>(refused.get());
    }
    return q == 0 ? still() : bent(lite, q);
  }

  /** The refusals that do not depend on the load. */
  static Guard shape(Lite lite) {
    return Guard.range()
        .positive("width", lite.width(), "m")
        .positive("height", lite.height(), "m")
        .positive("thickness", lite.thickness(), "m")
        .positive("Young's modulus", lite.youngsModulus(), "Pa")
        .that(
            lite.poissonsRatio() >= 0 && lite.poissonsRatio() <= 0.5,
            "Poisson's ratio",
            lite.poissonsRatio(),
            "",
            "between 0 and 0.5")
        .that(
            lite.ratio() <= LARGEST_RATIO,
            "long side over short side",
            lite.ratio(),
            "",
            "at most 5")
        .that(
            Math.min(lite.width(), lite.height()) >= THINNEST * lite.thickness(),
            "thickness",
            lite.thickness(),
            "m",
            "at most 1/20 of the short side");
  }

  private static Outcome<Response> still() {
    return new Outcome.Solved<>(new Response(0, 0, 0, 0, 0));
  }

  private static Outcome<Response> bent(Lite lite, double q) {
    Optional<PlateState> state = new PlateEquations(lite.ratio(), lite.poissonsRatio()).solve(q);
    return state.isPresent()
        ? new Outcome.Solved<>(response(lite, state.get()))
        : new Outcome.Refused<>(unsolved(lite.pressure()));
  }

  static Refusal unsolved(double pressure) {
    return new Refusal("pressure", pressure, "Pa", "one for which the plate equations converge");
  }

  static Response response(Lite lite, PlateState state) {
    PlatePeak peak = PlatePeak.of(state);
    return new Response(
        state.centreDeflection() * lite.thickness(),
        peak.stress() * lite.stressUnit(),
        peak.along(),
        peak.across(),
        state.load());
  }
}
