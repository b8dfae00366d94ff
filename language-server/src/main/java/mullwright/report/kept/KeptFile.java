package mullwright.report.kept;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * One file of the folder: its form, a sum of its bytes, then the bytes. A reader sees a whole file
 * or none.
 *
 * @param form changes when a program that reads the old form could not read the new one
 */
record KeptFile(Path path, String form) {
  /** No file is larger; what would be is not kept. */
  static final int MOST = 256 << 20;

  /** What to write into a file. */
  interface Writing {
    void to(DataOutputStream out) throws IOException;
  }

  /** What stands in it; empty if there is none, or it was damaged, or is of another form. */
  Optional<DataInputStream> read() {
    try {
      if (!Files.isRegularFile(path) || Files.size(path) > MOST) {
        return Optional.empty();
      }
      byte[] all = Files.readAllBytes(path);
      DataInputStream in = new DataInputStream(new ByteArrayInputStream(all));
      if (!text(in).equals(form)) {
        return Optional.empty();
      }
      long sum = in.readLong();
      int start = all.length - in.available();
      return sum(all, start) == sum ? Optional.of(in) : Optional.empty();
    } catch (IOException | IllegalArgumentException damaged) {
      return Optional.empty();
    }
  }

  /** Puts it in the place of what was there; false if that cannot be done. */
  boolean write(Writing writing) {
    try {
      ByteArrayOutputStream inside = new ByteArrayOutputStream();
      writing.to(new DataOutputStream(inside));
      if (inside.size() > MOST / 2) {
        return false;
      }
      byte[] bytes = inside.toByteArray();
      Files.createDirectories(path.getParent());
      Path beside = Files.createTempFile(path.getParent(), "kept", ".tmp");
      try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(beside))) {
        text(out, form);
        out.writeLong(sum(bytes, 0));
        out.write(bytes);
      }
      try {
        Files.move(
            beside, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      } catch (AtomicMoveNotSupportedException apart) {
        Files.move(beside, path, StandardCopyOption.REPLACE_EXISTING);
      }
      return true;
    } catch (IOException full) {
      return false;
    }
  }

  private static long sum(byte[] bytes, int start) {
    CRC32 sum = new CRC32();
    sum.update(bytes, start, bytes.length - start);
    return sum.getValue();
  }

  /** Writes a text of any length. */
  static void text(DataOutputStream out, String text) throws IOException {
    bytes(out, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Reads what {@link #text(DataOutputStream, String)} wrote. */
  static String text(DataInputStream in) throws IOException {
    return new String(bytes(in), StandardCharsets.UTF_8);
  }

  /** Writes bytes with their number. */
  static void bytes(DataOutputStream out, byte[] bytes) throws IOException {
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  /** Reads what {@link #bytes(DataOutputStream, byte[])} wrote. */
  static byte[] bytes(DataInputStream in) throws IOException {
    int length = count(in);
    byte[] bytes = new byte[length];
    in.readFully(bytes);
    return bytes;
  }

  /** Reads how many follow. */
  static int count(DataInputStream in) throws IOException {
    int count = in.readInt();
    if (count < 0 || count > in.available()) {
      throw new IOException("damaged");
    }
    return count;
  }
}
