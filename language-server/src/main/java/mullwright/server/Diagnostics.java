package mullwright.server;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.check.FoldedFinding;
import mullwright.check.Severity;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;

/** Findings as the protocol's diagnostics. */
public final class Diagnostics {
  private static final String UNUSED = "unused";
  private static final int OTHERS_NAMED = 6;

  private Diagnostics() {}

  /**
   * The diagnostics of a document.
   *
   * @param findings those that stand in it
   */
  public static List<Diagnostic> of(Document document, List<Finding> findings, Client client) {
    boolean related = client.can("textDocument.publishDiagnostics.relatedInformation");
    List<Diagnostic> diagnostics = new ArrayList<>(findings.size());
    for (FoldedFinding finding : FoldedFinding.fold(findings)) {
      document
          .range(finding.shown().origin())
          .map(range -> whole(finding, range, document.view(), related, client))
          .ifPresent(diagnostics::add);
    }
    return diagnostics;
  }

  /** A name for what diagnostics say, the same for the same words in every talk. */
  public static String fingerprint(List<Diagnostic> diagnostics) {
    return DiagnosticDetails.fingerprint(diagnostics);
  }

  /** The rules of diagnostics, by name. */
  public static Set<String> rules(List<Diagnostic> diagnostics) {
    return DiagnosticDetails.rules(diagnostics);
  }

  /** One finding as the client gets it, with all it can use. */
  public static Diagnostic of(FoldedFinding finding, Range range, View view, Client client) {
    boolean related = client.can("textDocument.publishDiagnostics.relatedInformation");
    return whole(finding, range, view, related, client);
  }

  private static Diagnostic whole(
      FoldedFinding finding, Range range, View view, boolean related, Client client) {
    Diagnostic diagnostic = of(finding, range, view, related);
    DiagnosticDetails.add(diagnostic, finding, client);
    return diagnostic;
  }

  /** One finding as a diagnostic; what one statement trips many times is told once. */
  public static Diagnostic of(FoldedFinding folded, Range range, View view, boolean related) {
    Finding finding = folded.shown();
    String more = folded.more(OTHERS_NAMED);
    String message = finding.message() + (more.isEmpty() ? "" : " (" + more + ")");
    Diagnostic diagnostic =
        new Diagnostic(range, message, severity(finding.severity()), "mullwright");
    diagnostic.setCode(finding.rule());
    if (finding.rule().equals(UNUSED)) {
      diagnostic.setTags(List.of(DiagnosticTag.Unnecessary));
    }
    if (related && !finding.related().isEmpty()) {
      List<DiagnosticRelatedInformation> places = new ArrayList<>();
      for (Finding.Related other : finding.related()) {
        Optional<Location> location = view.location(other.origin());
        location.ifPresent(at -> places.add(new DiagnosticRelatedInformation(at, other.word())));
      }
      diagnostic.setRelatedInformation(places);
    }
    return diagnostic;
  }

  private static DiagnosticSeverity severity(Severity severity) {
    return switch (severity) {
      case ERROR -> DiagnosticSeverity.Error;
      case WARNING -> DiagnosticSeverity.Warning;
      case INFORMATION -> DiagnosticSeverity.Information;
    };
  }
}
