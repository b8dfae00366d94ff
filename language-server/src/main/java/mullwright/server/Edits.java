package mullwright.server;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.model.Origin;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentEdit;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Gathers edits of texts and tells them in the form the client can take. */
public final class Edits {
  private final View view;
  private final Map<String, List<TextEdit>> byAddress = new LinkedHashMap<>();
  private final Map<String, Integer> versions = new HashMap<>();

  /** No edits yet. */
  public Edits(View view) {
    this.view = view;
  }

  /** Puts a text in the place of an origin; false if the origin is gone. */
  public boolean replace(Origin origin, String text) {
    Optional<Document> document = view.document(origin.file());
    Optional<Range> range = document.flatMap(file -> file.range(origin));
    range.ifPresent(at -> replace(document.orElseThrow(), at, text));
    return range.isPresent();
  }

  /** Puts a text in the place of a range. */
  public void replace(Document document, Range range, String text) {
    versions.put(document.address(), document.version());
    byAddress
        .computeIfAbsent(document.address(), address -> new ArrayList<>())
        .add(new TextEdit(range, text));
  }

  /**
   * The edits; by document and for the version they were made from, where the client takes {@code
   * workspace.workspaceEdit.documentChanges}.
   */
  public WorkspaceEdit toWorkspaceEdit(Client client) {
    if (!client.can("workspace.workspaceEdit.documentChanges")) {
      return new WorkspaceEdit(byAddress);
    }
    WorkspaceEdit edit = new WorkspaceEdit();
    edit.setDocumentChanges(
        byAddress.entrySet().stream()
            .map(this::ofDocument)
            .map(Either::<TextDocumentEdit, org.eclipse.lsp4j.ResourceOperation>forLeft)
            .toList());
    return edit;
  }

  private TextDocumentEdit ofDocument(Map.Entry<String, List<TextEdit>> edits) {
    return new TextDocumentEdit(
        new VersionedTextDocumentIdentifier(edits.getKey(), versions.get(edits.getKey())),
        edits.getValue().stream()
            .map(Either::<TextEdit, org.eclipse.lsp4j.SnippetTextEdit>forLeft)
            .toList());
  }
}
