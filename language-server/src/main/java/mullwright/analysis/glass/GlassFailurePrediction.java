package mullwright.analysis.glass;

import java.util.Optional;
import mullwright.analysis.Outcome;
import mullwright.analysis.Refusal;

/**
 * Non-factored load of an annealed lite on four supported edges, by the glass failure prediction
 * model on which the charts of ASTM E1300 rest.
 *
 * <p>P = 1 − e^(−B), B = k·(ab)^(1−m)·(E t²)^m·(t_d/60)^(m/16)·e^J. Symbols: P chance of breakage;
 * a, b sides [m]; t minimum thickness [m]; E = 71.7 GPa and ν = 0.22; t_d load duration [s]; m = 7
 * and k = 2.86e-53 N⁻⁷m¹² surface flaw parameters of weathered glass; J the {@link PlateRisk} of
 * the {@link LargeDeflectionPlate}. The load at which P is the accepted chance is found on the
 * logarithms, where J is nearly straight.
 *
 * <p>Range: that of {@link LargeDeflectionPlate}; durations from 1 s to a year; chance from 0.0001
 * to 0.5. The result is computed by the model, not read from a chart of the standard. Source: ASTM
 * E1300 (model and constants as published; annealed, 3 s and P = 0.008 for the charts).
 */
public final class GlassFailurePrediction {
  /** Young's modulus of ASTM E1300 [Pa]. */
  public static final double YOUNGS_MODULUS = 71.7e9;

  /** Poisson's ratio of ASTM E1300. */
  public static final double POISSONS_RATIO = 0.22;

  /** Load duration of the charts [s]. */
  public static final double CHART_DURATION = 3;

  /** Chance of breakage of the charts: 8 lites in 1000 at the first occurrence of the load. */
  public static final double CHART_CHANCE = 0.008;

  private static final double FLAW_EXPONENT = 7;
  private static final double FLAW_FACTOR = 2.86e-53;
  private static final double FATIGUE = 16;
  private static final double LONGEST = 366 * 86400.0;

  /** Accepted relative error of the load. */
  private static final double PRECISION = 1e-5;

  /** Slope of J over ln q̂ where most lites fail. */
  private static final double USUAL_SLOPE = 5;

  private GlassFailurePrediction() {}

  /**
   * A lite of annealed glass; which side is the longer does not matter.
   *
   * @param width one side [m]
   * @param height the other side [m]
   * @param thickness minimum thickness [m]
   * @param duration how long the load acts [s]
   * @param chance accepted chance of breakage
   */
  public record Lite(
      double width, double height, double thickness, double duration, double chance) {

    /** A lite as the charts of ASTM E1300 see it: 3 s, 8 lites in 1000. */
    public static Lite charted(double width, double height, double thickness) {
      return new Lite(width, height, thickness, CHART_DURATION, CHART_CHANCE);
    }

    private LargeDeflectionPlate.Lite plate() {
      return new LargeDeflectionPlate.Lite(
          width, height, thickness, YOUNGS_MODULUS, POISSONS_RATIO, 0);
    }

    /** The J at which the chance of breakage is the accepted one. */
    double target() {
      double area = width * height;
      return StrictMath.log(-StrictMath.log1p(-chance))
          + (FLAW_EXPONENT - 1) * StrictMath.log(area)
          - StrictMath.log(FLAW_FACTOR)
          - FLAW_EXPONENT * StrictMath.log(YOUNGS_MODULUS * thickness * thickness)
          - FLAW_EXPONENT / FATIGUE * StrictMath.log(duration / 60);
    }
  }

  /**
   * What the lite bears.
   *
   * @param nonFactoredLoad pressure at which the chance of breakage is the accepted one [Pa]
   * @param centreDeflection deflection of the centre under that pressure [m]
   * @param firstCrackStress largest principal stress under that pressure, at which the first crack
   *     is expected with the accepted chance [Pa]
   * @param loadIntensity q̂ of that pressure
   */
  public record Resistance(
      double nonFactoredLoad,
      double centreDeflection,
      double firstCrackStress,
      double loadIntensity) {}

  /** Non-factored load of a lite, or why the method declines. */
  public static Outcome<Resistance> solve(Lite lite) {
    Optional<Refusal> refused =
        LargeDeflectionPlate.shape(lite.plate())
            .that(
                lite.duration() >= 1 && lite.duration() <= LONGEST,
                "load duration",
                lite.duration(),
                "s",
                "between 1 s and a year")
            .that(
                lite.chance() >= 1e-4 && lite.chance() <= 0.5,
                "chance of breakage",
                lite.chance(),
                "",
                "between 0.0001 and 0.5")
            .refused();
    return refused.isPresent() ? new Outcome.Refused<>(refused.get()) : search(lite);
  }

  private static Outcome<Resistance> search(Lite lite) {
    PlateEquations plate = new PlateEquations(lite.plate().ratio(), POISSONS_RATIO);
    double target = lite.target();
    double load = PlateChart.intensityAt(lite);
    if (Double.isNaN(load)) {
      // Without membrane forces J would reach the target at a lower load, by up to a half.
      double risk = PlateRisk.of(plate.linear(1));
      load = 1.2 * StrictMath.exp((target - risk) / FLAW_EXPONENT);
    }
    load = Math.min(LargeDeflectionPlate.LARGEST_LOAD, load);
    Optional<PlateState> state = plate.solve(load);
    double risk = state.isPresent() ? PlateRisk.of(state.get()) : Double.NaN;
    double slope = PlateChart.slopeAt(lite);
    slope = Double.isNaN(slope) ? USUAL_SLOPE : slope;
    for (int step = 0; step < 40 && state.isPresent(); step++) {
      double ahead = (target - risk) / slope;
      if (Math.abs(ahead) < PRECISION) {
        return new Outcome.Solved<>(resistance(lite, state.get()));
      }
      double next = load * StrictMath.exp(ahead);
      if (next > LargeDeflectionPlate.LARGEST_LOAD) {
        if (load == LargeDeflectionPlate.LARGEST_LOAD) {
          return new Outcome.Refused<>(tooThin(lite));
        }
        next = LargeDeflectionPlate.LARGEST_LOAD;
      }
      state = next < 3 * load ? plate.solveFrom(state.get(), next) : plate.solve(next);
      if (state.isPresent()) {
        double nextRisk = PlateRisk.of(state.get());
        double secant = (nextRisk - risk) / StrictMath.log(next / load);
        // Between the membrane regime and the corner-governed one the slope stays in these bounds.
        slope = Math.max(3, Math.min(FLAW_EXPONENT, secant));
        risk = nextRisk;
        load = next;
      }
    }
    return new Outcome.Refused<>(tooThin(lite));
  }

  private static Resistance resistance(Lite lite, PlateState state) {
    double pressure = state.load() / lite.plate().intensity();
    LargeDeflectionPlate.Response response =
        LargeDeflectionPlate.response(lite.plate().under(pressure), state);
    return new Resistance(
        pressure, response.centreDeflection(), response.largestStress(), state.load());
  }

  private static Refusal tooThin(Lite lite) {
    return new Refusal(
        "thickness",
        lite.thickness(),
        "m",
        "more for this size: the lite would break only beyond load intensity 2500, where the plate"
            + " solution has not been compared");
  }
}
