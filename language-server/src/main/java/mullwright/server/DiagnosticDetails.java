package mullwright.server;

import com.google.gson.JsonObject;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import mullwright.check.FoldedFinding;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticCodeDescription;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;

/**
 * What a diagnostic carries beside its words, for clients that can use it: the way to the page of
 * its rule, and how many mends the server has for it.
 */
final class DiagnosticDetails {
  /** How many mends there are; a diagnostic without any need not be asked about. */
  static final String MENDS = "mends";

  private DiagnosticDetails() {}

  /** Adds them. */
  static void add(Diagnostic diagnostic, FoldedFinding finding, Client client) {
    if (client.describesCodes()) {
      diagnostic.setCodeDescription(
          new DiagnosticCodeDescription(client.rulePages().address(finding.shown().rule())));
    }
    if (client.can("textDocument.publishDiagnostics.dataSupport")) {
      JsonObject data = new JsonObject();
      data.addProperty(MENDS, finding.fixes().size());
      diagnostic.setData(data);
    }
  }

  /** The rules of diagnostics, by name. */
  static Set<String> rules(List<Diagnostic> diagnostics) {
    Set<String> rules = new TreeSet<>();
    for (Diagnostic diagnostic : diagnostics) {
      if (diagnostic.getCode() != null && diagnostic.getCode().isLeft()) {
        rules.add(diagnostic.getCode().getLeft());
      }
    }
    return rules;
  }

  /** A name for what those diagnostics say, the same for the same words in every talk. */
  static String fingerprint(List<Diagnostic> diagnostics) {
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
