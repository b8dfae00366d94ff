package mullwright.server;

import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.function.Supplier;
import mullwright.check.Rules;

/**
 * The rules, found while the client is still being greeted: that takes a tenth of a cold start, and
 * only the first text that is checked needs them.
 */
final class RulesAhead implements Supplier<Rules> {
  private final FutureTask<Rules> finding = new FutureTask<>(Rules::find);

  /** Those there are: found on this thread, unless another has begun to; then it waits. */
  @Override
  public Rules get() {
    finding.run();
    boolean interrupted = false;
    try {
      while (true) {
        try {
          return finding.get();
        } catch (InterruptedException hurried) {
          // whoever asked cannot go on without them
          interrupted = true;
        }
      }
    } catch (ExecutionException failed) {
      throw new IllegalStateException("The rules cannot be found", failed.getCause());
    } finally {
      if (interrupted) {
        Thread.currentThread().interrupt();
      }
    }
  }
}
