package mullwright.workspace;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/**
 * How texts and bytes are put into a file that this program reads again: each after its length, the
 * whole under a sum, so that what is damaged is found out.
 */
public final class Packing {
  private Packing() {}

  /** Writes a text of any length. */
  public static void text(DataOutputStream out, String text) throws IOException {
    bytes(out, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Reads what {@link #text(DataOutputStream, String)} wrote.
   *
   * @throws IOException if it is damaged
   */
  public static String text(DataInputStream in) throws IOException {
    return new String(bytes(in), StandardCharsets.UTF_8);
  }

  /** Writes bytes with their number. */
  public static void bytes(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  /**
   * Reads what {@link #bytes(DataOutputStream, byte[])} wrote.
   *
   * @throws IOException if it is damaged
   */
  public static byte[] bytes(DataInputStream in) throws IOException {
    byte[] bytes = new byte[count(in)];
    in.readFully(bytes);
    return bytes;
  }

  /**
   * Reads how many follow.
   *
   * @throws IOException if more are said to follow than there are bytes
   */
  public static int count(DataInputStream in) throws IOException {
    int count = in.readInt();
    if (count < 0 || count > in.available()) {
      throw new IOException("damaged");
    }
    return count;
  }

  /** The sum of bytes from a place on: CRC-32. */
  public static long sum(byte[] bytes, int start) {
    CRC32 sum = new CRC32();
    sum.update(bytes, start, bytes.length - start);
    return sum.getValue();
  }
}
