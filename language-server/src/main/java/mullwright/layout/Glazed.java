package mullwright.layout;

import mullwright.model.Grid;

/** Tells what of a wall's openings holds glass, and what keeps a pocket for glass or its like. */
public final class Glazed {
  private Glazed() {}

  /** True if the wall puts a lite there. */
  public static boolean lite(Cell cell) {
    return cell.use().isPresent() && cell.opening().isEmpty();
  }

  /**
   * True if pocket, plates and gaskets go round it: a lite, or a vent or louvre by others in its
   * place. A door or void has none.
   */
  public static boolean pocket(Cell cell) {
    return lite(cell)
        || cell.opening()
            .filter(
                opening ->
                    opening.kind() == Grid.OpeningKind.VENT
                        || opening.kind() == Grid.OpeningKind.LOUVRE)
            .isPresent();
  }
}
