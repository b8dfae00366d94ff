package mullwright.preview;

import java.util.List;
import mullwright.quantity.UnitSystem;

/** No tables, in feet and inches; breaks as long as it is told to. */
final class PlainTables implements Tables {
  volatile boolean breaks;

  @Override
  public List<Sheet> of(SceneFile file, int wall, About about) {
    if (breaks) {
      throw new IllegalStateException("no <table>");
    }
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
