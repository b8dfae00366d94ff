package mullwright.model;

import static mullwright.model.PropertyKinds.PRACTICE;
import static mullwright.model.PropertyKinds.of;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.PartSchema.Property;

/** Properties of criteria, fabrication, project and wall. */
final class ProjectSchema {
  /** A share of all things, or of one sort as the takeoff parts them. */
  private static final String SHARE =
      "RATIO [bar|reinforcement|shear-block|sleeve|anchor|clip|spread-plate|fastener|isolation"
          + "|bracket|plate|cap|gasket|zone-dam|sealant|backer-rod|glass|setting-block|insulation"
          + "|back-pan]";

  static final PartSchema CRITERIA =
      new PartSchema(
          "criteria",
          false,
          wind(),
          of(
              "metal",
              "the metal's surface temperature: least, most, and when set",
              "temperature TEMPERATURE to TEMPERATURE",
              "set at TEMPERATURE"),
          of(
                  "slab",
                  "live-load deflection of the slab edge, of all floors or of those named",
                  "deflection LENGTH [NAMES]",
                  "NAMES")
              .repeated(),
          of(
              "story",
              "drift of a storey, as a length or a share of its height",
              "drift LENGTH",
              "drift RATIO",
              "drift SPAN_RATIO"),
          of("exposure", "what the metal meets", "outdoor|sheltered|coastal|indoor")
              .assumed("outdoor", PRACTICE),
          of(
              "deflection",
              "a stricter limit of deflection over span than the default",
              "limit SPAN_RATIO",
              "limit NUMBER"),
          of(
                  "safety",
                  "a walking surface that safety glazing is measured from, in place of the floors",
                  "floor line LENGTH above|below NAMES",
                  "floor line NAMES",
                  "floor line LENGTH")
              .repeated(),
          of(
                  "glass",
                  "the least bite that may be left, or how far the centre of a lite may bend",
                  "least bite LENGTH",
                  "deflection limit SPAN_RATIO",
                  "deflection limit LENGTH")
              .repeated(),
          of("importance", "importance factor of the building in earthquakes", "NUMBER")
              .assumed("1", "ASCE 7, risk category I or II"));

  static final PartSchema FABRICATION =
      new PartSchema(
          "fabrication",
          true,
          of("kerf", "lost at each cut", "LENGTH").assumed("1/8\"", PRACTICE),
          of("end-trim", "taken off each end of a bar", "LENGTH").assumed("1/2\"", PRACTICE),
          of("least-drop", "shortest rest worth keeping", "LENGTH").assumed("24\"", PRACTICE),
          of("pieces-per-bar", "most pieces cut from one bar; any number unless stated", "NUMBER"),
          of(
                  "on-hand",
                  "bars on the rack that cost nothing: how many, how long, of which part, and in"
                      + " which finish if only that one will do",
                  "NUMBER x LENGTH of WORD [in WORD]")
              .repeated(),
          of("cut-tolerance", "how far a cut may be off, either way", "LENGTH"),
          of("hole-tolerance", "how far a hole may be off, either way", "LENGTH"),
          of("perimeter-joint", "width of the sealed joint round the frame", "LENGTH")
              .assumed("1/2\"", PRACTICE),
          of("waste", "share bought more for loss, of all things or of one sort", SHARE).repeated(),
          of("attic", "share bought more to keep in store, of all things or of one sort", SHARE)
              .repeated());

  static final PartSchema PROJECT =
      new PartSchema(
          "project", true, of("revision", "which issue of the drawings this is", "WORDS"));

  static final PartSchema WALL =
      new PartSchema(
          "wall",
          false,
          of("system", "the system the wall is made of", "SYSTEM"),
          of("finish", "the finish, of all sides or of one", "WORD [outside|inside]"));

  private ProjectSchema() {}

  private static Property wind() {
    List<String> patterns = new ArrayList<>();
    patterns.add("service|ultimate");
    patterns.add("[WORD] PRESSURE in|out [within LENGTH of ends] [from PLACE to PLACE]");
    patterns.addAll(WindSiteReader.PATTERNS);
    return new Property(
        "wind",
        patterns,
        "whether pressures are service or ultimate; the pressures of a zone, in and out; or data of"
            + " site and building from which they follow",
        Optional.empty(),
        true);
  }
}
