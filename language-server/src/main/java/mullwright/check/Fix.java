package mullwright.check;

import java.util.List;
import mullwright.model.Origin;

/**
 * An edit that mends a finding.
 *
 * @param title what it does, as an order: {@code Isolate by nylon-pad}
 * @param edits none overlapping
 */
public record Fix(String title, List<Edit> edits) {
  public Fix {
    edits = List.copyOf(edits);
  }

  /** Puts {@code text} in the place of what stands at {@code origin} (an empty range inserts). */
  public record Edit(Origin origin, String text) {}
}
