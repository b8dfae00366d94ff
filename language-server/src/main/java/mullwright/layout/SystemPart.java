package mullwright.layout;

import java.util.Optional;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;

/** Finds the parts a wall's system says, where the wall itself names none. */
public final class SystemPart {
  private SystemPart() {}

  /** The system's part of that kind. */
  public static <P extends Part> Optional<P> of(WallLayout layout, PartKind kind, Class<P> type) {
    return layout
        .wall()
        .system()
        .flatMap(system -> Optional.ofNullable(system.parts().get(kind)))
        .flatMap(name -> find(layout, kind, type, name));
  }

  /** The part of that name, if the catalog has it. */
  public static <P extends Part> Optional<P> find(
      WallLayout layout, PartKind kind, Class<P> type, Given<String> name) {
    return layout.catalog().find(kind, name.value()).filter(type::isInstance).map(type::cast);
  }

  /** What holds the ends of horizontals. */
  public static Optional<Part.ShearBlock> shearBlock(WallLayout layout) {
    return of(layout, PartKind.SHEAR_BLOCK, Part.ShearBlock.class);
  }

  /** The sleeve of a splice: its own, its vertical's, or the system's. */
  public static Optional<Part.Sleeve> sleeve(WallLayout layout, SpliceJoint joint) {
    return joint
        .splice()
        .sleeve()
        .or(() -> layout.verticals().get(joint.below()).profile().sleeve())
        .or(
            () ->
                layout
                    .wall()
                    .system()
                    .flatMap(system -> Optional.ofNullable(system.parts().get(PartKind.SLEEVE))))
        .flatMap(name -> find(layout, PartKind.SLEEVE, Part.Sleeve.class, name));
  }

  /**
   * From the glass's outer face to the back of a profile: what the system says, or the profile's
   * own depth.
   */
  public static Length backOf(WallLayout layout, Part.Profile profile) {
    return layout
        .wall()
        .system()
        .map(Part.WallSystem::glassPlane)
        .filter(plane -> !plane.assumed())
        .map(Given::value)
        .orElse(profile.depth().value());
  }

  /** How wide a plate or cap is. */
  static Length widthOf(WallLayout layout, CoverPiece cover) {
    Optional<Length> width =
        cover.what() == CoverPiece.What.PRESSURE_PLATE
            ? of(layout, PartKind.PRESSURE_PLATE, Part.PressurePlate.class)
                .map(plate -> plate.width().value())
            : of(layout, PartKind.FACE_CAP, Part.FaceCap.class).map(cap -> cap.face().value());
    return width.orElse(Length.ZERO);
  }
}
