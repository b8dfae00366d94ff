package mullwright.preview;

import java.util.List;
import mullwright.quantity.UnitSystem;

/** No tables, in feet and inches. */
final class PlainTables implements Tables {
  @Override
  public List<Sheet> of(SceneFile file, int wall, About about) {
    return List.of();
  }

  @Override
  public UnitSystem units(SceneFile file) {
    return UnitSystem.US;
  }

  @Override
  public String caution() {
    return "Aids to drafting.";
  }
}
