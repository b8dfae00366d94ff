package mullwright.preview;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mullwright.check.Rules;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;

/** The shipped ferry terminal as an editor has it open. */
final class Scenes {
  static final Path EXAMPLES = Path.of("..", "examples");
  static final String EAST = "ferry-terminal/east.wall";

  final Workspace workspace = new Workspace(new DiskFiles(EXAMPLES), Rules.find());

  private final String text = workspace.snapshot().file(EAST).orElseThrow().text();

  /** Where in the shipped text those words stand, which must be there. */
  int at(String words) {
    int at = text.indexOf(words);
    if (at < 0) {
      throw new IllegalArgumentException("not in the wall: " + words);
    }
    return at;
  }

  /** The shipped text with other words in the place of some. */
  Scene edited(String from, String to) {
    int at = at(from);
    workspace.open(EAST, text.substring(0, at) + to + text.substring(at + from.length()));
    return laidOut();
  }

  Scene laidOut() {
    Snapshot snapshot = workspace.snapshot();
    return new Scene(
        List.of(SceneFile.laidOut("east", EAST, EAST, snapshot, Optional.empty()).orElseThrow()));
  }

  static Scene checked(Scene scene) {
    return new Scene(scene.files().stream().map(file -> file.withFindings(Cancel.NEVER)).toList());
  }
}
