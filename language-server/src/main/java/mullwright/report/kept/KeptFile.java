package mullwright.report.kept;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import mullwright.workspace.Packing;
import mullwright.workspace.WholeFile;

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
      if (!Packing.text(in).equals(form)) {
        return Optional.empty();
      }
      long sum = in.readLong();
      int start = all.length - in.available();
      return Packing.sum(all, start) == sum ? Optional.of(in) : Optional.empty();
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
      WholeFile.putPrivately(
          path,
          whole -> {
            try (DataOutputStream out = new DataOutputStream(Files.newOutputStream(whole))) {
              Packing.text(out, form);
              out.writeLong(Packing.sum(bytes, 0));
              out.write(bytes);
            }
          });
      return true;
    } catch (IOException full) {
      return false;
    }
  }
}
