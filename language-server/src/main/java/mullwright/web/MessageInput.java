package mullwright.web;

import java.io.InputStream;
import java.io.InterruptedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/** Messages of a socket as the stream that a server reads: each with its length before it. */
final class MessageInput extends InputStream {
  /** So many messages may wait for the server; one more ends the talk. */
  static final int WAITING_LIMIT = 4096;

  private static final byte[] END = {};

  private final BlockingQueue<byte[]> waiting = new LinkedBlockingQueue<>();
  private byte[] current = {};
  private int at;

  /** Hands a message on; false if too many wait already. */
  boolean put(String message) {
    byte[] body = message.getBytes(StandardCharsets.UTF_8);
    byte[] head =
        ("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII);
    byte[] whole = new byte[head.length + body.length];
    System.arraycopy(head, 0, whole, 0, head.length);
    System.arraycopy(body, 0, whole, head.length, body.length);
    return waiting.size() < WAITING_LIMIT && waiting.offer(whole);
  }

  /** Nothing more comes. */
  void end() {
    waiting.add(END);
  }

  @Override
  public int read() throws InterruptedIOException {
    byte[] one = new byte[1];
    return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
  }

  @Override
  public int read(byte[] into, int offset, int length) throws InterruptedIOException {
    if (length == 0) {
      return 0;
    }
    if (at == current.length && !next()) {
      return -1;
    }
    int count = Math.min(length, current.length - at);
    System.arraycopy(current, at, into, offset, count);
    at += count;
    return count;
  }

  private boolean next() throws InterruptedIOException {
    try {
      current = waiting.take();
      at = 0;
      if (current.length == 0) {
        // the next read ends too
        waiting.add(END);
        return false;
      }
      return true;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("the talk is over");
    }
  }
}
