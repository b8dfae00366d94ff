package mullwright.drawing;

import java.util.List;

/**
 * A hatch: sets of parallel lines over an area.
 *
 * <p>Its lines lie at fixed places of the paper, so that neighbouring areas hatch through.
 *
 * @param name one word, for the forms that keep hatches by name
 * @param sets at least one
 * @param pen of all its lines
 */
public record Hatch(String name, List<Set> sets, Pen pen) {
  /** Glass one does not see through. */
  public static final Hatch SPANDREL = slanting("spandrel", 45, 2.5);

  /** Louvres and vents by others: blades. */
  public static final Hatch LOUVRE = slanting("louvre", 0, 1.2);

  /** Aluminium that is cut. */
  public static final Hatch METAL = slanting("metal", 45, 1);

  /** Steel that is cut: pairs of lines. */
  public static final Hatch STEEL =
      new Hatch("steel", List.of(new Set(45, 2, 0), new Set(45, 2, 0.6)), Pen.HATCH);

  /** Rubber and sealant that is cut. */
  public static final Hatch SOFT =
      new Hatch("soft", List.of(new Set(45, 1, 0), new Set(135, 1, 0)), Pen.HATCH);

  /** Glass that is cut. */
  public static final Hatch GLASS = slanting("glass", 30, 1.5);

  /** Concrete that is cut: this tool's own, wide and broken at two angles. */
  public static final Hatch CONCRETE =
      new Hatch("concrete", List.of(new Set(60, 3, 0), new Set(105, 4, 0)), Pen.HATCH);

  public Hatch {
    sets = List.copyOf(sets);
  }

  /**
   * Parallel lines.
   *
   * @param angle to the x axis, turning left [degrees]
   * @param spacing square to the lines [mm]
   * @param shift of the whole set square to the lines [mm]
   */
  public record Set(double angle, double spacing, double shift) {}

  /** One set of lines in the usual pen. */
  public static Hatch slanting(String name, double angle, double spacing) {
    return new Hatch(name, List.of(new Set(angle, spacing, 0)), Pen.HATCH);
  }
}
