package mullwright.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.Consumer;

/** The stream a server writes, cut into its messages again. */
final class MessageOutput extends OutputStream {
  private static final String LENGTH = "content-length:";

  private final Consumer<String> messages;
  private final ByteArrayOutputStream held = new ByteArrayOutputStream();
  private int bodyLeft = -1;

  /**
   * @param messages given each message when it is whole
   */
  MessageOutput(Consumer<String> messages) {
    this.messages = messages;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] from, int offset, int length) throws IOException {
    int at = offset;
    int end = offset + length;
    while (at < end) {
      at = bodyLeft < 0 ? head(from, at) : body(from, at, end);
    }
  }

  private int head(byte[] from, int at) throws IOException {
    held.write(from[at]);
    String head = held.toString(StandardCharsets.US_ASCII);
    if (from[at] == '\n' && head.endsWith("\r\n\r\n")) {
      bodyLeft = length(head);
      held.reset();
    }
    return at + 1;
  }

  private int body(byte[] from, int at, int end) {
    int count = Math.min(bodyLeft, end - at);
    held.write(from, at, count);
    bodyLeft -= count;
    if (bodyLeft == 0) {
      messages.accept(held.toString(StandardCharsets.UTF_8));
      held.reset();
      bodyLeft = -1;
    }
    return at + count;
  }

  private static int length(String head) throws IOException {
    for (String line : head.split("\r\n")) {
      if (line.toLowerCase(Locale.ROOT).startsWith(LENGTH)) {
        return Integer.parseInt(line.substring(LENGTH.length()).strip());
      }
    }
    throw new IOException("a message without its length");
  }
}
