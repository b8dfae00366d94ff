package mullwright.analysis;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.analysis.beam.BeamAccuracy;
import mullwright.analysis.beam.BeamAgainstFiniteElementsTest;
import mullwright.analysis.beam.HingedBeamAgainstForceMethodTest;

/**
 * Prints how far each method of frame and fixings strays from what it was compared with; the text
 * is the resource {@code accuracy-frame.md}.
 */
final class FrameAccuracyTable {
  private FrameAccuracyTable() {}

  public static void main(String[] arguments) {
    new PrintStream(System.out, true, StandardCharsets.UTF_8).print(text());
  }

  /** The resource as the methods of this moment make it. */
  static String text() {
    return AccuracyText.of(
        "Accuracy of the methods of frame and fixings",
        "count of anchors, rules of contact, mechanisms",
        methods());
  }

  /** The comparisons, method by method. */
  static Map<String, List<OutsideCheck>> methods() {
    Map<String, List<OutsideCheck>> methods = new LinkedHashMap<>();
    methods.put(
        "HingedBeam",
        AccuracyText.all(
            BeamAccuracy.beams(),
            BeamAgainstFiniteElementsTest.comparisons(),
            HingedBeamAgainstForceMethodTest.comparisons()));
    methods.put("TributaryLoad, HingedBeam", BeamAccuracy.tributaries());
    methods.put("DeadLoadSag", BeamAccuracy.sags());
    methods.put("TirA11Limit, GlassEdgeLimit, En13830Limit", FrameAccuracy.windLimits());
    methods.put("DeadLoadLimit, En13830DeadLoadLimit", FrameAccuracy.weightLimits());
    methods.put("AluminumAllowable, SteelAllowable, BendingStress", FrameAccuracy.stresses());
    methods.put("LateralTorsionalBuckling", FrameAccuracy.buckling());
    methods.put("LoadSharing", FrameAccuracy.sharing());
    methods.put("DeadLoadReaction, AnchorCouple", FixingAccuracy.anchors());
    methods.put(
        "ThermalMovement, SpliceGap, SealedJoint, SlotLength, HeadGap, SleeveEngagement",
        FixingAccuracy.movement());
    methods.put("GlassDrift", FixingAccuracy.drift());
    methods.put("GalvanicSeries", FixingAccuracy.metals());
    methods.put("BearingStrength, ScrewStrength, HoleLayout", FixingAccuracy.fasteners());
    methods.put("ToleranceStack", FixingAccuracy.tolerances());
    return methods;
  }
}
