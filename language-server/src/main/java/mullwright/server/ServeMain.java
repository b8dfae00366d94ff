package mullwright.server;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;

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
   * @return the exit code: 0 if the client shut the server down before it left
   */
  public static int overStandardStreams() {
    InputStream in = new FileInputStream(FileDescriptor.in);
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    System.setOut(
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8));
    return run(in, out);
  }

  /**
   * Serves over those streams.
   *
   * @return the exit code: 0 if the client shut the server down before it left
   */
  public static int run(InputStream in, OutputStream out) {
    CompletableFuture<Integer> ended = new CompletableFuture<>();
    Outgoing outgoing = new Outgoing();
    Log log = new Log(outgoing);
    Publisher publisher = new Publisher(outgoing, log);
    Worker worker = new Worker(publisher);
    Live live = new Live(worker, outgoing, log);
    RulesAhead rules = new RulesAhead();
    Notices notices =
        new Notices(worker, publisher, log, outgoing, live, rules, () -> ended.complete(1));
    Service service = new Service(Features.all(), worker, notices, ended::complete);
    Wire wire = new Wire(in, out, service, log);
    outgoing.connect(wire.client());
    Thread reader = new Thread(() -> read(wire, service, ended), "mullwright-reader");
    reader.setDaemon(true);
    reader.start();
    rules.find();
    int code = ended.join();
    wire.hangUp();
    worker.end();
    live.end();
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
