package mullwright.server;

import java.util.function.BiConsumer;
import org.eclipse.lsp4j.jsonrpc.Endpoint;

/** The way to the client, for those who are made before there is one. */
final class Outgoing {
  private volatile Endpoint client;

  void connect(Endpoint endpoint) {
    client = endpoint;
  }

  /** Tells the client something. */
  void notify(String method, Object parameters) {
    client.notify(method, parameters);
  }

  /** Asks the client something; of the outcome, only a failure is of interest. */
  void request(String method, Object parameters, BiConsumer<Object, Throwable> outcome) {
    client.request(method, parameters).whenComplete(outcome);
  }
}
