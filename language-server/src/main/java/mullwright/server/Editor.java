package mullwright.server;

import java.util.concurrent.CompletableFuture;

/** The way back to the editor: what a feature tells or asks without having been asked. */
public interface Editor {
  /** Tells something. */
  void notify(String method, Object parameters);

  /** Asks something; whoever waits for the answer must not do so on the worker. */
  CompletableFuture<Object> request(String method, Object parameters);
}
