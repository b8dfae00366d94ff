package mullwright.preview;

import java.util.List;
import java.util.Optional;

/**
 * What there is to be shown at one moment.
 *
 * @param files in which walls may stand; the one last touched at the end
 */
public record Scene(List<SceneFile> files) {
  public Scene {
    files = List.copyOf(files);
  }

  /** The walls, in the order of the files and of their texts. */
  List<SceneWall> walls() {
    return files.stream().flatMap(file -> file.walls().stream()).toList();
  }

  /** The wall of that name in that form; empty if it is gone. */
  Optional<SceneWall> wall(String id) {
    return walls().stream().filter(wall -> wall.id().equals(id)).findFirst();
  }
}
