package mullwright.model;

import static mullwright.model.PropertyKinds.PRACTICE;
import static mullwright.model.PropertyKinds.metal;
import static mullwright.model.PropertyKinds.of;
import static mullwright.model.PropertyKinds.stock;

import java.util.Map;

/** Properties of plates, caps, gaskets and glass. */
final class CoverSchema {
  private CoverSchema() {}

  static void addTo(Map<PartKind, PartSchema> parts) {
    PartSchema.put(
        parts,
        PartKind.PRESSURE_PLATE,
        false,
        metal("aluminium"),
        of("width", "how wide it is", "LENGTH"),
        stock(),
        of("end-gap", "clearance at each end of a horizontal plate", "LENGTH")
            .assumed("1/8\"", PRACTICE),
        of("fastener", "what holds it", "FASTENER"),
        of("weeps", "the side of a horizontal plate its weeps are on", "upper|lower")
            .assumed("upper", PRACTICE),
        of("spacing", "most from fastener to fastener", "LENGTH").assumed("9\"", PRACTICE),
        of("end-distance", "first fastener from the end", "LENGTH").assumed("2\"", PRACTICE));
    PartSchema.put(
        parts,
        PartKind.FACE_CAP,
        false,
        metal("aluminium"),
        of("face", "width seen in elevation", "LENGTH"),
        stock(),
        of("end-gap", "clearance at each end of a horizontal cap", "LENGTH")
            .assumed("1/32\"", PRACTICE));
    PartSchema.put(
        parts,
        PartKind.GLASS,
        false,
        of("ply", "a pane: its designation, then treatment and tint", "LENGTH [WORDS]", "WORDS")
            .repeated(),
        of("space", "a cavity, then what fills it", "LENGTH [WORDS]", "WORDS").repeated(),
        of("interlayer", "what joins two plies", "LENGTH [WORDS]", "WORDS").repeated(),
        of("coating", "a coating and its surface, counted from outdoors", "WORDS surface NUMBER")
            .repeated(),
        of("opacified", "cannot be seen through", "[surface NUMBER]"),
        of("safety", "rated as safety glazing", "yes|no"),
        of("U", "thermal transmittance", "U_FACTOR"),
        of("limit", "largest width and height that are made", "LENGTH x LENGTH"),
        of("least", "smallest width and height that are made", "LENGTH x LENGTH"),
        of("largest-area", "largest area that is made", "AREA"),
        of(
            "shear-modulus",
            "of its interlayers under wind at their warmest, from their maker",
            "STRESS"),
        of(
            "edge-psi",
            "linear transmittance where its edge meets the frame",
            "LINEAR_TRANSMITTANCE"),
        of("bite", "in place of the profile's", "LENGTH"),
        of("billed", "width and height are billed rounded up to a multiple of it", "LENGTH"));
  }
}
