package mullwright.server;

import java.util.Optional;
import mullwright.workspace.Cancel;

/**
 * An answer that takes long and is computed piece by piece.
 *
 * <p>A route returns it in place of its answer. Between two pieces everything else goes first:
 * edits, what edits made stale, other questions.
 */
public interface Piecemeal {
  /**
   * Computes the next piece. One that is given up because an edit waits is asked for again.
   *
   * @param cancel asked in loops
   * @return the answer once the last piece is done, empty before
   */
  Optional<Object> next(Cancel cancel);
}
