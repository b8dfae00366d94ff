package mullwright.analysis.beam;

import java.util.List;
import java.util.Objects;

/**
 * Loads that act together.
 *
 * @param name what the case is called in results, such as {@code in}
 * @param loads the loads; they add where they overlap
 */
public record LoadCase(String name, List<BeamLoad> loads) {

  /** Keeps its own copy of the list. */
  public LoadCase {
    Objects.requireNonNull(name, "name");
    loads = List.copyOf(loads);
  }
}
