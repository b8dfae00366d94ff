package mullwright.analysis;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import mullwright.analysis.glass.DeflectionPolynomialTest;
import mullwright.analysis.glass.DesignGlassStrengthTest;
import mullwright.analysis.glass.GlassFailurePredictionTest;
import mullwright.analysis.glass.GlassMassTest;
import mullwright.analysis.glass.GlassSizeTest;
import mullwright.analysis.glass.InsulatingUnitSharingTest;
import mullwright.analysis.glass.LaminatedThicknessTest;
import mullwright.analysis.glass.LargeDeflectionPlateTest;
import mullwright.analysis.glass.LoadResistanceTest;
import mullwright.analysis.glass.PlateClosedFormTest;
import mullwright.analysis.glass.SettingBlocksTest;
import mullwright.analysis.thermal.AreaWeightedTransmittanceTest;
import mullwright.analysis.thermal.ComponentTransmittanceTest;
import mullwright.analysis.wind.CladdingPressureTest;
import mullwright.analysis.wind.FacadeZonePressureTest;
import mullwright.analysis.wind.VelocityPressureTest;

/**
 * Prints how far each glass, wind and thermal method strays from what it was compared with; the
 * text is the resource {@code accuracy-glass-wind-thermal.md}.
 */
final class AccuracyTable {
  private AccuracyTable() {}

  public static void main(String[] arguments) {
    new PrintStream(System.out, true, StandardCharsets.UTF_8).print(text());
  }

  /** The resource as the methods of this moment make it. */
  static String text() {
    StringBuilder text = new StringBuilder();
    text.append("# Accuracy of the glass, wind and thermal methods\n\n");
    text.append("Largest relative difference between a method's result and the value it was");
    text.append(" compared with, over all points\n");
    text.append("compared. Written by the tests that make the comparisons.\n\n");
    text.append("\"Recomputed\" values are a published formula worked out apart from this code;");
    text.append(" their differences are mostly the\n");
    text.append("rounding of the printed value. Values \"from memory\" of a standard have two or");
    text.append(" three digits. Decisions and look-up\n");
    text.append("tables (safety glazing, minimum thickness, glass type factors) are compared case");
    text.append(" by case and have no difference to\n");
    text.append("print.\n\n");
    text.append("| method | compared with | points | largest difference | at |\n");
    text.append("|---|---|---:|---:|---|\n");
    methods().forEach((method, checks) -> rows(text, method, checks));
    text.append("\nResults are aids to drafting. A licensed engineer and the local code govern.\n");
    return text.toString();
  }

  private static Map<String, List<OutsideCheck>> methods() {
    Map<String, List<OutsideCheck>> methods = new LinkedHashMap<>();
    methods.put(
        "LargeDeflectionPlate",
        all(
            LargeDeflectionPlateTest.shells(),
            LargeDeflectionPlateTest.tables(),
            LargeDeflectionPlateTest.deflections(),
            PlateClosedFormTest.plates(),
            LargeDeflectionPlateTest.linear()));
    methods.put(
        "GlassFailurePrediction",
        all(
            GlassFailurePredictionTest.charts(),
            GlassFailurePredictionTest.loads(),
            GlassFailurePredictionTest.shells(),
            GlassFailurePredictionTest.risks()));
    methods.put("LoadResistance, LoadShare", LoadResistanceTest.checks());
    methods.put("LoadDurationFactor", LoadResistanceTest.durations());
    methods.put(
        "DeflectionPolynomial",
        all(DeflectionPolynomialTest.checks(), DeflectionPolynomialTest.againstThePlate()));
    methods.put("LaminatedThickness", LaminatedThicknessTest.checks());
    methods.put(
        "PlateClosedForm",
        all(PlateClosedFormTest.checks(), PlateClosedFormTest.againstThePlate()));
    methods.put("InsulatingUnitSharing", InsulatingUnitSharingTest.checks());
    methods.put("DesignGlassStrength", DesignGlassStrengthTest.checks());
    methods.put("GlassSize", GlassSizeTest.checks());
    methods.put("GlassMass", GlassMassTest.checks());
    methods.put("SettingBlocks", SettingBlocksTest.checks());
    methods.put("VelocityPressure", VelocityPressureTest.checks());
    methods.put("LowRiseCladding, EffectiveWindArea, EdgeZone", CladdingPressureTest.lowRise());
    methods.put("HighRiseCladding", CladdingPressureTest.highRise());
    methods.put("PeakVelocityPressure, FacadeZonePressure", FacadeZonePressureTest.checks());
    methods.put("ComponentTransmittance", ComponentTransmittanceTest.checks());
    methods.put("AreaWeightedTransmittance", AreaWeightedTransmittanceTest.checks());
    return methods;
  }

  @SafeVarargs
  private static List<OutsideCheck> all(List<OutsideCheck>... lists) {
    List<OutsideCheck> all = new ArrayList<>();
    for (List<OutsideCheck> list : lists) {
      all.addAll(list);
    }
    return all;
  }

  private static void rows(StringBuilder text, String method, List<OutsideCheck> checks) {
    Map<String, List<OutsideCheck>> bySource = new LinkedHashMap<>();
    for (OutsideCheck check : checks) {
      bySource.computeIfAbsent(check.source(), source -> new ArrayList<>()).add(check);
    }
    bySource.forEach(
        (source, group) -> {
          OutsideCheck worst =
              group.stream()
                  .max(Comparator.comparingDouble(OutsideCheck::difference))
                  .orElseThrow();
          text.append(
              String.format(
                  Locale.ROOT,
                  "| %s | %s | %d | %s | %s |\n",
                  method,
                  source,
                  group.size(),
                  percent(worst.difference()),
                  percent(worst.difference()).startsWith("<") ? "" : worst.what()));
        });
  }

  private static String percent(double difference) {
    return difference < 5e-5 ? "< 0.01 %" : String.format(Locale.ROOT, "%.2f %%", 100 * difference);
  }
}
