package mullwright.server;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import mullwright.check.Rules;
import mullwright.server.kept.KeptFolder;

/**
 * Starts the language server and stays until the talk ends.
 *
 * <p>The talk ends when the client says {@code exit}, closes the input, or goes away itself.
 */
public final class ServeMain {
  private ServeMain() {}

  /**
   * Serves over standard input and output. From here on whatever prints to standard output by
   * mistake goes to standard error, since one stray line there would break the talk.
   *
   * @param kept where findings are kept for servers to come, if they are
   * @return the exit code: 0 if the client shut the server down before it left
   */
  public static int overStandardStreams(Optional<KeptFolder> kept) {
    InputStream in = new FileInputStream(FileDescriptor.in);
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    System.setOut(
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8));
    return run(in, out, kept);
  }

  /**
   * Serves over those streams and keeps nothing.
   *
   * @return the exit code: 0 if the client shut the server down before it left
   */
  public static int run(InputStream in, OutputStream out) {
    return run(in, out, Optional.empty());
  }

  /**
   * Serves over those streams.
   *
   * @param kept where findings are kept for servers to come, if they are
   * @return the exit code: 0 if the client shut the server down before it left
   */
  public static int run(InputStream in, OutputStream out, Optional<KeptFolder> kept) {
    return run(in, out, kept, new RulesAhead());
  }

  static int run(
      InputStream in, OutputStream out, Optional<KeptFolder> kept, Supplier<Rules> rules) {
    CompletableFuture<Integer> ended = new CompletableFuture<>();
    Outgoing outgoing = new Outgoing();
    Log log = new Log(outgoing);
    Keeper keeper = new Keeper(kept, log);
    Publisher publisher = new Publisher(outgoing, log, new Earlier(kept), keeper);
    // a server that no longer answers is worth less than none: the editor starts another
    Worker worker = new Worker(publisher, () -> ended.complete(1));
    Live live = new Live(worker, outgoing, log);
    Notices notices =
        new Notices(worker, publisher, log, outgoing, live, rules, () -> ended.complete(1));
    Service service = new Service(Features.all(), worker, notices, ended::complete);
    Wire wire = new Wire(in, out, service, log);
    outgoing.connect(wire.client());
    Thread reader = new Thread(() -> read(wire, service, ended), "mullwright-reader");
    reader.setDaemon(true);
    reader.start();
    // this thread has nothing else to do, and the first text will need them
    rules.get();
    int code = ended.join();
    wire.hangUp();
    worker.end();
    live.end();
    notices.end();
    keeper.end();
    return code;
  }

  private static void read(Wire wire, Service service, CompletableFuture<Integer> ended) {
    try {
      wire.listen();
    } finally {
      ended.complete(service.isShut() ? 0 : 1);
    }
  }
}
