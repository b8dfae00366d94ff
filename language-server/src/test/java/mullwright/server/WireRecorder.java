package mullwright.server;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * Stands between an editor and a server and writes down what they say.
 *
 * <p>{@code java -cp language-server/target/test-classes mullwright.server.WireRecorder
 * RECORDING.jsonl COMMAND…} is to an editor what {@code COMMAND…} is. Both directions go into the
 * recording, one message a line, an answer after what it answers. Needs nothing but the JDK.
 */
public final class WireRecorder {
  private WireRecorder() {}

  /** Starts the command and stays until it ends; its exit code is this one's. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    if (arguments.length < 2) {
      System.err.println("usage: WireRecorder RECORDING.jsonl COMMAND...");
      System.exit(2);
    }
    Path recording = Path.of(arguments[0]);
    List<String> command = Arrays.asList(arguments).subList(1, arguments.length);
    Process server =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    Runtime.getRuntime().addShutdownHook(new Thread(server::destroy));
    OutputStream toServer = new MessageTap(server.getOutputStream(), recording, "client");
    Thread up = new Thread(() -> pump(System.in, toServer, true), "client");
    up.setDaemon(true);
    up.start();
    pump(server.getInputStream(), new MessageTap(System.out, recording, "server"), false);
    System.exit(server.waitFor());
  }

  private static void pump(InputStream from, OutputStream to, boolean closing) {
    byte[] bytes = new byte[1 << 16];
    try {
      for (int count = from.read(bytes); count >= 0; count = from.read(bytes)) {
        to.write(bytes, 0, count);
        to.flush();
      }
      if (closing) {
        to.close();
      }
    } catch (IOException gone) {
      // the other end has closed its pipe: there is nobody to tell
      if (!closing) {
        throw new UncheckedIOException(gone);
      }
    }
  }
}
