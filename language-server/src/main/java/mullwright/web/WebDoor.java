package mullwright.web;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Path;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import mullwright.loopback.Secret;

/**
 * The way into the editor in a browser: two ports on loopback, one for the page and its files, one
 * for its talk with the server. See {@link Gate} for who may come in.
 */
public final class WebDoor implements AutoCloseable {
  private static final int BACKLOG = 16;
  private static final int THREADS = 4;

  private final HttpServer pages;
  private final ExecutorService threads;
  private final Talks talks;
  private final Gate gate;

  private WebDoor(HttpServer pages, ExecutorService threads, Talks talks, Gate gate) {
    this.pages = pages;
    this.threads = threads;
    this.talks = talks;
    this.gate = gate;
  }

  /**
   * Opens it.
   *
   * @param folder whose walls may be edited; nothing above it is read
   * @param port of the page, 0 for any that is free
   * @throws IOException if it cannot listen there
   */
  public static WebDoor open(Path folder, int port) throws IOException {
    InetAddress loopback = InetAddress.getByAddress(new byte[] {127, 0, 0, 1});
    HttpServer pages = HttpServer.create(new InetSocketAddress(loopback, port), BACKLOG);
    Gate gate = new Gate(pages.getAddress().getPort(), Secret.random());
    Talks talks = new Talks(new InetSocketAddress(loopback, 0), gate);
    talks.start();
    try {
      talks.listening().join();
    } catch (CompletionException failed) {
      pages.stop(0);
      throw new IOException(failed.getCause().getMessage(), failed.getCause());
    }
    ExecutorService threads =
        Executors.newFixedThreadPool(
            THREADS,
            task -> {
              Thread thread = new Thread(task, "mullwright-web");
              thread.setDaemon(true);
              return thread;
            });
    pages.setExecutor(threads);
    pages.createContext("/", new Site(gate, new Folder(folder), talks.address()));
    pages.start();
    return new WebDoor(pages, threads, talks, gate);
  }

  /** Where the page is, with the token that lets in. */
  public String address() {
    return gate.address();
  }

  /** Where its talk goes. */
  String talkAddress() {
    return talks.address();
  }

  /** Ends all talks and stops listening. */
  @Override
  public void close() {
    talks.end();
    pages.stop(0);
    threads.shutdownNow();
  }
}
