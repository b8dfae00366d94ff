package mullwright.report.ifc;

import java.util.ArrayList;
import java.util.List;

/** The units of a file: millimetres, and for all else SI units without a prefix. */
final class Units {
  private Units() {}

  static StepValue.Reference of(StepFile file) {
    StepValue metre = unit(file, "LENGTHUNIT", StepValue.NONE, "METRE");
    StepValue kelvin = unit(file, "THERMODYNAMICTEMPERATUREUNIT", StepValue.NONE, "KELVIN");
    StepValue watt = unit(file, "POWERUNIT", StepValue.NONE, "WATT");
    List<StepValue> units = new ArrayList<>();
    units.add(unit(file, "LENGTHUNIT", StepValue.word("MILLI"), "METRE"));
    units.add(unit(file, "AREAUNIT", StepValue.NONE, "SQUARE_METRE"));
    units.add(unit(file, "VOLUMEUNIT", StepValue.NONE, "CUBIC_METRE"));
    units.add(unit(file, "PLANEANGLEUNIT", StepValue.NONE, "RADIAN"));
    units.add(unit(file, "MASSUNIT", StepValue.word("KILO"), "GRAM"));
    units.add(
        file.add(
            "IFCDERIVEDUNIT",
            StepValue.list(
                element(file, watt, 1), element(file, metre, -2), element(file, kelvin, -1)),
            StepValue.word("THERMALTRANSMITTANCEUNIT"),
            StepValue.NONE));
    return file.add("IFCUNITASSIGNMENT", StepValue.list(units));
  }

  private static StepValue unit(StepFile file, String type, StepValue prefix, String name) {
    return file.add(
        "IFCSIUNIT", StepValue.DERIVED, StepValue.word(type), prefix, StepValue.word(name));
  }

  private static StepValue element(StepFile file, StepValue unit, int exponent) {
    return file.add("IFCDERIVEDUNITELEMENT", unit, StepValue.whole(exponent));
  }
}
