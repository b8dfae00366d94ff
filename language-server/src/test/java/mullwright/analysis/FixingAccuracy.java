package mullwright.analysis;

import static mullwright.analysis.OutsideCheck.solved;
import static mullwright.analysis.UsUnits.DEG_F;
import static mullwright.analysis.UsUnits.FT;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.KIP;
import static mullwright.analysis.UsUnits.KSI;
import static mullwright.analysis.UsUnits.LB;
import static mullwright.analysis.UsUnits.PSF;
import static mullwright.analysis.UsUnits.PSI;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.anchor.AnchorCouple;
import mullwright.analysis.anchor.DeadLoadReaction;
import mullwright.analysis.drift.GlassDrift;
import mullwright.analysis.fastener.BearingStrength;
import mullwright.analysis.fastener.HoleLayout;
import mullwright.analysis.fastener.ScrewStrength;
import mullwright.analysis.fastener.ToleranceStack;
import mullwright.analysis.metal.GalvanicSeries;
import mullwright.analysis.metal.Material;
import mullwright.analysis.movement.Expansion;
import mullwright.analysis.movement.HeadGap;
import mullwright.analysis.movement.MetalTemperature;
import mullwright.analysis.movement.RestrainedExpansion;
import mullwright.analysis.movement.SealedJoint;
import mullwright.analysis.movement.SleeveEngagement;
import mullwright.analysis.movement.SlotLength;
import mullwright.analysis.movement.SpliceBand;
import mullwright.analysis.movement.SpliceGap;
import mullwright.analysis.movement.SpliceMovement;
import mullwright.analysis.movement.SpliceRange;
import mullwright.analysis.movement.ThermalMovement;

/** Anchors, movement, drift, contact of metals and fasteners held against values from outside. */
final class FixingAccuracy {
  private static final double TENTH = 1e-3;
  private static final double ALUMINUM = Expansion.ALUMINUM.coefficient();
  private static final String CLOSED = "closed form, recomputed";
  private static final String HAND = "worked by hand";
  private static final String MANUAL = "Aluminum Design Manual, from memory, recomputed";

  private FixingAccuracy() {}

  private static OutsideCheck check(String source, String what, double computed, double expected) {
    return new OutsideCheck(what, computed, expected, TENTH, source);
  }

  /** Weight on anchors and the pull it makes. */
  static List<OutsideCheck> anchors() {
    // handbook CHECK 5a
    double weight =
        solved(DeadLoadReaction.solve(new DeadLoadReaction.Input(8 * PSF, 5 * FT, 12 * FT, 0)))
            .weight();
    AnchorCouple.Result couple =
        solved(AnchorCouple.solve(new AnchorCouple.Input(480 * LB, 3 * IN, 4 * IN)));
    return List.of(
        check(CLOSED, "weight of a storey", weight / LB, 480),
        check(CLOSED, "moment of the weight", couple.moment() / (LB * IN), 1440),
        check(CLOSED, "pull of the couple", couple.pull() / LB, 360));
  }

  private static SpliceMovement storey(double slabDown) {
    MetalTemperature metal = new MetalTemperature(-20 * DEG_F, 160 * DEG_F, 70 * DEG_F);
    return new SpliceMovement(ALUMINUM, 144 * IN, metal, slabDown, 0, 0);
  }

