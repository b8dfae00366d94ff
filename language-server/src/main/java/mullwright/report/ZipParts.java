package mullwright.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Takes an archive in memory apart by its directory.
 *
 * <p>The reader of the JDK goes by the entries' own heads, which a writer of streams leaves without
 * sizes. Source: the zip format's application note.
 */
final class ZipParts {
  private static final int END = 0x06054b50;
  private static final int END_SIZE = 22;
  private static final int ENTRY_SIZE = 46;
  private static final int HEAD_SIZE = 30;
  private static final int CHUNK = 1 << 14;

  private ZipParts() {}

  /** Content by name, in the order of the directory. */
  static Map<String, byte[]> of(byte[] archive) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(archive).order(ByteOrder.LITTLE_ENDIAN);
    int end = archive.length - END_SIZE;
    while (end > 0 && bytes.getInt(end) != END) {
      end--;
    }
    int count = bytes.getShort(end + 10) & 0xffff;
    int at = bytes.getInt(end + 16);
    Map<String, byte[]> parts = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      boolean deflated = bytes.getShort(at + 10) != 0;
      int size = bytes.getInt(at + 20);
      int name = bytes.getShort(at + 28) & 0xffff;
      int head = bytes.getInt(at + 42);
      int start =
          head
              + HEAD_SIZE
              + (bytes.getShort(head + 26) & 0xffff)
              + (bytes.getShort(head + 28) & 0xffff);
      byte[] content = new byte[size];
      bytes.get(start, content);
      parts.put(
          new String(archive, at + ENTRY_SIZE, name, StandardCharsets.UTF_8),
          deflated ? inflated(content) : content);
      at +=
          ENTRY_SIZE
              + name
              + (bytes.getShort(at + 30) & 0xffff)
              + (bytes.getShort(at + 32) & 0xffff);
    }
    return parts;
  }

  private static byte[] inflated(byte[] content) throws IOException {
    Inflater inflater = new Inflater(true);
    try {
      inflater.setInput(content);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      byte[] chunk = new byte[CHUNK];
      while (!inflater.finished()) {
        int got = inflater.inflate(chunk);
        if (got == 0 && (inflater.needsInput() || inflater.needsDictionary())) {
          throw new IOException("the archive breaks off");
        }
        out.write(chunk, 0, got);
      }
      return out.toByteArray();
    } catch (DataFormatException damaged) {
      throw new IOException(damaged);
    } finally {
      inflater.end();
    }
  }
}
