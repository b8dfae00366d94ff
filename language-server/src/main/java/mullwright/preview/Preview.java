package mullwright.preview;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import mullwright.loopback.Secret;

/**
 * The page of the live drawing and the little server behind it.
 *
 * <p>Bound to the loopback address only; see {@link Gate} for who may ask. Safe for any thread.
 * What is handed in is taken and drawn elsewhere: callers come back at once.
 */
public final class Preview implements AutoCloseable {
  /** So many pages may listen at a time; one more is turned away with a sentence. */
  public static final int LISTENER_LIMIT = 8;

  /** Requests served at a time, beside those that listen; one more waits its turn. */
  private static final int REQUEST_LIMIT = 4;

  /** Requests that may wait their turn; one more is dropped. */
  private static final int WAITING_LIMIT = 64;

  private static final int BACKLOG = 16;
  private static final long IDLE_SECONDS = 30;
  private static final long LAST_WORDS_MILLIS = 2000;

  private final HttpServer server;
  private final ExecutorService threads;
  private final Stage stage;
  private final Gate gate;

  private Preview(HttpServer server, ExecutorService threads, Stage stage, Gate gate) {
    this.server = server;
    this.threads = threads;
    this.stage = stage;
    this.gate = gate;
  }

  /**
   * Begins to serve.
   *
   * @param port to listen on; 0 for any that is free
   * @param opener the way to the text
   * @param tables what stands beside the drawing
   * @throws IOException if it cannot listen there
   */
  public static Preview start(int port, Opener opener, Tables tables) throws IOException {
    InetAddress loopback = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    HttpServer server = HttpServer.create(new InetSocketAddress(loopback, port), BACKLOG);
    Gate gate = new Gate(server.getAddress().getPort(), Secret.random());
    Stage stage = new Stage();
    ThreadPoolExecutor threads =
        new ThreadPoolExecutor(
            LISTENER_LIMIT + REQUEST_LIMIT,
            LISTENER_LIMIT + REQUEST_LIMIT,
            IDLE_SECONDS,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(WAITING_LIMIT),
            task -> {
              Thread thread = new Thread(task, "mullwright-preview");
              thread.setDaemon(true);
              return thread;
            });
    threads.allowCoreThreadTimeOut(true);
    server.setExecutor(threads);
    server.createContext("/", new Site(gate, stage, opener, () -> new Painter(opener, tables)));
    server.start();
    return new Preview(server, threads, stage, gate);
  }

  /** Where the page is, with the token that opens it. */
  public String address() {
    return gate.address();
  }

  /** The address it is bound to. */
  InetSocketAddress bound() {
    return server.getAddress();
  }

  /** The texts are laid out anew. */
  public void edited(Scene scene) {
    stage.edited(scene);
  }

  /** The texts are checked. */
  public void checked(Scene scene) {
    stage.checked(scene);
  }

  /**
   * The editor's cursor stands there.
   *
   * @param key of a file of the scene
   * @param path of the file it stands in
   */
  public void cursor(String key, String path, int offset) {
    stage.cursor(new Stage.CursorAt(key, path, offset));
  }

  /** Tells all pages that it is over, and stops. */
  @Override
  public void close() {
    stage.end();
    threads.shutdown();
    try {
      // those that listen are told, and end by themselves; one that does not read is cut off
      threads.awaitTermination(LAST_WORDS_MILLIS, TimeUnit.MILLISECONDS);
    } catch (InterruptedException hurried) {
      Thread.currentThread().interrupt();
    }
    server.stop(0);
    threads.shutdownNow();
  }
}
