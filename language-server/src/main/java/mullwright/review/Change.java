package mullwright.review;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One change of a wall: all facts that changed alike, or that came or went with one thing.
 *
 * <p>The changes between two walls share no fact, so the order they are applied in does not matter.
 *
 * @param how what was done
 * @param topic what it was done to
 * @param own the subjects it is told of; {@code steps} may hold more, which come or go with them
 * @param steps every fact it changes, in the order of the sheet
 */
public record Change(How how, Topic topic, List<Subject> own, List<Step> steps) {
  public Change {
    own = List.copyOf(own);
    steps = List.copyOf(steps);
  }

  /** What was done. */
  public enum How {
    RENAMED,
    MOVED,
    /** Spaces one after another became wider or narrower, each by the same. */
    SPACED,
    ADDED,
    REMOVED,
    CHANGED
  }

  /**
   * One fact before and after.
   *
   * @param before empty if it was not there, {@code after} empty if it no longer is
   */
  public record Step(Fact fact, Optional<Value> before, Optional<Value> after) {}

  /** Every subject a fact of which changes. */
  public Set<Subject> subjects() {
    Set<Subject> all = new LinkedHashSet<>();
    steps.forEach(step -> all.add(step.fact().subject()));
    return all;
  }
}
