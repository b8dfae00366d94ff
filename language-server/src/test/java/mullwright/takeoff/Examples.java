package mullwright.takeoff;

import java.nio.file.Path;
import mullwright.check.Rules;
import mullwright.check.WallFacts;
import mullwright.layout.WallLayout;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Workspace;

/** The example walls, laid out. */
public final class Examples {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

  private Examples() {}

  /** The one wall of an example, by its path below {@code examples}. */
  public static WallFacts facts(String path) {
    return new Workspace(new DiskFiles(EXAMPLES), Rules.find())
        .snapshot()
        .reading(path)
        .orElseThrow()
        .walls()
        .get(0);
  }

  /** Its layout. */
  public static WallLayout layout(String path) {
    return facts(path).layout();
  }
}
