package mullwright.web;

import java.net.InetSocketAddress;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import mullwright.server.ServeMain;
import org.java_websocket.WebSocket;
import org.java_websocket.drafts.Draft;
import org.java_websocket.drafts.Draft_6455;
import org.java_websocket.exceptions.InvalidDataException;
import org.java_websocket.exceptions.WebsocketNotConnectedException;
import org.java_websocket.framing.CloseFrame;
import org.java_websocket.handshake.ClientHandshake;
import org.java_websocket.handshake.ServerHandshakeBuilder;
import org.java_websocket.protocols.Protocol;
import org.java_websocket.server.WebSocketServer;

/**
 * Carries the protocol over WebSocket: one message a frame, and for each page a server of its own
 * that ends with it.
 */
final class Talks extends WebSocketServer {
  /** So many pages may talk at a time; one more is turned away with a sentence. */
  static final int TALK_LIMIT = 8;

  /** The largest message taken, in bytes: a text at its limit, every character of it escaped. */
  static final int MESSAGE_LIMIT = (int) (6 * Folder.SIZE_LIMIT);

  private static final int PATIENCE_MILLIS = 1000;

  private final Gate gate;
  private final AtomicInteger talking = new AtomicInteger();
  private final CompletableFuture<Void> listening = new CompletableFuture<>();

  /**
   * @param at loopback and a port, 0 for any that is free
   */
  Talks(InetSocketAddress at, Gate gate) {
    super(at, 1, List.of(draft()));
    this.gate = gate;
    setDaemon(true);
    setReuseAddr(true);
  }

  // nothing but the bare protocol: no extensions, no sub-protocols
  private static Draft draft() {
    return new Draft_6455(List.of(), List.of(new Protocol("")), MESSAGE_LIMIT);
  }

  /** Completed once it listens, or with the reason it cannot. */
  CompletableFuture<Void> listening() {
    return listening;
  }

  /** Where a page finds it. */
  String address() {
    return "ws://127.0.0.1:" + getPort() + "/" + gate.secret().token() + "/";
  }

  @Override
  public ServerHandshakeBuilder onWebsocketHandshakeReceivedAsServer(
      WebSocket socket, Draft draft, ClientHandshake request) throws InvalidDataException {
    Gate.Caller caller =
        new Gate.Caller(
            List.of(request.getFieldValue("Host")),
            List.of(request.getFieldValue("Origin")),
            request.getResourceDescriptor(),
            getPort(),
            true);
    if (gate.refusal(caller).isPresent()) {
      throw new InvalidDataException(CloseFrame.REFUSE, "refused");
    }
    return super.onWebsocketHandshakeReceivedAsServer(socket, draft, request);
  }

  @Override
  public void onOpen(WebSocket socket, ClientHandshake request) {
    if (talking.incrementAndGet() > TALK_LIMIT) {
      socket.close(
          CloseFrame.TRY_AGAIN_LATER,
          TALK_LIMIT + " pages are open already; close one and load this again.");
      return;
    }
    MessageInput in = new MessageInput();
    socket.setAttachment(in);
    MessageOutput out =
        new MessageOutput(
            message -> {
              try {
                socket.send(message);
              } catch (WebsocketNotConnectedException gone) {
                // the page went away; the server ends by the end of its input
                in.end();
              }
            });
    Thread server =
        new Thread(
            () -> {
              ServeMain.run(in, out);
              socket.close(CloseFrame.NORMAL);
            },
            "mullwright-talk");
    server.setDaemon(true);
    server.start();
  }

  @Override
  public void onMessage(WebSocket socket, String message) {
    MessageInput in = socket.getAttachment();
    if (in != null && !in.put(message)) {
      socket.close(CloseFrame.POLICY_VALIDATION, "Too many messages wait to be read.");
    }
  }

  @Override
  public void onClose(WebSocket socket, int code, String reason, boolean remote) {
    MessageInput in = socket.getAttachment();
    if (in != null) {
      in.end();
    }
    talking.decrementAndGet();
  }

  /** One refused at the door is cut at once: the library would let its line hang. */
  @Override
  public void onClosing(WebSocket socket, int code, String reason, boolean remote) {
    if (code == CloseFrame.REFUSE) {
      socket.closeConnection(code, reason);
    }
  }

  @Override
  public void onError(WebSocket socket, Exception failed) {
    if (socket == null) {
      listening.completeExceptionally(failed);
    } else {
      socket.close(CloseFrame.ABNORMAL_CLOSE);
    }
  }

  @Override
  public void onStart() {
    listening.complete(null);
  }

  /** Ends all talks. */
  void end() {
    try {
      stop(PATIENCE_MILLIS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
