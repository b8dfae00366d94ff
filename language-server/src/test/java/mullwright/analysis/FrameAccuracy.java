package mullwright.analysis;

import static mullwright.analysis.OutsideCheck.solved;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.KIP;
import static mullwright.analysis.UsUnits.KSI;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.deflection.DeadLoadLimit;
import mullwright.analysis.deflection.En13830DeadLoadLimit;
import mullwright.analysis.deflection.En13830Limit;
import mullwright.analysis.deflection.GlassEdgeLimit;
import mullwright.analysis.deflection.TirA11Limit;
import mullwright.analysis.strength.AluminumAllowable;
import mullwright.analysis.strength.AluminumAlloy;
import mullwright.analysis.strength.BendingStress;
import mullwright.analysis.strength.LateralTorsionalBuckling;
import mullwright.analysis.strength.LoadSharing;
import mullwright.analysis.strength.SteelAllowable;

/** Limits and strengths of members held against values from outside. */
final class FrameAccuracy {
  private static final double TENTH = 1e-3;
  private static final double IN3 = IN * IN * IN;
  private static final double IN4 = IN3 * IN;
  private static final double MOMENT = 32.4 * KIP * IN;
  private static final String CLOSED = "closed form, recomputed";
  private static final String PRACTICE = "common practice";
  private static final String MANUAL = "Aluminum Design Manual, from memory, recomputed";

  private FrameAccuracy() {}

  private static OutsideCheck check(String source, String what, double computed, double expected) {
    return new OutsideCheck(what, computed, expected, TENTH, source);
  }

