package mullwright.preview;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import mullwright.check.Finding;
import mullwright.check.WallFacts;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.workspace.WallDetails;

/**
 * One wall of a file.
 *
 * @param index which one
 */
record SceneWall(SceneFile file, int index) {
  /** Tells it from all others; survives edits that leave its name alone. */
  String id() {
    long before =
        file.details().subList(0, index).stream()
            .filter(other -> other.layout().wall().name().equals(name()))
            .count();
    return file.key() + "#" + name() + (before == 0 ? "" : "#" + before);
  }

  String name() {
    return layout().wall().name();
  }

  WallDetails details() {
    return file.details().get(index);
  }

  WallLayout layout() {
    return details().layout();
  }

  /** True if that offset of its file lies in its text. */
  boolean holds(int offset) {
    return file.snapshot()
        .file(file.path())
        .filter(text -> layout().wall().origin().file().equals(file.path()))
        .filter(text -> text.segmentAt(offset) == layout().wall().origin().segment())
        .isPresent();
  }

  /** What nature does to it; empty while that is not known. */
  Optional<WallFacts> facts() {
    return file.checked().map(checked -> checked.facts().get(index));
  }

  /** What is found in it and in what its file says beside walls. */
  Optional<List<Finding>> findings() {
    Origin here = layout().wall().origin();
    Set<Integer> others =
        file.details().stream()
            .map(other -> other.layout().wall().origin())
            .filter(origin -> origin.file().equals(file.path()))
            .map(Origin::segment)
            .filter(segment -> segment != here.segment())
            .collect(Collectors.toSet());
    return file.checked()
        .map(
            checked ->
                checked.findings().stream()
                    .filter(
                        finding ->
                            !finding.origin().file().equals(file.path())
                                || !others.contains(finding.origin().segment()))
                    .toList());
  }
}
