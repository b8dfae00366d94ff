package mullwright.server;

import com.google.gson.JsonObject;
import java.util.List;

/**
 * Something the server does for an editor: the methods it answers and what it advertises.
 *
 * <p>One object serves one connection. A feature is found by standing in {@code META-INF/services}
 * (write {@code @AutoService(Feature.class)} above it); two that claim one method fail at start.
 */
public interface Feature {
  /** The methods it answers. */
  List<Route<?>> routes();

  /**
   * Writes into the server's capabilities what it offers this client.
   *
   * @param client what the client can take
   * @param server the capabilities told so far
   */
  void advertise(Client client, JsonObject server);
}