  /** Deflection under wind. */
  static List<OutsideCheck> windLimits() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook CHECK 2.1
    double[][] us = {{144, 0.8229}, {162, 0.9257}, {168, 0.9500}, {216, 1.1500}};
    for (double[] each : us) {
      double limit = solved(TirA11Limit.solve(each[0] * IN)).limit() / IN;
      double edge =
          solved(GlassEdgeLimit.solve(each[0] * IN, GlassEdgeLimit.Edition.RECENT)).limit() / IN;
      String span = each[0] + " in";
      checks.add(check("AAMA TIR-A11, clause from memory", "span " + span, limit, each[1]));
      checks.add(check("IBC 2403.3, recent editions", "edge " + span, edge, each[1]));
    }
    // L/175, at most 3/4 in: 120/175 = 0.6857, 131.25/175 = 0.75, 144/175 > 0.75
    double[][] older = {{120, 0.6857}, {131.25, 0.75}, {144, 0.75}};
    for (double[] each : older) {
      double edge =
          solved(GlassEdgeLimit.solve(each[0] * IN, GlassEdgeLimit.Edition.OLDER)).limit() / IN;
      String source = "IBC 2403.3, older editions, from memory";
      checks.add(check(source, "edge " + each[0] + " in", edge, each[1]));
    }
    // handbook CHECK 2.1b
    double[][] europe = {{3000, 15.0}, {3657.6, 17.192}, {7500, 30.0}};
    for (double[] each : europe) {
      double limit = solved(En13830Limit.solve(each[0] / 1000)).limit() * 1000;
      checks.add(check("EN 13830:2015, from memory", "span " + each[0] + " mm", limit, each[1]));
    }
    return checks;
  }

  /** Sag under glass. */
  static List<OutsideCheck> weightLimits() {
    List<OutsideCheck> checks = new ArrayList<>();
    // common practice: L/360, at most 1/8 in: 36/360 = 0.1, 60/360 > 0.125
    double[][] us = {{36, 0.1}, {60, 0.125}};
    for (double[] each : us) {
      double limit = solved(DeadLoadLimit.solve(each[0] * IN)).limit() / IN;
      checks.add(check(PRACTICE, "span " + each[0] + " in", limit, each[1]));
    }
    // EN 13830, from memory: L/500, at most 3 mm: 1000/500 = 2, 1500/500 = 3, 1800/500 > 3
    double[][] europe = {{1000, 2.0}, {1500, 3.0}, {1800, 3.0}};
    for (double[] each : europe) {
      double limit = solved(En13830DeadLoadLimit.solve(each[0] / 1000)).limit() * 1000;
      checks.add(check("EN 13830, from memory", "span " + each[0] + " mm", limit, each[1]));
    }
    return checks;
  }

  private static AluminumAllowable.Result allowable(String designation) {
    AluminumAlloy alloy = AluminumAlloy.find(designation).orElseThrow();
    return solved(AluminumAllowable.solve(new AluminumAllowable.Input(alloy, 0.125 * IN)));
  }

  /** Allowable stresses, and bending against them. */
  static List<OutsideCheck> stresses() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook section 3.1
    String[] alloys = {"6063-T5", "6063-T6", "6061-T6", "6005A-T61"};
    double[][] table = {{9.70, 11.28}, {15.15, 15.38}, {21.21, 19.49}, {21.21, 19.49}};
    for (int i = 0; i < alloys.length; i++) {
      AluminumAllowable.Result r = allowable(alloys[i]);
      checks.add(check(MANUAL, alloys[i] + " by yield", r.byYield() / KSI, table[i][0]));
      checks.add(check(MANUAL, alloys[i] + " by rupture", r.byRupture() / KSI, table[i][1]));
    }
    // handbook CHECK 3.2
    double[] ratios = {1.285, 0.822};
    for (int i = 0; i < ratios.length; i++) {
      double allowed = allowable(alloys[i]).stress();
      BendingStress.Result r =
          solved(BendingStress.solve(new BendingStress.Input(MOMENT, 2.6 * IN3, allowed)));
      checks.add(check(CLOSED, "stress of " + alloys[i], r.stress() / KSI, 12.4615));
      checks.add(check(CLOSED, "use of " + alloys[i], r.utilisation(), ratios[i]));
    }
    double steel = solved(SteelAllowable.solve(36 * KSI)).stress() / KSI;
    checks.add(check(PRACTICE, "steel of 36 ksi", steel, 21.6)); // 0.6 × 36 ksi, common practice
    return checks;
  }

  /** Buckling sideways. */
  static List<OutsideCheck> buckling() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook CHECK 3.3a
    LateralTorsionalBuckling.Result tube = tube(60, 2.0);
    checks.add(check(MANUAL, "B_c", tube.intercept() / KSI, 27.635));
    checks.add(check(MANUAL, "D_c", tube.decline() / KSI, 0.14456));
    checks.add(check(MANUAL, "C_c", tube.intersection(), 78.38));
    checks.add(check(MANUAL, "λ of a tube", tube.slenderness(), 21.83));
    checks.add(check(MANUAL, "M_n of a tube", tube.nominal() / (KIP * IN), 65.68));
    checks.add(check(MANUAL, "allowable of a tube", tube.allowable() / (KIP * IN), 39.81));
    // handbook CHECK 3.3b
    LateralTorsionalBuckling.Result split = tube(144, 0.05);
    checks.add(check(MANUAL, "λ of a split tube", split.slenderness(), 85.04));
    checks.add(check(MANUAL, "M_n of a split tube", split.nominal() / (KIP * IN), 35.84));
    checks.add(check(MANUAL, "allowable of a split tube", split.allowable() / (KIP * IN), 21.72));
    return checks;
  }

  private static LateralTorsionalBuckling.Result tube(double unbraced, double torsion) {
    return solved(
        LateralTorsionalBuckling.solve(
            new LateralTorsionalBuckling.Input(
                unbraced * IN,
                2.6 * IN3,
                2.99 * IN3,
                1.5 * IN4,
                torsion * IN4,
                1,
                25 * KSI,
                AluminumAlloy.MODULUS)));
  }

  /** Reinforcement. */
  static List<OutsideCheck> sharing() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook CHECK 3.4
    double member = 10.0e3 * KSI * 8.0 * IN4;
    double steel = 29e3 * KSI * 5.2083 * IN4;
    LoadSharing.Result r = solved(LoadSharing.solve(new LoadSharing.Input(member, steel, MOMENT)));
    checks.add(check(CLOSED, "share of the flat", r.share(), 0.6537));
    checks.add(check(CLOSED, "M_a", r.memberMoment() / (KIP * IN), 11.22));
    checks.add(check(CLOSED, "M_s", r.reinforcementMoment() / (KIP * IN), 21.18));
    double aluminum = r.memberMoment() / (2.6 * IN3) / KSI;
    double flat = r.reinforcementMoment() / (2.0833 * IN3) / KSI;
    // printed to 0.01 ksi
    checks.add(new OutsideCheck("f_a", aluminum, 4.31, 2e-3, CLOSED));
    checks.add(new OutsideCheck("f_s", flat, 10.17, 1e-3, CLOSED));
    checks.add(check(CLOSED, "deflection", 0.8748 * member / r.rigidity(), 0.3030));
    return checks;
  }
}
