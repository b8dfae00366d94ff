package mullwright.server;

import java.util.concurrent.CompletableFuture;
import java.util.function.BiConsumer;
import org.eclipse.lsp4j.jsonrpc.Endpoint;

/** The way to the client, for those who are made before there is one. */
final class Outgoing implements Editor {
  private volatile Endpoint client;

  void connect(Endpoint endpoint) {
    client = endpoint;
  }

  @Override
  public void notify(String method, Object parameters) {
    client.notify(method, parameters);
  }

  @Override
  public CompletableFuture<Object> request(String method, Object parameters) {
    return client.request(method, parameters).thenApply(answer -> answer);
  }

  /** Asks the client something; of the outcome, only a failure is of interest. */
  void request(String method, Object parameters, BiConsumer<Object, Throwable> outcome) {
    client.request(method, parameters).whenComplete(outcome);
  }
}
