package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.model.Given;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;

/**
 * Finds the holes of pressure plates: fasteners first at the end distance from each end, then
 * evenly at no more than the spacing: n = max(2, ⌈(L − 2e) / s⌉ + 1) (common practice).
 */
public final class PlateHoles {
  private PlateHoles() {}

  /** Places of the fasteners along a plate of that length, from its end. */
  public static List<Length> places(Length length, Length endDistance, Length spacing) {
    // a plate too short for both end distances keeps half of what it has
    Length end = length.isLongerThan(endDistance.times(2)) ? endDistance : length.scaled(1, 4);
    Length between = length.minus(end.times(2));
    long spaces = Math.max(1, ceiling(between.ticks(), Math.max(1, spacing.ticks())));
    List<Length> places = new ArrayList<>();
    for (long i = 0; i <= spaces; i++) {
      places.add(end.plus(between.scaled(i, spaces)));
    }
    return places;
  }

  private static long ceiling(long numerator, long denominator) {
    return Math.floorDiv(numerator + denominator - 1, denominator);
  }

  /** The fasteners of a cover; of a face cap none. */
  static List<DrilledHole> fasteners(WallLayout layout, int index) {
    CoverPiece cover = layout.covers().get(index);
    Optional<Part.PressurePlate> plate = plate(layout, cover);
    if (plate.isEmpty()) {
      return List.of();
    }
    Optional<String> fastener = fastener(layout, plate.get());
    List<DrilledHole> holes = new ArrayList<>();
    for (Length along :
        places(cover.length(), plate.get().endDistance().value(), plate.get().spacing().value())) {
      holes.add(
          hole(DrilledHole.Purpose.PLATE_FASTENER, cover, along, fastener, plate.get().origin()));
    }
    return holes;
  }

  /** What holds the plates: the plate's own fastener, or the system's. */
  public static Optional<String> fastener(WallLayout layout, Part.PressurePlate plate) {
    return plate
        .fastener()
        .or(
            () ->
                layout
                    .wall()
                    .system()
                    .flatMap(system -> Optional.ofNullable(system.parts().get(PartKind.FASTENER))))
        .map(Given::value);
  }

  /** How many fasteners a cover has: a plate's places; a face cap is clipped on and has none. */
  public static int count(WallLayout layout, CoverPiece cover) {
    return plate(layout, cover)
        .map(
            plate ->
                places(cover.length(), plate.endDistance().value(), plate.spacing().value()).size())
        .orElse(0);
  }

  /** Distance from one fastener of a plate to the next; 0 of a face cap. */
  public static Length spacing(WallLayout layout, CoverPiece cover) {
    Optional<Part.PressurePlate> plate = plate(layout, cover);
    if (plate.isEmpty()) {
      return Length.ZERO;
    }
    List<Length> places =
        places(cover.length(), plate.get().endDistance().value(), plate.get().spacing().value());
    return places.get(1).minus(places.get(0));
  }

  private static Optional<Part.PressurePlate> plate(WallLayout layout, CoverPiece cover) {
    return cover.what() == CoverPiece.What.PRESSURE_PLATE
        ? SystemPart.of(layout, PartKind.PRESSURE_PLATE, Part.PressurePlate.class)
        : Optional.empty();
  }

  static DrilledHole weep(WallLayout layout, Weep weep) {
    CoverPiece cover = layout.covers().get(weep.cover());
    return hole(
        DrilledHole.Purpose.WEEP,
        cover,
        weep.x().minus(cover.start()),
        Optional.empty(),
        layout.horizontals().get(cover.carrier()).origin());
  }

  private static DrilledHole hole(
      DrilledHole.Purpose purpose,
      CoverPiece cover,
      Length along,
      Optional<String> fastener,
      Origin origin) {
    return new DrilledHole(
        purpose,
        cover.part(),
        HoleSide.WEB,
        along,
        Optional.empty(),
        Optional.empty(),
        fastener,
        1,
        purpose == DrilledHole.Purpose.WEEP ? "upper side" : "centre line",
        origin,
        origin);
  }
}
