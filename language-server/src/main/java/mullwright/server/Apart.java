package mullwright.server;

import mullwright.workspace.Cancel;

/**
 * An answer that is computed on a thread of its own, from a snapshot, while others are answered.
 *
 * <p>A route returns it in place of its answer.
 */
@FunctionalInterface
public interface Apart {
  /** Computes the answer. */
  Object answer(Cancel cancel);
}
