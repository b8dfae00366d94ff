package mullwright.server;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * A pipe between two threads of one process. The one of the JDK polls once a second and fails when
 * a thread that wrote to it has ended.
 */
final class BytePipe {
  private static final byte[] END = new byte[0];

  private final BlockingQueue<byte[]> written = new LinkedBlockingQueue<>();

  final OutputStream in =
      new OutputStream() {
        @Override
        public void write(int b) {
          written.add(new byte[] {(byte) b});
        }

        @Override
        public void write(byte[] bytes, int from, int length) {
          if (length > 0) {
            written.add(java.util.Arrays.copyOfRange(bytes, from, from + length));
          }
        }

        @Override
        public void close() {
          written.add(END);
        }
      };

  final InputStream out =
      new InputStream() {
        private byte[] chunk = new byte[] {};
        private int at;
        private boolean ended;

        @Override
        public int read() throws IOException {
          byte[] one = new byte[1];
          return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] bytes, int from, int length) throws IOException {
          if (length == 0) {
            return 0;
          }
          while (at == chunk.length && !ended) {
            try {
              chunk = written.take();
            } catch (InterruptedException stopped) {
              throw new IOException(stopped);
            }
            at = 0;
            ended = chunk == END;
          }
          if (ended) {
            return -1;
          }
          int count = Math.min(length, chunk.length - at);
          System.arraycopy(chunk, at, bytes, from, count);
          at += count;
          return count;
        }

        @Override
        public int available() {
          return chunk.length - at;
        }
      };
}
