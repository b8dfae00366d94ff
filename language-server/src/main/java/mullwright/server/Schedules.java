package mullwright.server;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mullwright.workspace.Cancel;
import mullwright.workspace.Snapshot;

/**
 * What can be told of the walls of a file as a text: cut lengths, the glass order and the like.
 *
 * <p>Implemented above the server, which may not know the reports; found by standing in {@code
 * META-INF/services} when the first is asked for, and not before.
 */
public interface Schedules {
  /** The names of what there is. */
  List<String> names();

  /**
   * The text of one, for a reader; also where nothing can be told, and then it says why.
   *
   * @param name one of {@link #names}
   * @param path of the file below the snapshot's root
   * @param file where it lies on disk, empty if it lies nowhere
   */
  String text(String name, Snapshot snapshot, String path, Optional<Path> file, Cancel cancel);
}
