package mullwright.analysis.beam;

import static mullwright.analysis.OutsideCheck.solved;
import static mullwright.analysis.UsUnits.FT;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.LB;
import static mullwright.analysis.beam.BeamFixtures.at;
import static mullwright.analysis.beam.BeamFixtures.inches;
import static mullwright.analysis.beam.BeamFixtures.poundInches;
import static mullwright.analysis.beam.BeamFixtures.pounds;
import static mullwright.analysis.beam.BeamFixtures.uniformly;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.OutsideCheck;

/** Beams held against values from outside, case by case, for the table of accuracy. */
public final class BeamAccuracy {
  private static final double TENTH = 1e-3;
  private static final String CLOSED = "closed form, recomputed";
  private static final String TABLES = "published beam tables, from memory";
  private static final String INTEGRATED = "numerical integration of M/EI, recomputed";

  private BeamAccuracy() {}

  /** Spans with and without splices. */
  public static List<OutsideCheck> beams() {
    List<OutsideCheck> checks = new ArrayList<>();
    simple(checks);
    twoSpans(checks);
    unequal(checks);
    endless(checks);
    fromTheHead(checks);
    oneSplice(checks);
    coefficients(checks);
    return checks;
  }

  private static void add(
      List<OutsideCheck> checks, String source, String what, double computed, double expected) {
    checks.add(new OutsideCheck(what, computed, expected, TENTH, source));
  }

  private static void simple(List<OutsideCheck> checks) {
    BeamResponse r = uniformly(inches(0, 144, at(0, 144)));
    // handbook CHECK 1.1a
    add(checks, CLOSED, "moment of 12 ft", poundInches(r.moments().greatest().value()), 32_400);
    add(checks, CLOSED, "reaction of 12 ft", pounds(r)[0], 900);
    add(checks, CLOSED, "deflection of 12 ft", sag(r, 0), 0.8748);
  }

  private static void twoSpans(List<OutsideCheck> checks) {
    BeamResponse r = uniformly(inches(0, 288, at(0, 144, 288)));
    // handbook CHECK 1.1b
    add(checks, CLOSED, "M_B, two spans", poundInches(r.momentAt(144 * IN)), -32_400);
    add(checks, CLOSED, "M+, two spans", poundInches(r.moments().greatest().value()), 18_225);
    add(checks, CLOSED, "R_1, two spans", pounds(r)[0], 675);
    add(checks, CLOSED, "R_B, two spans", pounds(r)[1], 2250);
    add(checks, CLOSED, "deflection, two spans", sag(r, 0), 0.3639);
  }

  private static void unequal(List<OutsideCheck> checks) {
    BeamResponse r = uniformly(inches(0, 288, at(0, 168, 288)));
    // handbook CHECK 1.1c
    add(checks, CLOSED, "M_B, 14 + 10 ft", poundInches(r.momentAt(168 * IN)), -35_100);
    add(checks, CLOSED, "M+, 14 + 10 ft", poundInches(r.moments().greatest().value()), 28_295.8);
    add(checks, CLOSED, "R_1, 14 + 10 ft", pounds(r)[0], 841.07);
    add(checks, CLOSED, "R_B, 14 + 10 ft", pounds(r)[1], 2301.43);
    add(checks, CLOSED, "R_2, 14 + 10 ft", pounds(r)[2], 457.50);
    add(checks, CLOSED, "deflection, 14 + 10 ft", sag(r, 0), 0.8606);
  }

  private static void endless(List<OutsideCheck> checks) {
    double[] floors = new double[21];
    double[] splices = new double[19];
    for (int i = 0; i < 21; i++) {
      floors[i] = 144.0 * i;
    }
    for (int i = 0; i < 19; i++) {
      splices[i] = 144.0 * (i + 1) + 24;
    }
    BeamResponse r = uniformly(inches(0, 2880, floors, splices));
    // handbook CHECK 1.2a; its two deflections are misprinted, 0.2171 and −0.0108 in are right
    add(checks, CLOSED, "V, endless run", Math.abs(r.shearAt(splices[9] * IN)) / LB, 600);
    add(checks, CLOSED, "M_anchor, endless run", poundInches(r.momentAt(1440 * IN)), -18_000);
    double span = r.moments(1440 * IN, 1584 * IN).greatest().value();
    add(checks, CLOSED, "M_span, endless run", poundInches(span), 14_400);
    add(checks, CLOSED, "R, endless run", pounds(r)[10], 1800);
    add(checks, INTEGRATED, "deflection, endless run", sag(r, 10), 0.21709);
    double splice = r.hinges().get(9).deflection() / IN;
    add(checks, INTEGRATED, "deflection at the splice, endless run", splice, -0.01080);
  }

  private static void fromTheHead(List<OutsideCheck> checks) {
    double[] floors = at(0, 144, 288, 432, 576, 720, 864, 1008);
    BeamResponse r = uniformly(inches(0, 1008, floors, 168, 312, 456, 600, 744, 888));
    // handbook CHECK 1.2b
    double[] shears = {750, 570, 606, 598.8};
    double[] moments = {-21_600, -17_280, -18_144, -17_971.2};
    for (int i = 0; i < 4; i++) {
      String which = ", " + (i + 1) + " from the head";
      double v = Math.abs(r.shearAt((888 - 144 * i) * IN)) / LB;
      add(checks, CLOSED, "V" + which, v, shears[i]);
      double m = poundInches(r.momentAt((864 - 144 * i) * IN));
      add(checks, CLOSED, "M" + which, m, moments[i]);
    }
  }

