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
import mullwright.workspace.Files;
import mullwright.workspace.Packing;

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
    out.writeLong(Packing.sum(content, 0));
    out.write(content);
    return whole.toByteArray();
  }

  /** What those bytes say; empty if they are damaged, or of another form or program. */
  static Optional<KeptFindings> read(byte[] bytes, String program) {
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
    try {
      if (!Packing.text(in).equals(FORM) || !Packing.text(in).equals(program)) {
        return Optional.empty();
      }
      long sum = in.readLong();
      if (Packing.sum(bytes, bytes.length - in.available()) != sum) {
        return Optional.empty();
      }
      return Optional.of(content(in));
    } catch (IOException | IllegalArgumentException damaged) {
      return Optional.empty();
    }
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
    KeptFindings.Question question =
        new KeptFindings.Question(Packing.text(in), Packing.text(in), Packing.text(in));
    List<KeptFindings.Source> sources = new ArrayList<>();
    for (int left = Packing.count(in); left > 0; left--) {
      sources.add(new KeptFindings.Source(Packing.text(in), Packing.text(in), read(in)));
    }
    List<KeptFindings.Published> published = new ArrayList<>();
    for (int left = Packing.count(in); left > 0; left--) {
      published.add(new KeptFindings.Published(Packing.text(in), DiagnosticForm.read(in)));
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
        : new Files.Read.Text(Packing.text(in), kind == DAMAGED);
  }

  /** Writes a text of any length, if it is one that UTF-8 can say. */
  static void text(DataOutputStream out, String text) throws IOException {
    if (!StandardCharsets.UTF_8.newEncoder().canEncode(text)) {
      throw new IOException("half a character");
    }
    Packing.text(out, text);
  }
}
