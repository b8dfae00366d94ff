package mullwright.server;

import java.util.List;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;

/** A name for what diagnostics say. */
public final class Fingerprint {
  private Fingerprint() {}

  /** The same for the same words in every talk. */
  public static String of(List<Diagnostic> diagnostics) {
    Hash hash = new Hash();
    for (Diagnostic diagnostic : diagnostics) {
      hash.add(diagnostic.getRange());
      hash.add(diagnostic.getSeverity());
      hash.add(diagnostic.getCode().getLeft());
      hash.add(diagnostic.getMessage());
      hash.add(diagnostic.getData());
      if (diagnostic.getRelatedInformation() != null) {
        for (DiagnosticRelatedInformation related : diagnostic.getRelatedInformation()) {
          hash.add(related.getLocation().getUri());
          hash.add(related.getLocation().getRange());
          hash.add(related.getMessage());
        }
      }
    }
    return hash.toString();
  }

  /** 64-bit FNV-1a over the words told to it, a gap between each two. */
  private static final class Hash {
    private static final long PRIME = 0x100000001b3L;
    private long state = 0xcbf29ce484222325L;

    void add(org.eclipse.lsp4j.Range range) {
      add(range.getStart());
      add(range.getEnd());
    }

    private void add(org.eclipse.lsp4j.Position position) {
      step(position.getLine());
      step(position.getCharacter());
    }

    void add(Object word) {
      String text = String.valueOf(word);
      for (int i = 0; i < text.length(); i++) {
        step(text.charAt(i));
      }
      step(-1);
    }

    private void step(int value) {
      state = (state ^ value) * PRIME;
    }

    @Override
    public String toString() {
      return Long.toHexString(state);
    }
  }
}
