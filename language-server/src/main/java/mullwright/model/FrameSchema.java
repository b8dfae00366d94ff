package mullwright.model;

import static mullwright.model.PropertyKinds.PRACTICE;
import static mullwright.model.PropertyKinds.hole;
import static mullwright.model.PropertyKinds.metal;
import static mullwright.model.PropertyKinds.of;
import static mullwright.model.PropertyKinds.outline;
import static mullwright.model.PropertyKinds.stock;

import java.util.Map;

/** Properties of systems, profiles and what joins them. */
final class FrameSchema {
  private FrameSchema() {}

  static void addTo(Map<PartKind, PartSchema> parts) {
    PartSchema.put(
        parts,
        PartKind.SYSTEM,
        false,
        of("mullion", "profile between two bays", "PROFILE"),
        of("jamb", "profile at an end", "PROFILE"),
        of("corner", "profile at a corner", "PROFILE"),
        of("sill", "profile of rows named sill", "PROFILE"),
        of("head", "profile of rows named head", "PROFILE"),
        of("intermediate", "profile of all other rows", "PROFILE"),
        of("shear-block", "what holds a horizontal's ends", "SHEAR_BLOCK"),
        of("clip", "clip at sill and head, or at one of them", "CLIP [at sill|head]").repeated(),
        of("sill-clip", "clip at the sill", "CLIP"),
        of("head-clip", "clip at the head", "CLIP"),
        of("sleeve", "splice sleeve", "SLEEVE"),
        of("pressure-plate", "pressure plate", "PRESSURE_PLATE"),
        of("face-cap", "face cap", "FACE_CAP"),
        of("gasket", "gasket, outdoors and indoors", "GASKET [indoor|outdoor]").repeated(),
        of("setting-block", "setting block", "SETTING_BLOCK"),
        of("zone-dam", "zone dam", "ZONE_DAM"),
        of("sealant", "sealant", "SEALANT"),
        of("insulation", "insulation behind spandrel lites", "INSULATION"),
        of("plate-fastener", "fastener of the pressure plates", "FASTENER"),
        of(
            "glass-plane",
            "from the outer face of the glass (z = 0) to the back of the profiles; their depth"
                + " unless stated",
            "LENGTH"));
    PartSchema.put(
        parts,
        PartKind.PROFILE,
        false,
        of("role", "what it does", "mullion|jamb|corner|sill|head|intermediate")
            .assumed("mullion", PRACTICE),
        of("face", "width of metal seen in elevation", "LENGTH"),
        of("sightline", "width the glass leaves to be seen; the face unless stated", "LENGTH"),
        of("depth", "out of the wall", "LENGTH"),
        of("area", "area of the section", "AREA"),
        of("Ix", "second moment for wind, bending out of the plane", "SECOND_MOMENT"),
        of("Iy", "second moment in the plane of the wall", "SECOND_MOMENT"),
        of(
            "Sx",
            "section modulus for wind, at the outer and the inner fibre",
            "SECTION_MODULUS [outside|inside]"),
        of(
            "Zx",
            "plastic section modulus for wind; from the outline unless stated",
            "SECTION_MODULUS"),
        of("Sy", "section modulus in the plane of the wall", "SECTION_MODULUS"),
        of("J", "torsion constant", "SECOND_MOMENT"),
        of("mass", "mass per length; area times density unless stated", "MASS_PER_LENGTH"),
        metal("aluminium"),
        of("alloy", "alloy and temper", "WORDS"),
        stock(),
        of(
                "bite",
                "how far the glass reaches in, at both sides or one",
                "LENGTH [left|right|below|above]")
            .assumed("1/2\"", PRACTICE),
        of(
                "edge-clearance",
                "from the glass edge to metal, at both sides or one",
                "LENGTH [left|right|below|above]")
            .assumed("1/4\"", PRACTICE),
        of("end-allowance", "clearance of a horizontal at each end", "LENGTH")
            .assumed("1/32\"", PRACTICE),
        of(
            "leg",
            "of a corner: from the line to the sightline, on both faces or one",
            "LENGTH [left|right]"),
        of("sleeve", "splice sleeve it takes", "SLEEVE"),
        of("U", "thermal transmittance of the frame made with it, fasteners included", "U_FACTOR"),
        hole(),
        of(
            "notch",
            "cut from each end of a horizontal: along it, and back from its glass side",
            "LENGTH back LENGTH"),
        outline());
    PartSchema.put(
        parts,
        PartKind.REINFORCEMENT,
        false,
        metal("steel"),
        of("Ix", "second moment for wind", "SECOND_MOMENT"),
        of("Sx", "section modulus for wind", "SECTION_MODULUS"),
        of("yield", "yield strength of steel", "STRESS")
            .assumed("36 ksi", "plain steel (ASTM A36), from memory"),
        of("mass", "mass per length", "MASS_PER_LENGTH"),
        stock(),
        outline());
    PartSchema.put(
        parts,
        PartKind.SLEEVE,
        false,
        of("length", "how long it is", "LENGTH"),
        of("engagement", "how far it reaches into each length; half of it unless stated", "LENGTH"),
        of("fixed", "the end that is screwed", "lower|upper").assumed("lower", PRACTICE),
        metal("aluminium"),
        hole());
    PartSchema.put(
        parts,
        PartKind.SHEAR_BLOCK,
        false,
        metal("aluminium"),
        of("length", "along the horizontal", "LENGTH"),
        hole(),
        of("edge-distance", "least from a hole's centre to an edge", "LENGTH"),
        of("entry", "whether a horizontal goes on from the front or slides on endwise", "front|end")
            .assumed("front", PRACTICE));
  }
}
