package mullwright.drawing;

/** Something drawn, ready for any surface. The same every time it is painted. */
public interface Drawing {
  /** What it is called. */
  String title();

  /** The scale of what it shows. */
  Scale scale();

  /** The paper it takes [mm]. */
  Box extent();

  /** True if it is a sheet with a border of its own. */
  default boolean bordered() {
    return false;
  }

  /** Paints it. */
  void paint(Surface surface);
}
