package mullwright.analysis;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
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
    return AccuracyText.of(
        "Accuracy of the glass, wind and thermal methods",
        "safety glazing, minimum thickness, glass type factors",
        methods());
  }

  private static Map<String, List<OutsideCheck>> methods() {
    Map<String, List<OutsideCheck>> methods = new LinkedHashMap<>();
    methods.put(
        "LargeDeflectionPlate",
        AccuracyText.all(
            LargeDeflectionPlateTest.shells(),
            LargeDeflectionPlateTest.tables(),
            LargeDeflectionPlateTest.deflections(),
            PlateClosedFormTest.plates(),
            LargeDeflectionPlateTest.linear()));
    methods.put(
        "GlassFailurePrediction",
        AccuracyText.all(
            GlassFailurePredictionTest.charts(),
            GlassFailurePredictionTest.contours(),
            GlassFailurePredictionTest.loads(),
            GlassFailurePredictionTest.shells(),
            GlassFailurePredictionTest.risks()));
    methods.put("LoadResistance, LoadShare", LoadResistanceTest.checks());
    methods.put("LoadDurationFactor", LoadResistanceTest.durations());
    methods.put(
        "DeflectionPolynomial",
        AccuracyText.all(
            DeflectionPolynomialTest.checks(), DeflectionPolynomialTest.againstThePlate()));
    methods.put("LaminatedThickness", LaminatedThicknessTest.checks());
    methods.put(
        "PlateClosedForm",
        AccuracyText.all(PlateClosedFormTest.checks(), PlateClosedFormTest.againstThePlate()));
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
}