  /** Growth, gaps, slots and sleeves. */
  static List<OutsideCheck> movement() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook CHECK 4a
    double us = grown(ALUMINUM, 144 * IN, 180 * DEG_F) / IN;
    checks.add(check(CLOSED, "growth of 12 ft by 180 °F", us, 0.3396));
    double si = grown(23.6e-6, 3.6576, 100) * 1000;
    checks.add(check(CLOSED, "growth of 3657.6 mm by 100 °C", si, 8.632));
    // handbook CHECK 4b
    SpliceMovement storey = storey(0.25 * IN);
    SpliceGap.Result gap = solved(SpliceGap.solve(new SpliceGap.Input(storey, IN / 16, IN / 16)));
    checks.add(check(CLOSED, "closing", gap.thermalClosing() / IN, 0.16978));
    checks.add(check(CLOSED, "opening", gap.thermalOpening() / IN, 0.16978));
    checks.add(check(CLOSED, "splice gap", gap.needed() / IN, 0.5448));
    double[][] classes = {{0.50, 0.9021}, {0.25, 1.7416}};
    for (double[] each : classes) {
      double needed = sealed(storey.closing(), storey.opening(), each[0], IN / 16);
      String what = "sealed joint of class " + each[0];
      checks.add(check("ASTM C1472, from memory, recomputed", what, needed / IN, each[1]));
    }
    // handbook CHECK 12b
    double[][] perimeter = {{0.25, 1.125}, {0.50, 0.625}};
    for (double[] each : perimeter) {
      double needed = sealed(0.25 * IN, 0.25 * IN, each[0], 0.125 * IN);
      String what = "perimeter joint of class " + each[0];
      checks.add(check("ASTM C1472, from memory, recomputed", what, needed / IN, each[1]));
    }
    // handbook CHECK 4c
    double stress =
        solved(
                RestrainedExpansion.solve(
                    new RestrainedExpansion.Input(10e6 * PSI, ALUMINUM, 90 * DEG_F)))
            .stress();
    checks.add(check(CLOSED, "restrained length", stress / PSI, 11_790));
    // handbook CHECK 4d, printed to 0.1 in
    double best = solved(SpliceBand.solve(144 * IN)).best() / IN;
    checks.add(new OutsideCheck("place without moment", best, 30.43, 2e-3, CLOSED));
    // handbook rule A2
    double slot =
        solved(SlotLength.solve(new SlotLength.Input(0.5 * IN, 0.625 * IN, 0.625 * IN, 0.25 * IN)))
            .needed();
    checks.add(check("common practice, worked", "slot", slot / IN, 2.0));
    byHand(checks);
    return checks;
  }

  private static void byHand(List<OutsideCheck> checks) {
    double head =
        solved(HeadGap.solve(new HeadGap.Input(0.375 * IN, 0.085 * IN, 0.125 * IN))).needed();
    checks.add(check(HAND, "head joint", head / IN, 0.585)); // 3/8 + 0.085 + 1/8 in
    SpliceRange.Result range =
        solved(SpliceRange.solve(new SpliceRange.Input(0.5625 * IN, storey(0.25 * IN), IN / 16)));
    // 9/16 in less and more 0.16978 in (CHECK 4b)
    checks.add(check(HAND, "gap on the hottest day", range.hottestDay() / IN, 0.3927));
    checks.add(check(HAND, "gap on the coldest day", range.coldestDay() / IN, 0.7323));
    // widest gap 0.5625 + 0.16978 + 0.0625 = 0.7948 in
    SleeveEngagement.Result sleeve =
        solved(
            SleeveEngagement.solve(
                new SleeveEngagement.Input(10 * IN, 4 * IN, 0.5625 * IN, 0.7948 * IN, 4 * IN)));
    // lap 10 − 4 − 0.7948, sleeve 4 + 0.7948 + 4
    checks.add(check(HAND, "lap of a sleeve", sleeve.lapAtWidest() / IN, 5.2052));
    checks.add(check(HAND, "sleeve needed", sleeve.neededSleeve() / IN, 8.7948));
  }

  private static double grown(double coefficient, double length, double kelvins) {
    return solved(ThermalMovement.solve(new ThermalMovement.Input(coefficient, length, kelvins)))
        .change();
  }

  private static double sealed(double closing, double opening, double group, double tolerance) {
    return solved(
            SealedJoint.solve(new SealedJoint.Input(closing, opening, group, group, tolerance)))
        .needed();
  }

  /** Glass against its frame. */
  static List<OutsideCheck> drift() {
    List<OutsideCheck> checks = new ArrayList<>();
    String source = "ASCE 7, section 13.5.9, from memory, recomputed";
    // handbook CHECK 9a
    double[][] cases = {{1.0, 0.90}, {1.5, 1.35}};
    for (double[] each : cases) {
      GlassDrift.Result r =
          solved(
              GlassDrift.solve(
                  new GlassDrift.Input(
                      72 * IN, 60 * IN, 0.25 * IN, 0.25 * IN, 0.72 * IN, each[0])));
      checks.add(check(source, "clear drift of 60 × 72 in", r.clearDrift() / IN, 1.10));
      checks.add(check(source, "demand at I_e " + each[0], r.demand() / IN, each[1]));
    }
    // handbook CHECK 9b
    GlassDrift.Result metric =
        solved(GlassDrift.solve(new GlassDrift.Input(2, 1.5, 0.008, 0.006, 0.01, 1)));
    checks.add(check(source, "clear drift of 1.5 × 2 m", metric.clearDrift() * 1000, 32.0));
    return checks;
  }

  /** Differences of the galvanic series against alloy 6063. */
  static List<OutsideCheck> metals() {
    List<OutsideCheck> checks = new ArrayList<>();
    String source = "anodic-index practice, widely reprinted table";
    // handbook CHECK 6
    Material[] metals = {
      Material.STAINLESS_300,
      Material.GALVANIZED_STEEL,
      Material.CARBON_STEEL,
      Material.COPPER,
      Material.BRASS,
      Material.LEAD,
      Material.NICKEL
    };
    double[] volts = {0.40, 0.30, 0.05, 0.55, 0.50, 0.20, 0.60};
    for (int i = 0; i < metals.length; i++) {
      double difference = GalvanicSeries.difference(metals[i], Material.ALUMINUM).orElseThrow();
      checks.add(check(source, metals[i].words(), difference, volts[i]));
    }
    return checks;
  }

  /** Bearing, screws, edge distances. */
  static List<OutsideCheck> fasteners() {
    List<OutsideCheck> checks = new ArrayList<>();
    // handbook CHECK 11a
    double bolt = bearing(BearingStrength.Kind.BOLT, 0.75);
    checks.add(check(MANUAL, "bearing of a bolt", bolt / KIP, 0.9615));
    double screw = bearing(BearingStrength.Kind.TAPPING_SCREW, 0.75);
    checks.add(check(MANUAL, "bearing of a screw", screw / KIP, 0.625));
    double edge = bearing(BearingStrength.Kind.TAPPING_SCREW, 0.40);
    checks.add(check(MANUAL, "bearing near an edge", edge / KIP, 0.500));
    // handbook CHECK 11b
    double tilt =
        solved(
                ScrewStrength.solve(
                    new ScrewStrength.Tilting(0.190 * IN, 0.125 * IN, 0.125 * IN, 22 * KSI)))
            .allowable();
    checks.add(check(MANUAL, "tilting of a no. 10", tilt / KIP, 0.593));
    // handbook CHECK 11c, printed without decimals
    double out =
        solved(ScrewStrength.solve(new ScrewStrength.PullOut(0.25 * IN, 0.125 * IN, 25 * KSI, 1.2)))
            .allowable();
    checks.add(new OutsideCheck("pull-out", out / LB, 312, 2e-3, MANUAL));
    // handbook section 11
    HoleLayout.Result quarter = solved(HoleLayout.solve(0.25 * IN));
    checks.add(check(MANUAL, "least edge of 1/4 in", quarter.leastEdge() / IN, 0.375));
    checks.add(check(MANUAL, "least spacing of 1/4 in", quarter.leastSpacing() / IN, 0.625));
    return checks;
  }

  private static double bearing(BearingStrength.Kind kind, double edge) {
    return solved(
            BearingStrength.solve(
                new BearingStrength.Input(kind, 0.25 * IN, 0.125 * IN, edge * IN, 30 * KSI)))
        .allowable();
  }

  /** Tolerances in a row. */
  static List<OutsideCheck> tolerances() {
    // handbook CHECK 11d
    List<Double> terms = List.of(IN / 16, IN / 16, IN / 8, IN / 32, IN / 16);
    ToleranceStack.Result r = solved(ToleranceStack.solve(new ToleranceStack.Input(terms, 1)));
    return List.of(
        check(CLOSED, "worst case", r.worst() / IN, 0.34375),
        check(CLOSED, "root-sum-square", r.statistical().orElseThrow() / IN, 0.16829));
  }
}
