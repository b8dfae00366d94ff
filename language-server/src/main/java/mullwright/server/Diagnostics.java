package mullwright.server;

import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import mullwright.check.Finding;
import mullwright.check.FoldedFinding;
import mullwright.check.Severity;
import mullwright.check.Unused;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticCodeDescription;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DiagnosticTag;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Range;

/** Findings as the protocol's diagnostics. */
public final class Diagnostics {
  /** Whose they are, as editors show it. */
  static final String SOURCE = "mullwright";

  private static final int OTHERS_NAMED = 6;

  private Diagnostics() {}

  /**
   * What a client can use beside a diagnostic's words.
   *
   * @param related other places that have a part in it
   * @param codes the way to the page of its rule
   * @param fades shows what is of no use as such
   * @param data how many mends the server has for it; one without any need not be asked about
   */
  private record Uses(Client client, boolean related, boolean codes, boolean fades, boolean data) {
    static Uses of(Client client) {
      return new Uses(
          client,
          client.can("textDocument.publishDiagnostics.relatedInformation"),
          client.describesCodes(),
          client
              .numbers("textDocument.publishDiagnostics.tagSupport.valueSet")
              .contains(DiagnosticTag.Unnecessary.getValue()),
          client.can("textDocument.publishDiagnostics.dataSupport"));
    }
  }

  /**
   * The diagnostics of a document.
   *
   * @param findings those that stand in it
   */
  public static List<Diagnostic> of(Document document, List<Finding> findings, Client client) {
    Uses uses = Uses.of(client);
    List<Diagnostic> diagnostics = new ArrayList<>(findings.size());
    for (FoldedFinding finding : FoldedFinding.fold(findings)) {
      of(finding, document, uses).ifPresent(diagnostics::add);
    }
    return diagnostics;
  }

  /**
   * One finding as the client gets it, empty if it does not stand in the document; what one
   * statement trips many times is told once.
   */
  public static Optional<Diagnostic> of(FoldedFinding finding, Document document, Client client) {
    return of(finding, document, Uses.of(client));
  }

  private static Optional<Diagnostic> of(FoldedFinding finding, Document document, Uses uses) {
    return document
        .range(finding.shown().origin())
        .map(range -> of(finding, range, document.view(), uses));
  }

  /** What of a client shapes its diagnostics: of the same findings, equal ones get the same. */
  static String shape(Client client) {
    Uses uses = Uses.of(client);
    return (uses.related() ? "related " : "")
        + (uses.fades() ? "fades " : "")
        + (uses.data() ? "data " : "")
        + (uses.codes() ? client.rulePages().address("") : "");
  }

  /** The rules of diagnostics, by name. */
  public static Set<String> rules(List<Diagnostic> diagnostics) {
    Set<String> rules = new TreeSet<>();
    for (Diagnostic diagnostic : diagnostics) {
      if (diagnostic.getCode() != null && diagnostic.getCode().isLeft()) {
        rules.add(diagnostic.getCode().getLeft());
      }
    }
    return rules;
  }

  private static Diagnostic of(FoldedFinding folded, Range range, View view, Uses uses) {
    Finding finding = folded.shown();
    String more = folded.more(OTHERS_NAMED);
    String message = finding.message() + (more.isEmpty() ? "" : " (" + more + ")");
    Diagnostic diagnostic = new Diagnostic(range, message, severity(finding.severity()), SOURCE);
    diagnostic.setCode(finding.rule());
    if (uses.fades() && finding.rule().equals(Unused.NAME)) {
      diagnostic.setTags(List.of(DiagnosticTag.Unnecessary));
    }
    if (uses.related() && !finding.related().isEmpty()) {
      List<DiagnosticRelatedInformation> places = new ArrayList<>();
      for (Finding.Related other : finding.related()) {
        Optional<Location> location = view.location(other.origin());
        location.ifPresent(at -> places.add(new DiagnosticRelatedInformation(at, other.word())));
      }
      diagnostic.setRelatedInformation(places);
    }
    if (uses.codes()) {
      diagnostic.setCodeDescription(
          new DiagnosticCodeDescription(uses.client().rulePages().address(finding.rule())));
    }
    if (uses.data()) {
      JsonObject data = new JsonObject();
      data.addProperty("mends", folded.fixes().size());
      diagnostic.setData(data);
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
