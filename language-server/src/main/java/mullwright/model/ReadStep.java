package mullwright.model;

import java.util.List;
import java.util.Set;

/**
 * One step of reading a wall, remembered with all it was made from: as long as that says the same,
 * at the same places of the text, the step need not be taken again.
 */
final class ReadStep<T> {
  private Done<T> last;

  /**
   * All a step looks at.
   *
   * @param statements by what they say
   * @param earlier what earlier steps came to, and the parts: by identity
   * @param values all else
   */
  record Input(List<Said> statements, List<Object> earlier, List<Object> values) {
    private boolean isSame(Input other) {
      return isSame(earlier, other.earlier)
          && values.equals(other.values)
          && saysSame(statements, other.statements);
    }

    private static boolean isSame(List<Object> one, List<Object> other) {
      if (one.size() != other.size()) {
        return false;
      }
      for (int i = 0; i < one.size(); i++) {
        if (one.get(i) != other.get(i)) {
          return false;
        }
      }
      return true;
    }

    private static boolean saysSame(List<Said> one, List<Said> other) {
      if (one.size() != other.size()) {
        return false;
      }
      for (int i = 0; i < one.size(); i++) {
        if (!one.get(i).saysSame(other.get(i))) {
          return false;
        }
      }
      return true;
    }
  }

  /**
   * A step taken.
   *
   * @param lacking the roles told to be missing in the system until then
   * @param facts problems and references it told
   */
  record Done<T>(Input input, T result, Set<Role> lacking, Collector facts) {}

  /** What the same came to the last time, or null. */
  synchronized Done<T> known(Input input) {
    return last != null && last.input.isSame(input) ? last : null;
  }

  synchronized void remember(Done<T> done) {
    last = done;
  }
}
