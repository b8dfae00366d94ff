package mullwright.report.ifc;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.model.Outline;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * Placements and bodies: what a catalog draws of a profile, and boxes, extruded.
 *
 * <p>A profile lies as the catalog draws it: the origin on its centre line at its back, X across
 * it, Y out of the wall.
 */
final class Shapes {
  /** Places are told to a millionth of a millimetre, directions to twelve decimals. */
  private static final int PLACE = 6;

  private static final int DIRECTION = 12;

  private final StepFile file;
  private final StepValue.Reference origin;
  private final StepValue.Reference context;
  private final StepValue.Reference body;
  private final Map<Part.Profile, List<StepValue.Reference>> areas = new LinkedHashMap<>();

  Shapes(StepFile file) {
    this.file = file;
    this.origin = file.share("IFCAXIS2PLACEMENT3D", point(0, 0, 0), StepValue.NONE, StepValue.NONE);
    this.context =
        file.add(
            "IFCGEOMETRICREPRESENTATIONCONTEXT",
            StepValue.NONE,
            StepValue.text("Model"),
            StepValue.whole(3),
            StepValue.real(new BigDecimal("0.00001")),
            origin,
            StepValue.NONE);
    this.body =
        file.add(
            "IFCGEOMETRICREPRESENTATIONSUBCONTEXT",
            StepValue.text("Body"),
            StepValue.text("Model"),
            StepValue.DERIVED,
            StepValue.DERIVED,
            StepValue.DERIVED,
            StepValue.DERIVED,
            context,
            StepValue.NONE,
            StepValue.word("MODEL_VIEW"),
            StepValue.NONE);
  }

  /** The model's own coordinates. */
  StepValue.Reference context() {
    return context;
  }

  /** A placement at the origin of another, or of the world. */
  StepValue.Reference placed(StepValue within) {
    return file.add("IFCLOCALPLACEMENT", within, origin);
  }

  /** A placement so high above another. */
  StepValue.Reference raised(StepValue within, Length by) {
    return file.add(
        "IFCLOCALPLACEMENT",
        within,
        file.share(
            "IFCAXIS2PLACEMENT3D",
            file.share(
                "IFCCARTESIANPOINT",
                StepValue.list(real(0, PLACE), real(0, PLACE), StepValue.real(by))),
            StepValue.NONE,
            StepValue.NONE));
  }

  /**
   * A placement within another.
   *
   * @param at point [mm]
   * @param axis direction of its Z, {@code across} of its X
   */
  StepValue.Reference placed(StepValue within, double[] at, double[] axis, double[] across) {
    StepValue.Reference place =
        file.add(
            "IFCAXIS2PLACEMENT3D",
            point(at[0], at[1], at[2]),
            direction(axis[0], axis[1], axis[2]),
            direction(across[0], across[1], across[2]));
    return file.add("IFCLOCALPLACEMENT", within, place);
  }

  /** The body of a profile of that length, along Z. */
  StepValue.Reference bar(Part.Profile profile, Length length) {
    return shape(areas(profile).stream().map(area -> extruded(area, length)).toList());
  }

  /** The body of a box from the origin, its width along X, its height along Y. */
  StepValue.Reference box(Length width, Length height, Length depth) {
    StepValue.Reference area = rectangle("", width.half(), height.half(), width, height);
    return shape(List.of(extruded(area, depth)));
  }

  private StepValue.Reference extruded(StepValue.Reference area, Length depth) {
    return file.add(
        "IFCEXTRUDEDAREASOLID", area, origin, direction(0, 0, 1), StepValue.real(depth));
  }

  private StepValue.Reference shape(List<StepValue.Reference> solids) {
    StepValue.Reference representation =
        file.add(
            "IFCSHAPEREPRESENTATION",
            body,
            StepValue.text("Body"),
            StepValue.text("SweptSolid"),
            StepValue.list(solids));
    return file.add(
        "IFCPRODUCTDEFINITIONSHAPE",
        StepValue.NONE,
        StepValue.NONE,
        StepValue.list(representation));
  }

  /** The one cross section of a profile, for its material. */
  StepValue.Reference section(Part.Profile profile) {
    List<StepValue.Reference> parts = areas(profile);
    return parts.size() == 1
        ? parts.get(0)
        : file.share(
            "IFCCOMPOSITEPROFILEDEF",
            StepValue.word("AREA"),
            StepValue.text(profile.name()),
            StepValue.list(parts),
            StepValue.NONE);
  }

  private List<StepValue.Reference> areas(Part.Profile profile) {
    List<StepValue.Reference> known = areas.get(profile);
    if (known == null) {
      known = drawn(profile);
      areas.put(profile, known);
    }
    return known;
  }

  private List<StepValue.Reference> drawn(Part.Profile profile) {
    if (profile.outline().isEmpty()) {
      Length depth = profile.depth().value();
      return List.of(
          rectangle(profile.name(), Length.ZERO, depth.half(), profile.face().value(), depth));
    }
    List<StepValue.Reference> drawn = new ArrayList<>();
    List<Outline.Rectangle> all = profile.outline().get().value().rectangles();
    for (int at = 0; at < all.size(); at++) {
      Outline.Rectangle one = all.get(at);
      if (one.hole()) {
        continue;
      }
      Length x = one.x().plus(one.width().half());
      Length y = one.z().plus(one.depth().half());
      boolean hollow = at + 1 < all.size() && all.get(at + 1).hole();
      boolean room =
          hollow && all.get(at + 1).width().signum() > 0 && all.get(at + 1).depth().signum() > 0;
      drawn.add(
          room
              ? hollow(profile.name(), x, y, one, all.get(at + 1).x().minus(one.x()))
              : rectangle(profile.name(), x, y, one.width(), one.depth()));
    }
    return drawn;
  }

  private StepValue.Reference rectangle(
      String name, Length x, Length y, Length width, Length height) {
    return file.share(
        "IFCRECTANGLEPROFILEDEF",
        StepValue.word("AREA"),
        StepValue.textOrNone(name),
        centre(x, y),
        StepValue.real(width),
        StepValue.real(height));
  }

  private StepValue.Reference hollow(
      String name, Length x, Length y, Outline.Rectangle outer, Length wall) {
    return file.share(
        "IFCRECTANGLEHOLLOWPROFILEDEF",
        StepValue.word("AREA"),
        StepValue.text(name),
        centre(x, y),
        StepValue.real(outer.width()),
        StepValue.real(outer.depth()),
        StepValue.real(wall),
        StepValue.NONE,
        StepValue.NONE);
  }

  private StepValue.Reference centre(Length x, Length y) {
    return file.share(
        "IFCAXIS2PLACEMENT2D",
        file.share("IFCCARTESIANPOINT", StepValue.list(StepValue.real(x), StepValue.real(y))),
        StepValue.NONE);
  }

  private StepValue.Reference point(double x, double y, double z) {
    return file.share(
        "IFCCARTESIANPOINT", StepValue.list(real(x, PLACE), real(y, PLACE), real(z, PLACE)));
  }

  private StepValue.Reference direction(double x, double y, double z) {
    return file.share(
        "IFCDIRECTION", StepValue.list(real(x, DIRECTION), real(y, DIRECTION), real(z, DIRECTION)));
  }

  private static StepValue real(double value, int decimals) {
    return StepValue.real(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN));
  }
}
