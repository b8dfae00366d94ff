package mullwright.workspace;

import java.util.List;

/** What stands behind a text that no disk has yet: nothing, and no path leads anywhere from it. */
public final class NoFiles implements Files {
  @Override
  public Read read(String path) {
    return new Read.Missing();
  }

  @Override
  public Object stamp(String path) {
    return "";
  }

  @Override
  public List<String> walls() {
    return List.of();
  }

  @Override
  public boolean placed() {
    return false;
  }
}