  private static void oneSplice(List<OutsideCheck> checks) {
    BeamResponse r = uniformly(inches(0, 288, at(0, 144, 288), 174));
    // handbook CHECK 1.2c
    add(checks, CLOSED, "V, one splice", Math.abs(r.shearAt(174 * IN)) / LB, 712.5);
    add(checks, CLOSED, "M_B, one splice", poundInches(r.momentAt(144 * IN)), -27_000);
    double low = r.moments(0, 144 * IN).greatest().value();
    double up = r.moments(144 * IN, 288 * IN).greatest().value();
    add(checks, CLOSED, "M_low, one splice", poundInches(low), 20_306.25);
    add(checks, CLOSED, "M_up, one splice", poundInches(up), 20_306.25);
    add(checks, CLOSED, "R_1, one splice", pounds(r)[0], 712.5);
    add(checks, CLOSED, "R_B, one splice", pounds(r)[1], 2175);
    add(checks, CLOSED, "deflection below, one splice", sag(r, 0), 0.4459);
    add(checks, CLOSED, "deflection above, one splice", sag(r, 1), 0.3430);
  }

  private static void coefficients(List<OutsideCheck> checks) {
    // end reaction, next reaction, −M, +M, Δ of equal spans under a uniform load (published beam
    // tables, from memory); 5/384 = 0.013021, 9/128 = 0.0703
    double[][] table = {
      {0.5, 0.5, 0, 0.125, 0.013021},
      {0.375, 1.25, 0.125, 0.0703, 0.005416},
      {0.400, 1.100, 0.1000, 0.0800, 0.00688},
      {0.3929, 1.1429, 0.1071, 0.0772, 0.00646}
    };
    for (int spans = 1; spans <= 4; spans++) {
      double[] places = new double[spans + 1];
      for (int i = 0; i <= spans; i++) {
        places[i] = 144.0 * i;
      }
      BeamResponse r = uniformly(inches(0, 144 * spans, places));
      double[] row = table[spans - 1];
      double load = 12.5 * 144;
      String of = " of " + spans + " spans";
      add(checks, TABLES, "end reaction" + of, pounds(r)[0] / load, row[0]);
      add(checks, TABLES, "next reaction" + of, pounds(r)[1] / load, row[1]);
      if (row[2] != 0) {
        double least = -poundInches(r.moments().least().value()) / (load * 144);
        add(checks, TABLES, "−M" + of, least, row[2]);
      }
      double most = poundInches(r.moments().greatest().value()) / (load * 144);
      add(checks, TABLES, "+M" + of, most, row[3]);
      double deflection = r.deflections(0, 144 * spans * IN).greatest().value() / IN;
      double unit = load * Math.pow(144, 3) / 80e6;
      add(checks, TABLES, "deflection" + of, deflection / unit, row[4]);
    }
  }

  private static double sag(BeamResponse response, int span) {
    return response.spans().get(span).sags().largest().value() / IN;
  }

  /** Lites on horizontals, parted by 45° lines. */
  public static List<OutsideCheck> tributaries() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook CHECK 1.4a
    BeamResponse wide = on(144, 60, 80e6);
    double moment = poundInches(wide.moments().greatest().value());
    add(checks, CLOSED, "moment of a trapezoid", moment, 30_525);
    double deflection = wide.deflections(0, 144 * IN).greatest().value() / IN;
    add(checks, CLOSED, "deflection of a trapezoid", deflection, 0.8151);
    add(checks, CLOSED, "reaction of a trapezoid", pounds(wide)[0], 712.5);
    // handbook CHECK 1.4b
    BeamResponse narrow = on(60, 72, 15e6);
    moment = poundInches(narrow.moments().greatest().value());
    add(checks, CLOSED, "moment of a triangle", moment, 3750);
    deflection = narrow.deflections(0, 60 * IN).greatest().value() / IN;
    add(checks, CLOSED, "deflection of a triangle", deflection, 0.0900);
    add(checks, CLOSED, "reaction of a triangle", pounds(narrow)[0], 187.5);
    return checks;
  }

  private static BeamResponse on(double edge, double other, double rigidity) {
    double pressure = 12.5 * LB / IN / (30 * IN);
    TributaryLoad.Result shape =
        solved(TributaryLoad.solve(new TributaryLoad.Input(pressure, edge * IN, other * IN)));
    List<Beam.Support> ends = List.of(Beam.Support.pin(0), Beam.Support.pin(edge * IN));
    Beam beam = Beam.uniform(0, edge * IN, rigidity * LB * IN * IN, ends, List.of());
    return BeamFixtures.solve(beam, shape.loads(0).toArray(BeamLoad[]::new));
  }

  /** Glass on setting blocks. */
  public static List<OutsideCheck> sags() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook CHECK 2.2
    add(checks, CLOSED, "blocks at the quarter points", sag(15, 0).byGlass() / IN, 0.0949);
    add(checks, CLOSED, "blocks at the eighth points", sag(7.5, 0).byGlass() / IN, 0.0507);
    double own = sag(15, 2.2 * LB / FT).byOwnWeight() / IN;
    // printed with two figures
    checks.add(new OutsideCheck("own weight", own, 0.0052, 0.01, CLOSED));
    return checks;
  }

  private static DeadLoadSag.Result sag(double block, double ownWeight) {
    double rigidity = 10e6 * 0.60 * LB * IN * IN;
    return solved(
        DeadLoadSag.solve(
            new DeadLoadSag.Input(60 * IN, rigidity, 184 * LB, block * IN, ownWeight, 0)));
  }
}
