package mullwright.server;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Writes every message that passes a stream to a file, one a line, so that a schema can be held
 * against all that the tests ever sent. Each line is {@code {"from":"client","message":{…}}}. What
 * is no message passes and is not written.
 */
final class MessageTap extends OutputStream {
  private static final Path FOLDER = Path.of("target", "lsp-messages");
  private static final byte[] HEADER_END = "\r\n\r\n".getBytes(StandardCharsets.US_ASCII);

  private final OutputStream on;
  private static final Map<Path, Writer> WRITERS = new ConcurrentHashMap<>();

  private final Path file;
  private final String from;
  private final ByteArrayOutputStream pending = new ByteArrayOutputStream();

  /**
   * A tap whose recording all tests of a run share: {@code target/lsp-messages/NAME.jsonl}.
   *
   * @param on where the bytes go on to
   * @param name of the recording
   * @param from who sends on this stream, {@code client} or {@code server}
   */
  MessageTap(OutputStream on, String name, String from) {
    this(on, FOLDER.resolve(name + ".jsonl"), from);
  }

  /**
   * A tap that writes to a file of its own choice, made anew once a run.
   *
   * @param on where the bytes go on to
   * @param file the recording
   * @param from who sends on this stream, {@code client} or {@code server}
   */
  MessageTap(OutputStream on, Path file, String from) {
    this.on = on;
    this.from = from;
    this.file = file.toAbsolutePath();
    try {
      Files.createDirectories(this.file.getParent());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public synchronized void write(byte[] bytes, int start, int length) throws IOException {
    pending.write(bytes, start, length);
    record();
    on.write(bytes, start, length);
  }

  @Override
  public void flush() throws IOException {
    on.flush();
  }

  @Override
  public void close() throws IOException {
    on.close();
  }

  private void record() throws IOException {
    byte[] all = pending.toByteArray();
    int at = 0;
    while (true) {
      int body = indexOf(all, HEADER_END, at);
      if (body < 0) {
        break;
      }
      String header = new String(all, at, body - at, StandardCharsets.US_ASCII);
      int size = Integer.parseInt(header.replaceAll("(?s).*Content-Length: *(\\d+).*", "$1"));
      int start = body + HEADER_END.length;
      if (all.length < start + size) {
        break;
      }
      append(new String(all, start, size, StandardCharsets.UTF_8));
      at = start + size;
    }
    pending.reset();
    pending.write(all, at, all.length - at);
  }

  private void append(String message) throws IOException {
    String line =
        "{\"from\":\"" + from + "\",\"message\":" + message.replaceAll("[\r\n]+", " ") + "}\n";
    Writer writer = WRITERS.computeIfAbsent(file, MessageTap::opened);
    synchronized (writer) {
      writer.write(line);
      writer.flush();
    }
  }

  /** Opened anew once a run, so that a recording holds the messages of one run. */
  private static Writer opened(Path file) {
    try {
      return Files.newBufferedWriter(file);
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static int indexOf(byte[] in, byte[] what, int from) {
    for (int i = from; i + what.length <= in.length; i++) {
      int j = 0;
      while (j < what.length && in[i + j] == what[j]) {
        j++;
      }
      if (j == what.length) {
        return i;
      }
    }
    return -1;
  }
}
