package mullwright.server;

import static mullwright.server.Conversation.await;

import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import mullwright.check.Rules;

/** The rules, not found before they are let go: until then no wall can be checked. */
final class HeldRules implements Supplier<Rules> {
  private final CompletableFuture<Rules> rules = new CompletableFuture<>();
  private final CompletableFuture<Void> worker = new CompletableFuture<>();

  @Override
  public Rules get() {
    if (Thread.currentThread().getName().equals("mullwright-worker")) {
      worker.complete(null);
    }
    return await(rules);
  }

  /** Waits until the worker can do nothing more without them. */
  void awaitWorker() {
    await(worker);
  }

  void letGo() {
    letGo(Rules.find());
  }

  void letGo(Rules found) {
    rules.complete(found);
  }
}
