package mullwright.server.kept;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import mullwright.workspace.Files;

/** How findings are written: the form, the program, a sum of the rest, the rest. */
final class KeptForm {
  /** Changes when a program that reads the old form could not read the new one. */
  private static final String FORM = "mullwright findings 1";

  private static final int TEXT = 0;
  private static final int DAMAGED = 1;
  private static final int MISSING = 2;

  private KeptForm() {}

  /**
   * The bytes.
   *
   * @throws IOException if a part of them is not one of those that can be kept
   */
  static byte[] write(KeptFindings kept, String program) throws IOException {
    ByteArrayOutputStream inside = new ByteArrayOutputStream();
    content(kept, new DataOutputStream(inside));
    byte[] content = inside.toByteArray();
    ByteArrayOutputStream whole = new ByteArrayOutputStream(content.length + FORM.length());
    DataOutputStream out = new DataOutputStream(whole);
    text(out, FORM);
    text(out, program);
    out.writeLong(sum(content, 0));
    out.write(content);
    return whole.toByteArray();
  }

  /** What those bytes say; empty if they are damaged, or of another form or program. */
  static Optional<KeptFindings> read(byte[] bytes, String program) {
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
    try {
      if (!text(in).equals(FORM) || !text(in).equals(program)) {
        return Optional.empty();
      }
      long sum = in.readLong();
      if (sum(bytes, bytes.length - in.available()) != sum) {
        return Optional.empty();
      }
      return Optional.of(content(in));
    } catch (IOException | IllegalArgumentException damaged) {
      return Optional.empty();
    }
  }

  private static long sum(byte[] bytes, int start) {
    CRC32 sum = new CRC32();
    sum.update(bytes, start, bytes.length - start);
    return sum.getValue();
  }

  private static void content(KeptFindings kept, DataOutputStream out) throws IOException {
    text(out, kept.question().address());
    text(out, kept.question().folder());
    text(out, kept.question().shape());
    out.writeInt(kept.sources().size());
    for (KeptFindings.Source source : kept.sources()) {
      text(out, source.path());
      text(out, source.spelled());
      read(out, source.read());
    }
    out.writeInt(kept.published().size());
    for (KeptFindings.Published published : kept.published()) {
      text(out, published.address());
      DiagnosticForm.write(out, published.diagnostics());
    }
  }

  private static KeptFindings content(DataInputStream in) throws IOException {
    KeptFindings.Question question = new KeptFindings.Question(text(in), text(in), text(in));
    List<KeptFindings.Source> sources = new ArrayList<>();
    for (int left = count(in); left > 0; left--) {
      sources.add(new KeptFindings.Source(text(in), text(in), read(in)));
    }
    List<KeptFindings.Published> published = new ArrayList<>();
    for (int left = count(in); left > 0; left--) {
      published.add(new KeptFindings.Published(text(in), DiagnosticForm.read(in)));
    }
    return new KeptFindings(question, sources, published);
  }

  /** What could not be read may be read next time, though no text has changed: it is not kept. */
  private static void read(DataOutputStream out, Files.Read read) throws IOException {
    if (read instanceof Files.Read.Text text) {
      out.writeByte(text.damaged() ? DAMAGED : TEXT);
      text(out, text.text());
    } else if (read instanceof Files.Read.Missing) {
      out.writeByte(MISSING);
    } else {
      throw new IOException("no text: " + read);
    }
  }

  private static Files.Read read(DataInputStream in) throws IOException {
    int kind = in.readByte();
    return kind == MISSING
        ? new Files.Read.Missing()
        : new Files.Read.Text(text(in), kind == DAMAGED);
  }

  /** Writes a text of any length, if it is one that UTF-8 can say. */
  static void text(DataOutputStream out, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (!new String(bytes, StandardCharsets.UTF_8).equals(text)) {
      throw new IOException("half a character");
    }
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  /** Reads what {@link #text(DataOutputStream, String)} wrote. */
  static String text(DataInputStream in) throws IOException {
    byte[] bytes = new byte[count(in)];
    in.readFully(bytes);
    return new String(bytes, StandardCharsets.UTF_8);
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
