package mullwright.server;

import java.io.BufferedInputStream;
import java.io.InputStream;
import java.io.OutputStream;
import org.eclipse.lsp4j.jsonrpc.Endpoint;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethodProvider;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.json.StreamMessageConsumer;

/**
 * The wire between a client and a service, put together from LSP4J's parts.
 *
 * <p>LSP4J's own launcher finds methods by reflection and speaks to the client through a proxy,
 * which together are a third of a cold start; here the service brings its table of methods and
 * sends through {@link Endpoint#notify}.
 */
final class Wire {
  private static final int BUFFER = 1 << 16;

  private final MessageReader reader;
  private final Peer peer;

  <S extends Endpoint & JsonRpcMethodProvider> Wire(
      InputStream in, OutputStream out, S service, Log log) {
    MessageJsonHandler json =
        new MessageJsonHandler(service.supportedMethods(), LeanAdapters::register);
    this.peer = new Peer(new StreamMessageConsumer(out, json), service, log);
    json.setMethodProvider(peer);
    this.reader = new MessageReader(new BufferedInputStream(in, BUFFER), json, log);
  }

  /** The client. */
  Endpoint client() {
    return peer;
  }

  /** Reads messages and hands them to the service until the input or the talk ends. */
  void listen() {
    reader.listen(peer);
  }

  /** Stops reading after the message in hand. */
  void hangUp() {
    reader.close();
  }
}
