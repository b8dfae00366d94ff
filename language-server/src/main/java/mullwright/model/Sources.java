package mullwright.model;

import java.util.Optional;
import mullwright.syntax.ParsedFile;

/** The one door to other files: nobody in this package opens one. */
public interface Sources {
  /**
   * The parsed file at that place, or empty if there is none.
   *
   * @param path relative to the workspace's root, {@code /} between folders, without {@code .} and
   *     {@code ..}
   */
  Optional<ParsedFile> find(String path);

  /** True unless the text has no place among files yet, so that no path leads anywhere. */
  default boolean placed() {
    return true;
  }
}
